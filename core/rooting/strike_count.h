#pragma once

#include "core/rooting/beta_binomial.h"

#include <cstdint>
#include <optional>

namespace warmbench::rooting {

struct StrikeCount {
    std::int64_t strike = 0; ///< cuttings to strike
    double sureness = 1;     ///< probability that at least the wanted number roots
    double expected = 0;     ///< cuttings expected to root
};

/// The most cuttings that are tried.
inline constexpr std::int64_t mostStruck = 1'000'000'000'000'000;

/// The smallest number to strike so that at least `wanted` (>= 0) root with a probability of at least `sure`
/// (above 0, below 1) when the share that roots has the law `share`. Nothing where more than mostStruck
/// would be needed. A probability less than 1e-12 below `sure` counts as reaching it, so that ties in exact
/// arithmetic are not lost to rounding.
std::optional<StrikeCount> strikeCount(std::int64_t wanted, double sure, BetaShape share);

} // namespace warmbench::rooting
