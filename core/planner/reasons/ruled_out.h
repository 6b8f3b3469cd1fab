#pragma once

#include "core/planner/problem.h"

#include <string>

namespace warmbench::planner {

/// The rule that keeps the batch out of an empty house, with what would have to be otherwise; empty where it
/// breaks none by itself.
[[nodiscard]] std::string ruledOut(const Problem& problem, const Batch& batch);

} // namespace warmbench::planner
