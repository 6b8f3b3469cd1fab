#include "core/planner/packing/exact.h"

#include "core/planner/packing/plate.h"

#include <algorithm>

namespace warmbench::planner::packing {

namespace {

/// One load in one of its ways to be turned.
struct Shape {
    std::size_t load;
    Footprint footprint;
};

class ExactSearch {
public:
    ExactSearch(const Occupancy& zone, std::span<const Load> loads, long steps,
                std::vector<std::vector<SlotRect>>& slots)
        : m_zone(zone), m_loads(loads), m_stepsLeft(steps), m_slots(slots), m_first(loads.size(), 0),
          m_places(loads.size()), m_usable(static_cast<std::size_t>(zone.days())),
          m_needed(static_cast<std::size_t>(zone.days())) {
        for (std::size_t load = 0; load < loads.size(); ++load) {
            const Footprint& given = loads[load].footprint;
            m_shapes.push_back({load, given});
            if (loads[load].turn && given.height != given.width)
                m_shapes.push_back({load, {given.width, given.height}});
        }
    }

    Verdict run() {
        if (next()) return Verdict::Packed;
        for (auto& slots : m_slots) slots.clear();
        return m_stepsLeft < 0 ? Verdict::Unknown : Verdict::Cannot;
    }

private:
    [[nodiscard]] int left(std::size_t load) const {
        return m_loads[load].containers - static_cast<int>(m_slots[load].size());
    }

    /// Places the next container of the load that has the least choice.
    bool next() { // NOLINT(misc-no-recursion)
        if (--m_stepsLeft < 0 || !lookAhead()) return false;
        const std::size_t load = leastChoice();
        if (load == m_loads.size()) return true;
        std::vector<SlotRect> places;
        for (const Shape& shape : m_shapes)
            if (shape.load == load) listPlaces(shape, places);
        std::sort(places.begin(), places.end());
        const int firstBefore = m_first[load];
        for (const SlotRect& place : places) {
            m_zone.occupy({&place, 1}, m_loads[load].from, m_loads[load].to);
            m_slots[load].push_back(place);
            m_first[load] = key(place);
            if (next()) return true;
            m_slots[load].pop_back();
            m_zone.release({&place, 1}, m_loads[load].from, m_loads[load].to);
        }
        m_first[load] = firstBefore;
        return false;
    }

    /// Alike containers are placed in the order of their first corners.
    [[nodiscard]] int key(const SlotRect& place) const { return place.row * m_zone.cols() + place.col; }

    void listPlaces(const Shape& shape, std::vector<SlotRect>& places) {
        freeFor(shape.load);
        m_free.corners(shape.footprint, m_corners);
        for (int slot = m_corners.next(m_first[shape.load]); slot < m_corners.size();
             slot = m_corners.next(slot + 1))
            places.push_back(
                {slot / m_zone.cols(), slot % m_zone.cols(), shape.footprint.height, shape.footprint.width});
    }

    /// Into m_free, what the load's stay can stand on. Beyond the horizon only its own containers are in the
    /// way.
    void freeFor(std::size_t load) {
        m_zone.freeOver(m_loads[load].from, m_loads[load].to, m_free);
        if (m_loads[load].from < m_zone.days()) return;
        for (const SlotRect& own : m_slots[load]) m_free.remove(own);
    }

    /// Counts the places of every load and the slots that each day can still use; false when some load or day
    /// cannot be satisfied any more.
    bool lookAhead() {
        for (Cells& usable : m_usable) usable.reshape(m_zone.rows(), m_zone.cols());
        std::fill(m_needed.begin(), m_needed.end(), 0);
        std::fill(m_places.begin(), m_places.end(), 0);
        Cells reach(m_zone.rows(), m_zone.cols());
        for (std::size_t at = 0; at < m_shapes.size();) {
            const std::size_t load = m_shapes[at].load;
            reach.clear();
            freeFor(load);
            for (; at < m_shapes.size() && m_shapes[at].load == load; ++at) {
                if (left(load) == 0) continue;
                m_free.corners(m_shapes[at].footprint, m_corners);
                for (int slot = m_corners.next(m_first[load]); slot < m_corners.size();
                     slot = m_corners.next(slot + 1)) {
                    ++m_places[load];
                    reach.add(SlotRect{slot / m_zone.cols(), slot % m_zone.cols(),
                                       m_shapes[at].footprint.height, m_shapes[at].footprint.width});
                }
            }
            const int area = left(load) * m_loads[load].footprint.height * m_loads[load].footprint.width;
            if (reach.count() < area) return false;
            for (int day = std::max(0, m_loads[load].from); day < std::min(m_loads[load].to, m_zone.days());
                 ++day) {
                m_usable[static_cast<std::size_t>(day)].unite(reach);
                m_needed[static_cast<std::size_t>(day)] += area;
            }
        }
        for (std::size_t day = 0; day < m_usable.size(); ++day)
            if (m_usable[day].count() < m_needed[day]) return false;
        return true;
    }

    [[nodiscard]] std::size_t leastChoice() const {
        std::size_t best = m_loads.size();
        for (std::size_t load = 0; load < m_loads.size(); ++load)
            if (left(load) > 0 && (best == m_loads.size() || m_places[load] < m_places[best])) best = load;
        return best;
    }

    Occupancy m_zone;
    std::span<const Load> m_loads;
    long m_stepsLeft;
    std::vector<std::vector<SlotRect>>& m_slots;
    std::vector<Shape> m_shapes;
    std::vector<int> m_first;    ///< by load, the least slot of its next container's corner
    std::vector<int> m_places;   ///< by load, places of its next container
    std::vector<Cells> m_usable; ///< by day, slots that something not yet placed can cover
    std::vector<int> m_needed;   ///< by day, slots that it will cover
    Cells m_free;
    Cells m_corners;
};

/// All stand on the same days, so they are a plate.
bool allAtOnce(std::span<const Load> loads) {
    return std::all_of(loads.begin(), loads.end(), [&](const Load& load) {
        return load.from == loads.front().from && load.to == loads.front().to;
    });
}

Verdict packAsPlate(const Occupancy& zone, std::span<const Load> loads, long steps,
                    std::vector<std::vector<SlotRect>>& slots) {
    std::vector<Pieces> pieces;
    for (const Load& load : loads) pieces.push_back({load.footprint, load.turn, load.containers});
    Cells free;
    zone.freeOver(loads.front().from, loads.front().to, free);
    return packPlate(free, pieces, steps, slots);
}

} // namespace

Verdict packExactly(const Occupancy& zone, std::span<const Load> loads, long steps,
                    std::vector<std::vector<SlotRect>>& slots) {
    slots.assign(loads.size(), {});
    if (loads.empty()) return Verdict::Packed;
    if (loads.front().from < zone.days() && allAtOnce(loads)) return packAsPlate(zone, loads, steps, slots);
    return ExactSearch(zone, loads, steps, slots).run();
}

} // namespace warmbench::planner::packing
