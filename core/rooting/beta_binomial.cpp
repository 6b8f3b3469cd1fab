#include "core/rooting/beta_binomial.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace warmbench::rooting {
namespace {

/// ln Gamma(z) less the leading part (z - 1/2) ln z - z + ln(2 pi) / 2, for z >= 16 (Stirling's series).
long double stirlingRest(long double z) {
    const long double u = 1 / (z * z);
    return (1.0L / 12 - u * (1.0L / 360 -
                             u * (1.0L / 1260 -
                                  u * (1.0L / 1680 - u * (1.0L / 1188 - u * (691.0L / 360360 - u / 156)))))) /
           z;
}

/// ln Gamma(z + step) - ln Gamma(z), z > 0 and z + step > 0: no large numbers are subtracted from each other
/// when z is large against |step|.
long double logGammaStep(long double z, long double step) {
    constexpr long double seriesFrom = 16;
    long double shifted = 0; // ln of the factors that lift both arguments into the series' range
    while (z < seriesFrom || z + step < seriesFrom) {
        shifted += std::log(z / (z + step));
        z += 1;
    }
    const long double end = z + step;
    return shifted + step * std::log(z) + (end - 0.5L) * std::log1p(step / z) - step + stirlingRest(end) -
           stirlingRest(z);
}

/// ln Gamma(z), z > 0.
long double logGamma(long double z) {
    return logGammaStep(1, z - 1);
}

/// ln of Gamma(n + shape) / (Gamma(shape) n!), the weight of n in a rising power series.
long double logRisingWeight(long double n, long double shape) {
    return shape <= n ? logGammaStep(n + 1, shape - 1) - logGamma(shape)
                      : logGammaStep(shape, n) - logGamma(n + 1);
}

long double logProbability(std::int64_t rooted, std::int64_t struck, BetaShape share) {
    const auto x = static_cast<long double>(rooted);
    const auto n = static_cast<long double>(struck);
    const long double a = share.alpha;
    const long double b = share.beta;
    return logRisingWeight(x, a) + logRisingWeight(n - x, b) - logRisingWeight(n, a + b);
}

/// The count in [first, last] with the greatest probability, or one end of it where the law has no hump.
std::int64_t likeliest(std::int64_t first, std::int64_t last, std::int64_t struck, BetaShape share) {
    if (share.alpha > 1 && share.beta > 1) {
        const double mode = static_cast<double>(struck) * (share.alpha - 1) / (share.alpha + share.beta - 2);
        return std::clamp(static_cast<std::int64_t>(mode), first, last);
    }
    return logProbability(first, struck, share) > logProbability(last, struck, share) ? first : last;
}

/// P(first <= X <= last), 0 <= first <= last <= struck.
long double probabilityBetween(std::int64_t first, std::int64_t last, std::int64_t struck, BetaShape share) {
    const std::int64_t middle = likeliest(first, last, struck, share);
    const auto n = static_cast<long double>(struck);
    const long double a = share.alpha;
    const long double b = share.beta;
    // With a hump the terms only fall on both sides of it, so what is negligible stays so.
    const bool hump = share.alpha >= 1 && share.beta >= 1;
    constexpr long double negligible = 1e-24L;

    long double sum = 1; // in units of the middle's probability
    long double term = 1;
    for (std::int64_t count = middle; count > first; --count) {
        const auto x = static_cast<long double>(count);
        term *= x * (n - x + b) / ((x - 1 + a) * (n - x + 1));
        sum += term;
        if (hump && term < negligible * sum) break;
    }
    term = 1;
    for (std::int64_t count = middle; count < last; ++count) {
        const auto x = static_cast<long double>(count);
        term *= (n - x) * (x + a) / ((x + 1) * (n - x - 1 + b));
        sum += term;
        if (hump && term < negligible * sum) break;
    }
    return std::min(1.0L, sum * std::exp(logProbability(middle, struck, share)));
}

} // namespace

double betaBinomialLogProbability(std::int64_t rooted, std::int64_t struck, BetaShape share) {
    if (rooted < 0 || rooted > struck) return -std::numeric_limits<double>::infinity();
    return static_cast<double>(logProbability(rooted, struck, share));
}

double betaBinomialAtLeast(std::int64_t rooted, std::int64_t struck, BetaShape share) {
    if (rooted <= 0) return 1;
    if (rooted > struck) return 0;
    if (struck - rooted + 1 <= rooted)
        return static_cast<double>(probabilityBetween(rooted, struck, struck, share));
    return static_cast<double>(1 - probabilityBetween(0, rooted - 1, struck, share));
}

} // namespace warmbench::rooting
