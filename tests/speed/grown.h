#pragma once

#include "core/planner/problem.h"

namespace warmbench::speed {

/// `batches` batches with zones, stocks and hands in proportion: whole copies of the problem, the last one in
/// part.
planner::Problem grown(const planner::Problem& one, int batches);

} // namespace warmbench::speed
