#pragma once

#include "core/planner/bound/batch_pricing.h"
#include "core/planner/bound/day_packing.h"
#include "core/planner/bound/formulation.h"
#include "core/planner/bound/stock_selection.h"

#include <stop_token>
#include <vector>

namespace warmbench::planner {

/// The Lagrangian relaxation (Geoffrion 1974) of a formulation. Relaxed are
///   - for each lane and day: the batch stands there <= the zones of that kind have it there,
///   - for each batch and day with scarce hands: it is struck then <= hands strike it then,
///   - the strike rows.
/// What is left falls apart into a cheapest chain for each batch (for the batches of a scarce stock together:
/// see StockSelection), and for each kind of zone and day the set-point and packing that earn most over what
/// the mat costs. So for any prices the value is a lower bound of the cost of every solution in the domain.
/// It is exact: all terms are whole numbers below 2^53.
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
    std::vector<int> staysOut; ///< batches

    /// After evaluate in `domain`, which gave `value`: forbids every link, and every staying out, with which
    /// no solution in the domain costs less than `limit` units ("reduced cost fixing"). Returns how many were
    /// forbidden.
    int forbidCostly(Domain& domain, double value, double limit);

private:
    using Items = std::vector<DayPacking::Item>;

    /// What a zone with something held earns in one of its states, and the prices that it is paid.
    struct HeldEarning {
        double earned = 0;
        std::vector<int> names;
    };

    double placeBatches(const Domain& domain);
    void place(int batch, int period, const Domain& domain);
    /// By period, and last for staying out: what batch costs, and all others of its stock group with it, more
    /// than the group at best.
    [[nodiscard]] std::vector<double> detours(int batch);
    double fillZones(const Prices& prices);
    double fillShelf(std::size_t shelf, const Prices& prices);
    /// What the strikes pay most for the hands of scarce days.
    double strikeCuttings(const Prices& prices);
    /// What the zones with something held earn on a day on which it stands there, in set-point `state` - 1.
    void fillHeld(const ZoneShelf& shelf, int day, std::size_t state);
    /// What they earn on a day on which it is gone: `free`, as the other zones.
    void fillFreed(const ZoneShelf& shelf, int day, double free);

    const Formulation& m_formulation;
    std::stop_token m_stop;
    BatchPricing m_batches;
    StockSelection m_selection;
    std::vector<StrikeOptions> m_options; ///< by batch
    std::vector<double> m_groupCost;      ///< units, by stock group
    DayPacking m_packing;
    std::vector<std::vector<Items>> m_standing;   ///< by shelf; by day of it and set-point + 1
    std::vector<Items> m_striking;                ///< by labour day
    std::vector<int> m_names;                     ///< prices that the best packing of a free zone is paid
    std::vector<std::vector<HeldEarning>> m_held; ///< of one kind, by held zone and state
};

} // namespace warmbench::planner
