#pragma once

#include "core/planner/problem.h"

namespace warmbench::planner {

/// Days of the horizon on which anything can stand, and a year more, in which reasons look for later strike
/// days; the whole horizon where that is shorter. A plan of the days beyond would only say that mats are off.
[[nodiscard]] int daysInReach(const Problem& problem);

/// The problem with its horizon ended after so many days; every answer of the one is an answer of the other,
/// at the same cost, where nothing can stand later.
[[nodiscard]] Problem endedAfter(Problem problem, int days);

} // namespace warmbench::planner
