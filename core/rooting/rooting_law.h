#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace warmbench::rooting {

/// The law of W in log T = mu + sigma W, T being the thermal time (or days) at which a cutting roots.
enum class Family : std::uint8_t {
    LogLogistic, ///< W standard logistic
    LogNormal,   ///< W standard normal
    Weibull,     ///< W standard smallest extreme value
};
inline constexpr std::array<Family, 3> families{Family::LogLogistic, Family::LogNormal, Family::Weibull};

/// `loglogistic`, `lognormal` or `weibull`.
std::string_view familyName(Family family);
std::optional<Family> familyFromName(std::string_view name);

/// Natural logarithms at one place `z` of a family's standard law.
struct LawPoint {
    double logBelow = 0;   ///< of P(W <= z)
    double logAbove = 0;   ///< of P(W > z)
    double logDensity = 0; ///< of the density
    double slope = 0;      ///< derivative of logDensity
};
LawPoint lawPoint(Family family, double z);

/// P(W <= z) itself, for sums that need nothing else of the place: several times cheaper.
double lawBelow(Family family, double z);

/// ln P(low < W <= high) for low < high, without loss of digits in either tail.
double logBetween(Family family, double low, double high);

/// The z that W does not exceed with `probability`, above 0 and below 1.
double lawQuantile(Family family, double probability);

/// How cuttings root: the share that ever does, and when those do.
struct RootingLaw {
    Family family = Family::LogLogistic;
    double share = 1; ///< p, of all struck
    double mu = 0;
    double sigma = 1; ///< above 0

    /// Share of all struck that has rooted by a time (0 and less: none).
    [[nodiscard]] double rootedBy(double time) const;
    /// Time by which the part `probability` (above 0, below 1) of those that root has rooted.
    [[nodiscard]] double timeOf(double probability) const;
};

} // namespace warmbench::rooting
