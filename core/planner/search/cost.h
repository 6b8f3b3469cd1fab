#pragma once

#include "core/planner/answer.h"

#include <cstdint>

namespace warmbench::planner::search {

/// Costs are given in hundredths and reckoned in thousandths.
inline constexpr std::int64_t thousandths = 10;

/// The cost of an answer that keeps the rules, in its parts, from the problem and the answer alone.
[[nodiscard]] Cost costOf(const Problem& problem, const Answer& answer);

} // namespace warmbench::planner::search
