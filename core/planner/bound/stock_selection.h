#pragma once

#include "core/planner/bound/formulation.h"

#include <limits>
#include <vector>

namespace warmbench::planner {

/// What a batch costs, in units, by the period of its stock in which it is struck; infinity where it cannot
/// be.
struct StrikeOptions {
    std::vector<double> cost;
    double out = std::numeric_limits<double>::infinity(); ///< when it stays out
};

/// Which batches of a scarce stock are struck, and in which period, at the least cost: a knapsack problem
/// with several periods, by depth-first branch and bound over its few batches.
class StockSelection {
public:
    explicit StockSelection(const Formulation& formulation) : m_formulation(formulation) {}

    /// Period -2 leaves a batch free, -1 is out.
    static constexpr int free = -2;
    static constexpr int out = -1;

    /// Least cost with `options` by batch of the formulation, and with `fixedPeriod` for batch `fixedBatch`.
    /// Infinity where the limits cannot be kept. Where the search grows too long: the least cost without
    /// limits.
    double solve(const StockGroup& group, const std::vector<StrikeOptions>& options, int fixedBatch = -1,
                 int fixedPeriod = free);

    /// After solve: period of each batch of the group, in its order, or `out`.
    [[nodiscard]] const std::vector<int>& periods() const { return m_best; }

private:
    void descend(std::size_t index, double cost);
    void tryPeriod(std::size_t index, int period, double cost);
    [[nodiscard]] double costOf(std::size_t index, int period) const;

    const Formulation& m_formulation;
    const StockGroup* m_group = nullptr;
    const std::vector<StrikeOptions>* m_options = nullptr;
    int m_fixedBatch = -1;
    int m_fixedPeriod = free;
    std::vector<double> m_used; ///< by period, of its limit
    std::vector<double> m_rest; ///< least cost of the batches from an index on, without limits
    std::vector<int> m_periods;
    std::vector<int> m_best;
    double m_least = 0;
    int m_steps = 0;
};

} // namespace warmbench::planner
