#pragma once

#include "core/planner/bound/dual_function.h"

#include <stop_token>
#include <vector>

namespace warmbench::planner {

/// How far an ascent goes.
struct AscentLimits {
    double cutoff = 0;    ///< units: a value at or above it is all that is asked for
    int iterations = 100; ///< at most
};

/// Prices at which each slot taken pays an equal share of its mat: a start.
[[nodiscard]] Prices sharePrices(const Formulation& formulation);

/// Raises the value of the dual function by the volume algorithm of Barahona & Anbil (2000): steps from the
/// best prices along a running mean of subgradients, which is the row excess of a running mean of solutions;
/// that mean tends to a solution of the linear relaxation. Prices are kept whole, so every value is exact.
class Ascent {
public:
    /// Counts the use of links only where it `countsUsage`, which takes long where there are many.
    Ascent(const Formulation& formulation, DualFunction& dual, bool countsUsage);

    /// Evaluates `domain` at `prices` and begins there. Once stopped, nothing is known of its value.
    void start(const Domain& domain, const Prices& prices, const std::stop_token& stop);

    /// Goes on in a domain that is no larger than at the start. Returns whether the cutoff was reached.
    bool climb(const Domain& domain, const AscentLimits& limits, const std::stop_token& stop);

    [[nodiscard]] const Prices& prices() const { return m_best; }
    [[nodiscard]] double value() const { return m_value; } ///< units, of the best prices; never falls
    [[nodiscard]] const std::vector<double>& usage() const { return m_usage; } ///< by link, 0 to 1

private:
    /// Squared length of the mean excess along which prices can move, strike rows measured in batches.
    [[nodiscard]] double meanLength() const;
    /// Weight of the newest solution for the shortest mean excess, within limits. `agrees`: whether the
    /// newest subgradient points the way of the mean.
    [[nodiscard]] double weightOfNewest(bool& agrees) const;
    void takeInto(double weight);
    void adapt(bool better, bool agrees);

    const Formulation& m_formulation;
    DualFunction& m_dual;
    double m_cuttingsScale = 1; ///< cuttings of a batch, about
    Prices m_best;
    Prices m_trial;
    double m_value = 0;
    std::vector<double> m_standMean;
    std::vector<double> m_strikeMean;
    bool m_countsUsage;
    std::vector<double> m_usage;
    double m_stride = 0;    ///< share of Polyak's step
    double m_newest = 0;    ///< highest weight of the newest solution
    double m_reference = 0; ///< value when that weight was last looked at
    int m_iteration = 0;
    int m_failures = 0; ///< trials since the value last rose or the stride last fell
};

} // namespace warmbench::planner
