#include "core/planner/reasons/lacking_room.h"

#include "core/planner/index.h"

#include <algorithm>
#include <limits>

namespace warmbench::planner {

namespace {

using search::BatchModel;
using search::StayModel;
using search::StayOption;

constexpr int hopeless = std::numeric_limits<int>::max();

/// What a stay that begins on one day lacks at least, with all that follow it.
struct Way {
    int lacking = hopeless; ///< slots of this and all later stays
    int zone = 0;
    int own = 0; ///< slots of this stay alone
    int to = 0;  ///< first day after
};

/// Back over the stays, day by day: the way that lacks least.
class Ways {
public:
    Ways(const search::State& house, int batch)
        : m_house(house), m_model(house.model()), m_index(batch), m_batch(m_model.batches[at(batch)]),
          m_ways(m_batch.stays.size()) {}

    /// False once stopped.
    bool find(const search::Stopped& stopped) {
        for (std::size_t stay = m_ways.size(); stay-- > 0;) {
            const StayModel& one = m_batch.stays[stay];
            const int first = stay == 0 ? m_batch.strikeFirst : one.firstStart;
            const int last = stay == 0 ? m_batch.strikeLast : one.lastStart;
            m_ways[stay].assign(at(std::max(0, one.lastStart - one.firstStart + 1)), {});
            for (int day = first; day <= last; ++day) {
                if (stopped()) return false;
                lookOn(stay, day);
            }
        }
        return true;
    }

    [[nodiscard]] std::optional<std::vector<LackingRoom>> fewest() const {
        const StayModel& first = m_batch.stays.front();
        int day = -1;
        for (int one = m_batch.strikeFirst; one <= m_batch.strikeLast; ++one)
            if (way(0, one).lacking < (day < 0 ? hopeless : way(0, day).lacking)) day = one;
        if (day < 0 || first.options.empty()) return std::nullopt;
        std::vector<LackingRoom> lacking;
        for (std::size_t stay = 0; stay < m_ways.size(); ++stay) {
            const Way& now = way(stay, day);
            if (now.own > 0) lacking.push_back(shortDays(now, day));
            day = now.to;
        }
        return lacking;
    }

private:
    [[nodiscard]] Way& way(std::size_t stay, int day) {
        return m_ways[stay][at(day - m_batch.stays[stay].firstStart)];
    }
    [[nodiscard]] const Way& way(std::size_t stay, int day) const {
        return m_ways[stay][at(day - m_batch.stays[stay].firstStart)];
    }

    void lookOn(std::size_t stay, int day) {
        const StayModel& one = m_batch.stays[stay];
        Way& best = way(stay, day);
        for (const StayOption& option : one.options) {
            const int length = one.terms(option, day).length();
            if (length == 0) continue;
            const int after = stay + 1 < m_ways.size() ? way(stay + 1, day + length).lacking : 0;
            if (after >= best.lacking) continue;
            for (const int zone : m_model.classes[at(option.zoneClass)].zones) {
                const int own = lackingIn(zone, option.state, day, day + length, best.lacking - after);
                if (own < best.lacking - after) best = {own + after, zone, own, day + length};
            }
        }
    }

    /// Slots that are not free in the zone on one of the days, or `limit` where that or more.
    [[nodiscard]] int lackingIn(int zone, int state, int from, int to, int limit) const {
        if (m_model.zones[at(zone)].slots < m_batch.slots || !m_model.fitsGrid(m_index, zone)) return limit;
        const bool hasMat = m_model.classes[at(m_model.zones[at(zone)].zoneClass)].hasMat;
        int lacking = 0;
        for (int day = std::min(from, m_model.days - 1); day < std::min(to, m_model.days); ++day) {
            const int asked = m_house.stateOn(zone, day);
            if (hasMat && asked != search::State::idle && asked != state) return limit;
            if (day >= from) lacking = std::max(lacking, m_batch.slots - m_house.freeSlots(zone, day));
            if (lacking >= limit) return limit;
        }
        return lacking;
    }

    /// From the first to the last day on which the stay lacks slots.
    [[nodiscard]] LackingRoom shortDays(const Way& found, int from) const {
        LackingRoom lacking{found.zone, found.own, -1, 0};
        for (int day = from; day < std::min(found.to, m_model.days); ++day) {
            if (m_house.freeSlots(found.zone, day) >= m_batch.slots) continue;
            if (lacking.from < 0) lacking.from = day;
            lacking.to = day + 1;
        }
        return lacking;
    }

    const search::State& m_house;
    const search::Model& m_model;
    int m_index;
    const BatchModel& m_batch;
    std::vector<std::vector<Way>> m_ways; ///< by stay and day after its first possible start
};

} // namespace

std::optional<std::vector<LackingRoom>> fewestLacking(const search::State& house, int batch,
                                                      const search::Stopped& stopped) {
    Ways ways(house, batch);
    return ways.find(stopped) ? ways.fewest() : std::nullopt;
}

} // namespace warmbench::planner
