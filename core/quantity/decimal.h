#pragma once

#include "core/quantity/quantity.h"

#include <cstdint>
#include <string>

namespace warmbench {

/// An integer count of 10^-places written as a decimal without trailing zeros: (13850, 3) is `13.85`.
std::string decimalText(std::int64_t parts, int places);

/// Decimals that an amount of `perUnit` parts can have: 10 has 1, 1000 has 3.
constexpr int decimalPlaces(std::int64_t perUnit) {
    int places = 0;
    for (; perUnit > 1; perUnit /= 10) ++places;
    return places;
}

/// An amount in its whole units: Celsius{185} is `18.5`.
template <class Tag, std::int64_t PerUnit>
std::string decimal(Amount<Tag, PerUnit> amount) {
    return decimalText(amount.parts, decimalPlaces(PerUnit));
}

} // namespace warmbench
