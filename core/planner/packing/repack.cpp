#include "core/planner/packing/repack.h"

#include "core/planner/packing/exact.h"
#include "core/planner/packing/placement.h"
#include "core/planner/packing/segments.h"

#include <algorithm>
#include <random>

namespace warmbench::planner::packing {

namespace {

std::int64_t slotsOf(const Load& load) {
    return std::int64_t{1} * load.containers * load.footprint.height * load.footprint.width;
}

std::int64_t volume(const Load& load) {
    return slotsOf(load) * (load.to - load.from);
}

bool alike(const Load& a, const Load& b) {
    return a.containers == b.containers && a.footprint == b.footprint && a.turn == b.turn;
}

/// Places the loads one after the other, in an order that learns from what did not fit.
/// Works on segments of days: `from` and `to` of its loads are numbers of segments.
class Repack {
public:
    Repack(const Occupancy& zone, std::span<const Load> loads, std::int64_t scatterCost)
        : m_zone(zone), m_loads(loads), m_scatterCost(scatterCost), m_slots(loads.size()) {
        for (std::size_t index = 0; index < loads.size(); ++index) {
            const Load& load = loads[index];
            if (!load.fixed.empty()) {
                m_slots[index] = load.fixed;
                continue;
            }
            const std::size_t before = static_cast<std::size_t>(load.follows);
            const auto unit = load.follows < 0
                                  ? m_units.end()
                                  : std::find_if(m_units.begin(), m_units.end(), [&](const Unit& one) {
                                        return one.back() == before && alike(load, loads[before]);
                                    });
            if (unit != m_units.end())
                unit->push_back(index);
            else
                m_units.push_back({index});
        }
    }

    Packing run(const PackLimits& limits) {
        if (!areaSuffices()) {
            m_found.verdict = Verdict::Cannot;
            return m_found;
        }
        std::minstd_rand random(static_cast<std::minstd_rand::result_type>(limits.seed % 2147483646 + 1));
        for (m_found.steps = 0; m_found.steps < limits.steps; ++m_found.steps) {
            if (m_found.steps < startOrders) beginWith(static_cast<int>(m_found.steps));
            m_thorough = m_found.steps == 0
                             ? limits.improve
                             : m_found.verdict == Verdict::Packed || m_found.steps % thoroughEvery == 0;
            round(random);
            if (m_found.verdict == Verdict::Packed && (!limits.improve || m_found.cost == 0)) break;
        }
        if (m_found.verdict != Verdict::Packed && limits.exactSteps > 0) searchExactly(limits.exactSteps);
        return m_found;
    }

private:
    static constexpr int startOrders = 3;
    static constexpr int thoroughEvery = 4; ///< rounds, until a fit is found

    /// Loads that would keep the same slots, one after the other.
    using Unit = std::vector<std::size_t>;

    [[nodiscard]] bool areaSuffices() const {
        std::vector<std::int64_t> wanted(static_cast<std::size_t>(m_zone.days()), 0);
        for (const Unit& unit : m_units)
            for (const std::size_t index : unit) {
                if (slotsOf(m_loads[index]) > m_zone.capacity()) return false;
                for (int day = m_loads[index].from; day < m_loads[index].to; ++day)
                    wanted[static_cast<std::size_t>(day)] += slotsOf(m_loads[index]);
            }
        for (int day = 0; day < m_zone.days(); ++day)
            if (wanted[static_cast<std::size_t>(day)] > m_zone.freeOn(day)) return false;
        return true;
    }

    /// Order 0 is by first day: for single slots that is interval colouring, which always fits.
    void beginWith(int order) {
        const auto key = [&](const Unit& unit) {
            const Load& load = m_loads[unit.front()];
            const std::int64_t area = std::int64_t{1} * load.footprint.height * load.footprint.width;
            std::int64_t all = 0;
            for (const std::size_t index : unit) all += volume(m_loads[index]);
            if (order == 0) return std::pair{std::int64_t{load.from}, -all};
            if (order == 1) return std::pair{-area, -all};
            return std::pair{-all, std::int64_t{load.from}};
        };
        std::sort(m_units.begin(), m_units.end(), [&](const Unit& a, const Unit& b) {
            return std::pair{key(a), a.front()} < std::pair{key(b), b.front()};
        });
    }

    /// Places all in order. The first that does not fit, or with which the cost is no better than before,
    /// moves towards the front for the next round (squeaky wheel, Joslin and Clements 1999).
    void round(std::minstd_rand& random) {
        m_taken = m_zone;
        std::int64_t cost = 0;
        for (std::size_t at = 0; at < m_units.size(); ++at) {
            const bool placed = placeUnit(m_units[at]);
            if (placed)
                for (const std::size_t index : m_units[at]) cost += costOf(index);
            if (placed && (m_found.verdict != Verdict::Packed || cost < m_found.cost)) continue;
            const auto to = static_cast<std::ptrdiff_t>(random() % 2 == 0 ? 0 : random() % (at + 1));
            std::rotate(m_units.begin() + to, m_units.begin() + static_cast<std::ptrdiff_t>(at),
                        m_units.begin() + static_cast<std::ptrdiff_t>(at) + 1);
            return;
        }
        keep();
        if (m_found.cost > 0 && !m_units.empty())
            std::swap(m_units[random() % m_units.size()], m_units[random() % m_units.size()]);
    }

    bool placeUnit(const Unit& unit) {
        if (unit.size() > 1 && placeJoined(unit)) return true;
        return std::all_of(unit.begin(), unit.end(), [&](std::size_t index) { return placeOne(index); });
    }

    bool placeJoined(const Unit& unit) {
        const Load& load = m_loads[unit.front()];
        const int to = m_loads[unit.back()].to;
        std::vector<SlotRect>& slots = m_slots[unit.front()];
        const Stay stay{load.from, to, load.containers, load.footprint, load.turn, stoodBefore(unit.front())};
        if (!place(stay, slots)) return false;
        m_taken.occupy(slots, load.from, to);
        for (const std::size_t index : unit) m_slots[index] = slots;
        return true;
    }

    bool placeOne(std::size_t index) {
        const Load& load = m_loads[index];
        const Stay stay{load.from, load.to, load.containers, load.footprint, load.turn, stoodBefore(index)};
        if (!place(stay, m_slots[index])) return false;
        m_taken.occupy(m_slots[index], load.from, load.to);
        return true;
    }

    bool place(const Stay& stay, std::vector<SlotRect>& slots) {
        return m_thorough ? m_placer.place(m_taken, stay, slots)
                          : m_placer.placeQuickly(m_taken, stay, slots);
    }

    [[nodiscard]] const std::vector<SlotRect>& stoodBefore(std::size_t index) const {
        const Load& load = m_loads[index];
        return load.follows >= 0 ? m_slots[static_cast<std::size_t>(load.follows)] : load.preferred;
    }

    [[nodiscard]] std::int64_t costOf(std::size_t index) const {
        const Load& load = m_loads[index];
        if (!load.fixed.empty()) return 0;
        const std::int64_t scatter = m_scatterCost == 0 ? 0 : m_scatterCost * (groups(m_slots[index]) - 1);
        return scatter + (load.moveCost > 0 && moves(index) ? load.moveCost : 0);
    }

    /// What is placed, unless something better was found before.
    void keep() {
        std::int64_t cost = 0;
        for (std::size_t index = 0; index < m_loads.size(); ++index) cost += costOf(index);
        if (m_found.verdict == Verdict::Packed && cost >= m_found.cost) return;
        m_found.verdict = Verdict::Packed;
        m_found.cost = cost;
        m_found.slots = m_slots;
    }

    [[nodiscard]] bool moves(std::size_t index) const {
        std::vector<SlotRect> stood = stoodBefore(index);
        std::vector<SlotRect> stands = m_slots[index];
        std::sort(stood.begin(), stood.end());
        std::sort(stands.begin(), stands.end());
        return stood != stands;
    }

    void searchExactly(long steps) {
        std::vector<std::size_t> indices;
        std::vector<Load> movable;
        for (const Unit& unit : m_units)
            for (const std::size_t index : unit) {
                indices.push_back(index);
                movable.push_back(m_loads[index]);
            }
        std::vector<std::vector<SlotRect>> slots;
        m_found.verdict = packExactly(m_zone, movable, steps, slots);
        if (m_found.verdict != Verdict::Packed) return;
        for (std::size_t at = 0; at < indices.size(); ++at) m_slots[indices[at]] = slots[at];
        m_found.verdict = Verdict::Unknown;
        keep();
    }

    const Occupancy& m_zone; ///< with all that is fixed
    std::span<const Load> m_loads;
    std::int64_t m_scatterCost;
    Occupancy m_taken; ///< of the round
    Placer m_placer;
    bool m_thorough = true;    ///< this round looks for compact places
    std::vector<Unit> m_units; ///< in the order of placing
    std::vector<std::vector<SlotRect>> m_slots;
    Packing m_found;
};

/// Puts the fixed loads in their places; false when one cannot stand there.
bool placeFixed(std::span<const Load> loads, Occupancy& zone) {
    for (const Load& load : loads)
        for (const SlotRect& rect : load.fixed) {
            if (!rect.within(zone.rows(), zone.cols()) || !zone.isFree(rect, load.from, load.to))
                return false;
            zone.occupy({&rect, 1}, load.from, load.to);
        }
    return true;
}

} // namespace

Packing repack(const Occupancy& zone, std::span<const Load> loads, std::int64_t scatterCost,
               const PackLimits& limits) {
    const Segments segments(loads, zone.days());
    Occupancy condensed = zone.condensed(segments.cuts());
    std::vector<Load> shortened(loads.begin(), loads.end());
    for (Load& load : shortened) {
        load.from = segments.at(load.from);
        load.to = segments.at(load.to);
    }
    if (!placeFixed(shortened, condensed)) return {Verdict::Cannot, {}, 0, 0};
    return Repack(condensed, shortened, scatterCost).run(limits);
}

Packing repack(const Zone& zone, int days, std::span<const Load> loads, std::int64_t scatterCost,
               const PackLimits& limits) {
    return repack(Occupancy(zone, days), loads, scatterCost, limits);
}

} // namespace warmbench::planner::packing
