#pragma once

#include "core/planner/packing/refill.h"
#include "core/planner/packing/repack.h"

/// The slow and plain way, for tiny grids: every container in every place.
namespace warmbench::planner::packing::test {

/// Whether all loads can stand together.
[[nodiscard]] bool fitTogether(const Zone& zone, int days, const std::vector<Load>& loads);

/// The greatest value of candidates that can stand together, at most one of each choice.
[[nodiscard]] std::int64_t greatestValue(const Zone& zone, int days,
                                         const std::vector<Candidate>& candidates);

} // namespace warmbench::planner::packing::test
