#pragma once

#include <cmath>
#include <compare>
#include <cstdint>

/// Quantities as types of their own. Each holds one integer of its smallest unit, so that sums and
/// comparisons are exact; a value in the wrong unit does not compile.
namespace warmbench {

/// An amount of one kind, counted in `PerUnit` parts of its unit.
/// Tag only tells kinds apart. Addition, scaling by whole numbers and comparison are exact.
template <class Tag, std::int64_t PerUnit>
struct Amount {
    std::int64_t parts = 0;

    static constexpr std::int64_t perUnit = PerUnit;
    /// The nearest amount to a value in whole units; halves round away from zero.
    static Amount fromUnits(double units) {
        return Amount{std::llround(units * static_cast<double>(PerUnit))};
    }
    /// The value in whole units.
    [[nodiscard]] constexpr double units() const {
        return static_cast<double>(parts) / static_cast<double>(PerUnit);
    }

    friend constexpr auto operator<=>(Amount, Amount) = default;
    friend constexpr Amount operator+(Amount a, Amount b) { return {a.parts + b.parts}; }
    friend constexpr Amount operator-(Amount a, Amount b) { return {a.parts - b.parts}; }
    friend constexpr Amount operator-(Amount a) { return {-a.parts}; }
    friend constexpr Amount operator*(Amount a, std::int64_t n) { return {a.parts * n}; }
    friend constexpr Amount operator*(std::int64_t n, Amount a) { return {a.parts * n}; }
    constexpr Amount& operator+=(Amount b) {
        parts += b.parts;
        return *this;
    }
    constexpr Amount& operator-=(Amount b) {
        parts -= b.parts;
        return *this;
    }
};

/// Temperature in degrees Celsius, in tenths.
using Celsius = Amount<struct CelsiusTag, 10>;
/// Thermal time in degree-days (kelvin days above a base), in tenths.
using DegreeDays = Amount<struct DegreeDaysTag, 10>;
/// Volume in litres, in millilitres.
using Litres = Amount<struct LitresTag, 1000>;
/// Length in millimetres.
using Millimetres = Amount<struct MillimetresTag, 1>;
/// Power in watts, in tenths.
using Watts = Amount<struct WattsTag, 10>;
/// Money in the nursery's own currency, in hundredths.
using Money = Amount<struct MoneyTag, 100>;

namespace literals {
inline Celsius operator""_degC(long double v) {
    return Celsius::fromUnits(static_cast<double>(v));
}
constexpr Celsius operator""_degC(unsigned long long v) {
    return {static_cast<std::int64_t>(v) * 10};
}
inline DegreeDays operator""_degreeDays(long double v) {
    return DegreeDays::fromUnits(static_cast<double>(v));
}
inline Litres operator""_litres(long double v) {
    return Litres::fromUnits(static_cast<double>(v));
}
constexpr Millimetres operator""_mm(unsigned long long v) {
    return {static_cast<std::int64_t>(v)};
}
inline Watts operator""_watts(long double v) {
    return Watts::fromUnits(static_cast<double>(v));
}
inline Money operator""_money(long double v) {
    return Money::fromUnits(static_cast<double>(v));
}
} // namespace literals

} // namespace warmbench
