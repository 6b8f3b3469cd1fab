#pragma once

#include "core/planner/problem.h"

#include <cstdint>

namespace warmbench::planner {

/// Thousandths of which every plan's total is a multiple: the greatest common divisor of all that such a
/// total is added up from. 0 where it is always 0.
[[nodiscard]] std::int64_t costStep(const Problem& problem);

/// The least total at or above `bound` that is a multiple of `step`: a bound rounded up to what can be had.
[[nodiscard]] std::int64_t roundedUp(std::int64_t bound, std::int64_t step);

} // namespace warmbench::planner
