#pragma once

#include "core/planner/problem.h"

#include <optional>

namespace warmbench::speed {

/// The problem in a file; nothing, and why on standard error, where it can't be read.
std::optional<planner::Problem> problemIn(const char* file);

/// `batches` batches with zones, stocks and hands in proportion: whole copies of the problem, the last one in
/// part.
planner::Problem grown(const planner::Problem& one, int batches);

} // namespace warmbench::speed
