#pragma once

#include "core/planner/bound/formulation.h"

#include <vector>

namespace warmbench::planner {

/// What the choice of `links` costs in the formulation, in units: the links' own costs, and the mats that run
/// for them and for what is held where a kind is one zone. Infinity where the zones cannot hold them together
/// by slots and set-points. Never more than any plan with these stays costs, but for batches that stay out.
[[nodiscard]] double leafCost(const Formulation& formulation, const std::vector<int>& links);

} // namespace warmbench::planner
