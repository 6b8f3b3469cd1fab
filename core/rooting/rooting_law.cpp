#include "core/rooting/rooting_law.h"

#include <boost/math/special_functions/erf.hpp>

#include <cmath>
#include <numbers>

namespace warmbench::rooting {
namespace {

constexpr std::array<std::string_view, 3> names{"loglogistic", "lognormal", "weibull"};

/// ln(1 + e^z).
double softPlus(double z) {
    return z > 0 ? z + std::log1p(std::exp(-z)) : std::log1p(std::exp(z));
}

/// ln(1 - e^-x) for x > 0.
double logOneMinusExp(double x) {
    return x > std::numbers::ln2 ? std::log1p(-std::exp(-x)) : std::log(-std::expm1(-x));
}

/// ln of sqrt(2 pi).
const double logRootTwoPi = std::log(2 * std::numbers::pi) / 2;

/// ln P(W <= z) of the normal law.
double logNormalBelow(double z) {
    if (z > 0) return std::log1p(-std::erfc(z / std::numbers::sqrt2) / 2);
    if (z > -30) return std::log(std::erfc(-z / std::numbers::sqrt2) / 2);
    // The tail's asymptotic series (Abramowitz and Stegun 26.2.12).
    const double u = 1 / (z * z);
    return -z * z / 2 - std::log(-z) - logRootTwoPi + std::log1p(-u * (1 - u * (3 - u * (15 - 105 * u))));
}

double logNormalDensity(double z) {
    return -z * z / 2 - logRootTwoPi;
}

double logNormalBetween(double low, double high) {
    constexpr double narrow = 1e-5;
    if (high - low < narrow) return std::log(high - low) + logNormalDensity((low + high) / 2);
    if (low >= 0) return logNormalBetween(-high, -low);
    if (high > 0) return std::log1p(-std::exp(logNormalBelow(-high)) - std::exp(logNormalBelow(low)));
    const double below = logNormalBelow(high);
    return below + logOneMinusExp(below - logNormalBelow(low));
}

} // namespace

std::string_view familyName(Family family) {
    return names[static_cast<std::size_t>(family)];
}

std::optional<Family> familyFromName(std::string_view name) {
    for (const Family family : families)
        if (familyName(family) == name) return family;
    return std::nullopt;
}

LawPoint lawPoint(Family family, double z) {
    switch (family) {
    case Family::LogNormal:
        return {logNormalBelow(z), logNormalBelow(-z), logNormalDensity(z), -z};
    case Family::Weibull: {
        const double hazard = std::exp(z);
        return {hazard > 0 ? logOneMinusExp(hazard) : z, -hazard, z - hazard, 1 - hazard};
    }
    case Family::LogLogistic:
        break;
    }
    const double above = -softPlus(z);
    const double below = -softPlus(-z);
    return {below, above, below + above, -std::tanh(z / 2)};
}

double lawBelow(Family family, double z) {
    switch (family) {
    case Family::LogNormal:
        return std::erfc(-z / std::numbers::sqrt2) / 2;
    case Family::Weibull:
        return -std::expm1(-std::exp(z));
    case Family::LogLogistic:
        break;
    }
    return 1 / (1 + std::exp(-z));
}

double logBetween(Family family, double low, double high) {
    switch (family) {
    case Family::LogNormal:
        return logNormalBetween(low, high);
    case Family::Weibull: {
        const double hazard = std::exp(low);
        const double more = hazard * std::expm1(high - low);
        return more > 0 ? -hazard + logOneMinusExp(more) : low + std::log(std::expm1(high - low));
    }
    case Family::LogLogistic:
        break;
    }
    return high + logOneMinusExp(high - low) - softPlus(low) - softPlus(high);
}

double lawQuantile(Family family, double probability) {
    switch (family) {
    case Family::LogNormal:
        return -std::numbers::sqrt2 * boost::math::erfc_inv(2 * probability);
    case Family::Weibull:
        return std::log(-std::log1p(-probability));
    case Family::LogLogistic:
        break;
    }
    return std::log(probability) - std::log1p(-probability);
}

double RootingLaw::rootedBy(double time) const {
    if (!(time > 0)) return 0;
    return share * std::exp(lawPoint(family, (std::log(time) - mu) / sigma).logBelow);
}

double RootingLaw::timeOf(double probability) const {
    return std::exp(mu + sigma * lawQuantile(family, probability));
}

} // namespace warmbench::rooting
