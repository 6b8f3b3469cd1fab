#pragma once

#include "core/planner/answer.h"

namespace warmbench::planner::search {

/// The cost of an answer that keeps the rules, in its parts, from the problem and the answer alone.
[[nodiscard]] Cost costOf(const Problem& problem, const Answer& answer);

} // namespace warmbench::planner::search
