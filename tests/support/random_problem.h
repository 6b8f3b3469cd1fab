#pragma once

#include "core/planner/problem.h"

#include <random>

namespace warmbench::tests {

/// A random problem of up to forty days, five zones and fourteen batches with everything that the format has:
/// mats and floors by day, blocked slots, held batches, stocks, days without hands, trays that turn, up to
/// three stays, dues, pins of day, zone and slots, scatter. What is held suits its zone switched off; pins
/// may contradict each other.
planner::Problem randomProblem(std::mt19937& random);

} // namespace warmbench::tests
