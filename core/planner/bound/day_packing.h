#pragma once

#include <vector>

namespace warmbench::planner {

/// The 0-1 knapsack problem of one zone on one day: which batches would pay most for a place. The relaxation
/// of Dantzig (1957) and a greedy choice settle most batches at once (Ingargiola & Korsh 1973); what they
/// leave open is decided by dynamic programming over slots (Bellman 1957). Values are whole numbers held in
/// doubles, so sums are exact.
class DayPacking {
public:
    struct Item {
        int name = 0; ///< index of its price
        int slots = 0;
    };

    /// Takes `items` at `prices`, none below 0. Puts the items in the order of what they pay for a slot,
    /// which makes the next call with like prices quicker.
    void take(std::vector<Item>& items, const std::vector<double>& prices);

    /// Not less than what can be paid with `slots` slots, and soon known.
    [[nodiscard]] double relaxed(int slots) const;

    /// Most that can be paid with `slots` slots.
    [[nodiscard]] double best(int slots);

    /// After best: appends the names of a best choice.
    void chosen(std::vector<int>& names) const;

private:
    struct Offer {
        double perSlot = 0;
        double value = 0;
        Item item;
    };

    /// Fills m_greedy with what fits, the dearest slots first, and returns what it pays. `filled` becomes the
    /// number of offers before the first that does not fit, `relaxed` an upper bound.
    double fillGreedily(int slots, std::size_t& filled, double& relaxed);
    /// What the offers of m_open pay at most with `room` slots.
    double decideOpen(int room);

    std::vector<Offer> m_offers; ///< that pay something
    std::vector<Item> m_unpaid;
    std::vector<std::size_t> m_greedy;
    std::vector<std::size_t> m_sure; ///< offers that are in a best choice
    std::vector<std::size_t> m_open;
    std::vector<std::size_t> m_chosen;
    std::size_t m_width = 1;    ///< room + 1
    std::vector<double> m_best; ///< row i: best of the first i open offers, by slots
};

} // namespace warmbench::planner
