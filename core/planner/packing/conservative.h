#pragma once

#include "core/planner/packing/plate.h"

#include <span>

namespace warmbench::planner::packing {

/// Proof that `pieces` do not fit together on an empty grid of `rows` x `cols`: their area exceeds it when
/// heights and widths are measured by some pair of dual feasible functions (conservative scales; Fekete and
/// Schepers 2001, "New classes of fast lower bounds for bin packing problems"). False says nothing.
[[nodiscard]] bool tooMuch(int rows, int cols, std::span<const Pieces> pieces);

} // namespace warmbench::planner::packing
