#pragma once

#include "core/planner/bound/day_packing.h"
#include "core/planner/bound/formulation.h"

#include <stop_token>
#include <vector>

namespace warmbench::planner {

/// What is still allowed in a part of the search: the whole problem, or one branch.
struct Domain {
    std::vector<char> links;      ///< 1 where the link may be used
    std::vector<char> mayStayOut; ///< by batch
};

[[nodiscard]] Domain wholeDomain(const Formulation& formulation);

/// Multipliers of the rows that are relaxed, whole numbers of units, none below 0.
struct Prices {
    std::vector<double> stand;  ///< by lane and day: what a batch pays for standing there
    std::vector<double> strike; ///< by strike row: what is paid for each cutting
};

/// The Lagrangian relaxation (Geoffrion 1974) of a formulation. Relaxed are
///   - for each lane and day: the batch stands there <= the zones of that kind have it there,
///   - the strike rows.
/// What is left falls apart into a cheapest chain for each batch, and for each kind of zone and day the
/// set-point and packing that earn most over what the mat costs. So for any prices the value is a lower bound
/// of the cost of every solution in the domain. It is exact: all terms are whole numbers below 2^53.
class DualFunction {
public:
    /// A request to `stop` ends an evaluation at once.
    DualFunction(const Formulation& formulation, std::stop_token stop);

    /// Fills in all of the results below and returns the value in units: infinity where the domain has no
    /// solution, minus infinity where the prices are too high for exact sums or the work was stopped.
    double evaluate(const Domain& domain, const Prices& prices);

    std::vector<double> standExcess;  ///< subgradient: standing less offered, by price
    std::vector<double> strikeExcess; ///< struck less limit, by row
    std::vector<int> usedLinks;
    std::vector<int> staysOut;     ///< batches
    std::vector<double> batchCost; ///< units: the cheapest of each batch, with prices

    /// After evaluate, which gave `value`: forbids every link, and every staying out, with which no solution
    /// in the domain costs less than `limit` units ("reduced cost fixing"). Returns how many were forbidden.
    int forbidCostly(Domain& domain, const Prices& prices, double value, double limit);

private:
    /// What a zone with something held earns in one of its states, and the prices that it is paid.
    struct HeldEarning {
        double earned = 0;
        std::vector<int> names;
    };

    [[nodiscard]] bool sumPrices(const Prices& prices);
    void priceStrikes(const BatchChains& chains, const Prices& prices);
    [[nodiscard]] double priced(std::size_t link) const;
    void relaxForward(const BatchChains& chains, const Domain& domain);
    double placeBatches(const Domain& domain, const Prices& prices);
    void traceChain(const BatchChains& chains);
    double fillZones(const Prices& prices);
    void fillHeld(const ZoneShelf& shelf, std::size_t zone, int day, double free, const Prices& prices);
    bool pack(const ZoneShelf& shelf, std::size_t state, int day, double least, const Prices& prices);

    const Formulation& m_formulation;
    std::stop_token m_stop;
    std::vector<double> m_sums;        ///< running sums of the prices of each lane
    std::vector<double> m_strikePrice; ///< by link: price of its strike, 0 but for first stays
    std::vector<double> m_least;       ///< by node of a batch: cheapest way to it
    std::vector<int> m_by;             ///< by node: the link that reaches it so
    std::vector<double> m_rest;        ///< by node: cheapest way from it to the end
    DayPacking m_packing;
    std::vector<int> m_names;                     ///< prices that the best packing of a free zone is paid
    std::vector<std::vector<HeldEarning>> m_held; ///< of one kind, by held zone and state
};

} // namespace warmbench::planner
