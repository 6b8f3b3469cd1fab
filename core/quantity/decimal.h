#pragma once

#include <cstdint>
#include <string>

namespace warmbench {

/// An integer count of 10^-places written as a decimal without trailing zeros: (13850, 3) is `13.85`.
std::string decimalText(std::int64_t parts, int places);

} // namespace warmbench
