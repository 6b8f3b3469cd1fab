#pragma once

#include "core/planner/bound/ascent.h"
#include "core/planner/bound/split.h"

#include <cstdint>
#include <functional>
#include <limits>
#include <map>
#include <stop_token>
#include <vector>

namespace warmbench::planner {

/// Branch and bound (Land & Doig 1960) over splits of a formulation's domain, best first, with the Lagrangian
/// relaxation as the bound of each branch. Its bound is the least value of all open branches; a branch whose
/// value reaches the cutoff holds no better solution and is closed.
class BoundTree {
public:
    BoundTree(const Formulation& formulation, DualFunction& dual)
        : m_formulation(formulation), m_dual(dual) {}

    /// Begins with one branch.
    void open(const Domain& domain, const Ascent& ascent);

    /// Closes the branch of least value, or splits it in two. False where that cannot be done: nothing is
    /// left to split in it, or the work was stopped. `cutoff` in units.
    bool splitLowest(double cutoff, const std::stop_token& stop);

    [[nodiscard]] bool empty() const { return m_open.empty(); }
    /// Units: no solution below the cutoff costs less. Infinity when no branch is open.
    [[nodiscard]] double bound() const {
        return m_open.empty() ? std::numeric_limits<double>::infinity() : m_open.begin()->first;
    }
    [[nodiscard]] std::size_t bytes() const; ///< of the open branches, about

private:
    struct Branch {
        Domain domain;
        std::vector<float> stand; ///< prices
        std::vector<float> strike;
        std::vector<float> usage;
    };

    void keep(const Domain& domain, const Ascent& ascent, double atLeast);
    [[nodiscard]] double valueAfter(const Domain& domain, const Prices& prices, double cutoff, int iterations,
                                    const std::stop_token& stop);
    void settle(Domain domain, const Prices& prices, double atLeast, double cutoff,
                const std::stop_token& stop);

    /// Puts the lowest branch, in which one chain is left to each batch, where its solution's cost is. False
    /// where it is there already.
    bool settleLeaf();

    const Formulation& m_formulation;
    DualFunction& m_dual;
    std::multimap<double, Branch> m_open;
};

} // namespace warmbench::planner
