#pragma once

#include "core/planner/answer.h"

namespace warmbench::planner {

/// Makes `answer`, which answers a problem of the same zones and batches, the plan that `problem` is to stay
/// close to.
void recallPlan(Problem& problem, const Answer& answer);

} // namespace warmbench::planner
