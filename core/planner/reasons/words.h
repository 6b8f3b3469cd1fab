#pragma once

#include "core/planner/problem.h"

#include <string>

/// Pieces of sentences about a planning problem, in English.
namespace warmbench::planner {

/// "1 slot", "12 slots".
[[nodiscard]] std::string counted(std::int64_t count, const std::string& noun);
/// "20 to 24 °C", "19.5 °C", from tenths.
[[nodiscard]] std::string warmth(std::int64_t low, std::int64_t high);
/// "day 4", "days 4 to 18"; both days count.
[[nodiscard]] std::string dayRange(int first, int last);
/// "12.40", from thousandths.
[[nodiscard]] std::string money(std::int64_t thousandths);
/// "tent, bag or fog".
[[nodiscard]] std::string coverNamesOf(const StayRule& rule);

} // namespace warmbench::planner
