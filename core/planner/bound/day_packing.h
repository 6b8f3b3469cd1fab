#pragma once

#include <vector>

namespace warmbench::planner {

/// The 0-1 knapsack problem of one zone on one day, by dynamic programming over slots (Bellman 1957): which
/// batches would pay most for a place. Values are whole numbers held in doubles, so sums are exact.
class DayPacking {
public:
    /// Forgets all items; the zone has `slots` slots.
    void clear(int slots);

    /// Adds a batch of `slots` slots that pays `value` > 0; `name` is given back by `chosen`.
    void add(int name, int slots, double value);

    /// Most that can be paid with `slots` slots, at most those of the zone.
    [[nodiscard]] double best(int slots) const;

    /// Appends the names of a best choice for `slots` slots.
    void chosen(int slots, std::vector<int>& names) const;

private:
    struct Item {
        int name = 0;
        int slots = 0;
    };
    [[nodiscard]] const double* row(std::size_t items) const { return m_best.data() + items * m_width; }

    std::size_t m_width = 1; ///< slots + 1
    std::vector<Item> m_items;
    std::vector<double> m_best; ///< row i: best of the first i items, by slots
};

} // namespace warmbench::planner
