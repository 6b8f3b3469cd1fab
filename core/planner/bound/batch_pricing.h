#pragma once

#include "core/planner/bound/formulation.h"
#include "core/planner/bound/stock_selection.h"

#include <vector>

namespace warmbench::planner {

/// Sums of whole numbers up to here are exact in a double, and what is added once more is noticed: 2^52.
constexpr double highestExact = 4503599627370496.0;

/// What is still allowed in a part of the search: the whole problem, or one branch.
struct Domain {
    std::vector<char> links;      ///< 1 where the link may be used
    std::vector<char> mayStayOut; ///< by batch
};

[[nodiscard]] Domain wholeDomain(const Formulation& formulation);

/// Multipliers of the rows that are relaxed, whole numbers of units, none below 0.
struct Prices {
    std::vector<double> stand;  ///< what a batch pays for standing in a lane on a day, or for a day's hands
    std::vector<double> strike; ///< by strike row: what is paid for each cutting
};

/// The cheapest chains of stays of each batch at given prices: shortest paths in its network, from the end.
class BatchPricing {
public:
    explicit BatchPricing(const Formulation& formulation);

    /// Takes new prices. False where their sums would not be exact.
    [[nodiscard]] bool take(const Prices& prices);

    /// Prices all chains of a batch that the domain allows; `options` are its costs by period.
    void solve(int batch, const Domain& domain, StrikeOptions& options);

    /// After solve: links of the cheapest chain of a batch that is struck in `period`.
    void appendChain(int batch, int period, const Domain& domain, std::vector<int>& links) const;

    /// After solve: forbids the batch's links with which it costs `limits` (by period) or more. Returns how
    /// many.
    int forbid(int batch, const std::vector<double>& limits, Domain& domain);

private:
    [[nodiscard]] double priced(std::size_t link) const;
    /// Cost of a chain from a link on.
    [[nodiscard]] double from(std::size_t link) const;

    const Formulation& m_formulation;
    const Prices* m_prices = nullptr;
    std::vector<double> m_sums;        ///< running sums of the prices of each lane
    std::vector<double> m_strikePrice; ///< by link: price of its strike, 0 but for first stays
    std::vector<double> m_rest;        ///< by node: cheapest way from it to the end
    std::vector<int> m_next;           ///< by node: the link that it begins with
    std::vector<double> m_before;      ///< by node: cheapest way from the start to it, in one period
};

} // namespace warmbench::planner
