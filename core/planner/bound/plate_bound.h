#pragma once

#include "core/planner/bound/zone_kinds.h"
#include "core/planner/problem.h"

#include <cstdint>
#include <stop_token>

namespace warmbench::planner {

/// A lower bound of the total in thousandths that looks at shapes: for each zone, the batches that can have
/// one of their stays nowhere else compete for it, and what is lost is their value less that of the best
/// choice whose containers can be arranged there (two-dimensional cutting, Beasley 1985; see
/// packing::refill). The other batches cost what the share bound says of them. 0 where no zone is such, or
/// the best choice is not proven soon.
[[nodiscard]] std::int64_t plateBound(const Problem& problem, const ZoneKinds& zones,
                                      const std::stop_token& stop);

} // namespace warmbench::planner
