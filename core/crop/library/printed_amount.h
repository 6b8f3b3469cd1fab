#pragma once

#include "core/crop/crop.h"

#include <optional>
#include <string_view>
#include <vector>

namespace warmbench {

/// Components such as `coir 1 : perlite 2` (parts), `75% sand : 25% peat`, `2 perlite : 1 peat`, `sand:peat
/// 1:2` or one component alone, with the parts in lowest terms; nothing for words that leave components or
/// parts open.
[[nodiscard]] std::optional<std::vector<MediumComponent>> mediumIn(std::string_view text);

/// A take in per cent such as `85` or `54.2-91.4`, rounded to whole ones; nothing for a bound such as `>50`,
/// for words, and beyond 0 to 100.
[[nodiscard]] std::optional<IntRange> takeIn(std::string_view text);

} // namespace warmbench
