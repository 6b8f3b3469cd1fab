#pragma once

#include "core/planner/problem.h"

#include <cstdint>
#include <optional>

namespace warmbench::tests {

/// The least total in thousandths over all plans of a tiny problem, found by trying every set-point of every
/// zone and day with every strike day, zone and slot of every container, and checking each rule as the format
/// states it. Shares no code with the planner but the data types. Nothing where no plan keeps pins and held.
std::optional<std::int64_t> leastTotal(const planner::Problem& problem);

} // namespace warmbench::tests
