#include "core/rooting/beta_posterior.h"

#include <boost/math/special_functions/beta.hpp>

#include <cmath>

namespace warmbench::rooting {

BetaShape updated(BetaShape before, const Take& take) {
    return {before.alpha + static_cast<double>(take.rooted),
            before.beta + static_cast<double>(take.struck - take.rooted)};
}

double betaMean(BetaShape share) {
    return share.alpha / (share.alpha + share.beta);
}

double betaDeviation(BetaShape share) {
    const double weight = share.alpha + share.beta;
    return std::sqrt(share.alpha * share.beta / (weight + 1)) / weight;
}

std::optional<double> betaMode(BetaShape share) {
    if (share.alpha <= 1 && share.beta <= 1) return std::nullopt;
    if (share.alpha <= 1) return 0;
    if (share.beta <= 1) return 1;
    return (share.alpha - 1) / (share.alpha + share.beta - 2);
}

double betaQuantile(BetaShape share, double probability) {
    return boost::math::ibeta_inv(share.alpha, share.beta, probability);
}

Interval betaInterval(BetaShape share, double level) {
    const double outside = (1 - level) / 2;
    return {betaQuantile(share, outside), boost::math::ibetac_inv(share.alpha, share.beta, outside)};
}

double betaAbove(BetaShape share, double limit) {
    return boost::math::ibetac(share.alpha, share.beta, limit);
}

double expectedRooted(BetaShape share, std::int64_t struck) {
    return static_cast<double>(struck) * betaMean(share);
}

double rootedDeviation(BetaShape share, std::int64_t struck) {
    const double weight = share.alpha + share.beta;
    const auto n = static_cast<double>(struck);
    return std::sqrt(n * share.alpha * share.beta * (weight + n) / (weight + 1)) / weight;
}

} // namespace warmbench::rooting
