#pragma once

#include "core/planner/packing/cells.h"

#include <span>

namespace warmbench::planner::packing {

/// What stands where in one zone on each day of the horizon. Containers are added and taken away again in any
/// order; a copy is a few flat vectors, and assigning one to another of the same zone allocates nothing.
/// Days outside the horizon are not kept: `[from, to)` is cut to it, and a stay wholly beyond sees blocked
/// slots only.
class Occupancy {
public:
    Occupancy() = default;
    /// The empty zone over days 0 .. `days` - 1.
    Occupancy(const Zone& zone, int days);

    [[nodiscard]] int rows() const { return m_blocked.rows(); }
    [[nodiscard]] int cols() const { return m_blocked.cols(); }
    [[nodiscard]] int days() const { return m_days; }
    [[nodiscard]] const Cells& blocked() const { return m_blocked; }

    /// Slots of the zone that nothing blocks.
    [[nodiscard]] int capacity() const { return m_capacity; }
    /// Free slots on `day`, which must lie in the horizon.
    [[nodiscard]] int freeOn(int day) const { return m_free[static_cast<std::size_t>(day)]; }
    /// The least of `freeOn` over [from, to); `capacity()` when no day of it lies in the horizon.
    [[nodiscard]] int leastFree(int from, int to) const;

    /// Nothing stands on `rect` over [from, to) and none of its slots is blocked. It must lie in the grid.
    [[nodiscard]] bool isFree(const SlotRect& rect, int from, int to) const;
    /// Into `out`: the slots that are free on every day of [from, to).
    void freeOver(int from, int to, Cells& out) const;
    /// Into `out`: the slots that are free on `day`; all that are not blocked when it is outside the horizon.
    void freeOnDay(int day, Cells& out) const;

    /// Puts containers on free slots, or takes away what stands there on every day of [from, to).
    void occupy(std::span<const SlotRect> containers, int from, int to);
    void release(std::span<const SlotRect> containers, int from, int to);

    /// The same zone with days put together: day i of the result is taken where anything stands on any of the
    /// days [cuts[i], cuts[i + 1]). `cuts` increases and lies in 0 .. `days()`.
    [[nodiscard]] Occupancy condensed(std::span<const int> cuts) const;

    friend bool operator==(const Occupancy& a, const Occupancy& b) {
        return a.m_days == b.m_days && a.m_capacity == b.m_capacity && a.m_blocked == b.m_blocked &&
               a.m_taken == b.m_taken && a.m_free == b.m_free;
    }

private:
    /// Words of the bits of one day.
    [[nodiscard]] std::size_t stride() const { return static_cast<std::size_t>(m_blocked.words()); }
    void change(std::span<const SlotRect> containers, int from, int to, bool taken);

    int m_days = 0;
    int m_capacity = 0;
    Cells m_blocked;
    Cells m_changing; ///< working memory
    std::vector<std::uint64_t>
        m_taken;             ///< day by day, the slots taken, as in Cells; blocked ones are not in it
    std::vector<int> m_free; ///< by day
};

} // namespace warmbench::planner::packing
