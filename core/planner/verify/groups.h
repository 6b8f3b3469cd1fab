#pragma once

#include "core/planner/problem.h"

#include <cstdint>
#include <unordered_map>

namespace warmbench::planner::verify {

/// Which container covers a slot of a zone, for the slots of one stay.
using Covered = std::unordered_map<std::int64_t, std::size_t>;

/// Number of groups that `containers` containers form when those that share part of an edge are connected.
[[nodiscard]] std::int64_t connectedGroups(const Covered& covered, std::size_t containers, const Zone& zone);

} // namespace warmbench::planner::verify
