#pragma once

#include "ui/words/wording.h"

#include <vector>

namespace warmbench::ui {

/// `1 to 4, 7`, of numbers in any order.
[[nodiscard]] QString numberRanges(std::vector<int> numbers, const Wording& wording);

} // namespace warmbench::ui
