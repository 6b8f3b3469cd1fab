#pragma once

#include "core/rooting/beta_binomial.h"
#include "core/rooting/proportion.h"

#include <optional>

namespace warmbench::rooting {

/// What is believed of a share after `take`, from what was believed before.
BetaShape updated(BetaShape before, const Take& take);

double betaMean(BetaShape share);
double betaDeviation(BetaShape share);
/// The likeliest share; nothing where neither shape is above 1.
std::optional<double> betaMode(BetaShape share);
/// The share that is not exceeded with `probability` (0 to 1).
double betaQuantile(BetaShape share, double probability);
/// The interval that leaves out (1 - level) / 2 on each side.
Interval betaInterval(BetaShape share, double level);
/// P(share > limit).
double betaAbove(BetaShape share, double limit);

/// Cuttings expected to root of so many struck, and the standard deviation of their number.
double expectedRooted(BetaShape share, std::int64_t struck);
double rootedDeviation(BetaShape share, std::int64_t struck);

} // namespace warmbench::rooting
