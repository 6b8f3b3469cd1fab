#pragma once

#include "core/planner/problem.h"

#include <random>

namespace warmbench::tests {

/// A random problem of at most five days, two zones and three batches, small enough to try every plan.
/// Stocks, labour, held batches, pins, second stays, trays that turn and stays past the horizon all come up.
planner::Problem tinyProblem(std::mt19937& random);

} // namespace warmbench::tests
