#include "core/rooting/forecast.h"

#include <boost/math/special_functions/beta.hpp>

#include <array>
#include <cmath>

namespace warmbench::rooting {
namespace {

/// The standard error of a figure that moves so with p, mu and sigma.
double deltaError(const LawCovariance& covariance, const std::array<double, 3>& moves) {
    double variance = 0;
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j) variance += moves[i] * covariance[i * 3 + j] * moves[j];
    return std::sqrt(variance);
}

} // namespace

Estimate rootedBy(const RootingFit& fit, double time) {
    const RootingLaw& law = *fit.law;
    if (!(time > 0)) return {};
    const double z = (std::log(time) - law.mu) / law.sigma;
    const LawPoint point = lawPoint(law.family, z);
    const double byPlace = law.share * std::exp(point.logDensity) / law.sigma;
    return {law.rootedBy(time),
            deltaError(fit.covariance, {std::exp(point.logBelow), -byPlace, -byPlace * z})};
}

Estimate timeOf(const RootingFit& fit, double probability) {
    const double time = fit.law->timeOf(probability);
    return {time, deltaError(fit.covariance, {0, time, time * lawQuantile(fit.law->family, probability)})};
}

std::optional<double> timeOfShare(const RootingLaw& law, double share) {
    if (share >= law.share) return std::nullopt;
    return law.timeOf(share / law.share);
}

double chanceToRoot(const RootingLaw& law, double now, double horizon) {
    const double rooted = law.rootedBy(now);
    return (law.rootedBy(horizon) - rooted) / (1 - rooted);
}

double chanceOfNever(const RootingLaw& law, double now) {
    return (1 - law.share) / (1 - law.rootedBy(now));
}

double binomialAtLeast(std::int64_t wanted, std::int64_t trials, double chance) {
    if (wanted <= 0) return 1;
    if (wanted > trials) return 0;
    return boost::math::ibeta(static_cast<double>(wanted), static_cast<double>(trials - wanted + 1), chance);
}

BatchForecast forecast(const RootingLaw& law, const BatchNow& now, double horizon, std::int64_t wanted) {
    const double chance = chanceToRoot(law, now.time, horizon);
    return {chance, static_cast<double>(now.rooted) + static_cast<double>(now.alive) * chance,
            binomialAtLeast(wanted - now.rooted, now.alive, chance)};
}

} // namespace warmbench::rooting
