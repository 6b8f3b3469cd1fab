#pragma once

#include "core/rooting/fit.h"

#include <cstdint>
#include <optional>

namespace warmbench::rooting {

/// A figure with its standard error.
struct Estimate {
    double value = 0;
    double error = 0;
};

/// The share of all struck that has rooted by a time, of a fit with a law (delta method).
Estimate rootedBy(const RootingFit& fit, double time);

/// The time by which the part `probability` (above 0, below 1) of those that root has rooted, of a fit with a
/// law (delta method).
Estimate timeOf(const RootingFit& fit, double probability);

/// The time by which the part `share` (above 0) of all struck has rooted; nothing where fewer ever do.
std::optional<double> timeOfShare(const RootingLaw& law, double share);

/// The chance that a cutting without roots at `now` has rooted by `horizon`, which is not before.
double chanceToRoot(const RootingLaw& law, double now, double horizon);

/// The chance that a cutting without roots at `now` never roots.
double chanceOfNever(const RootingLaw& law, double now);

/// P(X >= wanted) of `trials` independent cuttings that root with `chance` each.
double binomialAtLeast(std::int64_t wanted, std::int64_t trials, double chance);

/// A batch at one moment.
struct BatchNow {
    double time = 0; ///< degree-days since it was struck
    std::int64_t rooted = 0;
    std::int64_t alive = 0; ///< without roots
};

struct BatchForecast {
    double chance = 0;   ///< of each cutting alive without roots to root by the horizon
    double rooted = 0;   ///< expected by then, with those rooted now
    double sureness = 0; ///< chance that at least the wanted number has rooted, taking the law as certain
};

/// What becomes of a batch by `horizon` when its law is certain and none die.
BatchForecast forecast(const RootingLaw& law, const BatchNow& now, double horizon, std::int64_t wanted);

} // namespace warmbench::rooting
