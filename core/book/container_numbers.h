#pragma once

#include "core/quantity/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace warmbench {

/// Numbers of containers as people write them: `1-4, 7, 9`. In any order; each once.
[[nodiscard]] std::string containerNumbers(std::vector<int> numbers);

/// Reads such a list, rising and each once: `7, 1-3` is 1, 2, 3, 7. Refused, with the words found, where
/// something in it is no number from 1 to 100000 and no range of two of them.
[[nodiscard]] Result<std::vector<int>> readContainerNumbers(std::string_view text);

} // namespace warmbench
