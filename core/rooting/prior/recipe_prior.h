#pragma once

#include "core/crop/crop.h"
#include "core/quantity/result.h"
#include "core/rooting/beta_binomial.h"

#include <string>

namespace warmbench::rooting {

/// The law of the thermal time T until a cutting roots, among those that root: log-logistic, ln T = mu +
/// sigma W with W standard logistic and T in degree-days over `base`.
struct ThermalNeed {
    double mu = 0;
    double sigma = 1;
    Celsius base{};
    std::string derivation; ///< `derived: ...`, to show beside the figures

    /// Degree-days by which a share (above 0, below 1) of those that will root have rooted.
    [[nodiscard]] double quantile(double share) const;
    /// The share of those that will root that have rooted by so many degree-days.
    [[nodiscard]] double rootedBy(double degreeDays) const;
    [[nodiscard]] DegreeDays t10() const { return readyDegreeDays(0.1); }
    [[nodiscard]] DegreeDays t50() const { return readyDegreeDays(0.5); }
    [[nodiscard]] DegreeDays t90() const { return readyDegreeDays(0.9); }
    /// The degree-days to allow a batch so that this share of those that will root have rooted.
    [[nodiscard]] DegreeDays readyDegreeDays(double share) const {
        return DegreeDays::fromUnits(quantile(share));
    }
};

/// Thermal time to root by a recipe's days to root, root-zone ideal and base. Refused where the ideal is not
/// above the base (no thermal time passes there), and where the days are below 1 or the wrong way round.
[[nodiscard]] Result<ThermalNeed> rootingNeed(const Recipe& recipe);

/// The share of cuttings that roots, as believed before any is struck.
struct TakePrior {
    BetaShape share;
    std::string derivation; ///< `derived: ...`, to show beside the figures
};

/// The beta law of which a recipe's take, low to high, are the 10 % and 90 % points. Refused where the take
/// is outside 0 to 100 % or the wrong way round.
[[nodiscard]] Result<TakePrior> takePrior(const Recipe& recipe);

/// The beta law with P(share < low) = 0.1 and P(share < high) = 0.9, for 0 < low < high < 1; the points are
/// met to 1e-9. Solved for the mean within the sum of the shapes, each by bracketing (Boost.Math, TOMS 748).
[[nodiscard]] BetaShape betaByPoints(double low, double high);

} // namespace warmbench::rooting
