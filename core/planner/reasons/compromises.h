#pragma once

#include "core/planner/answer.h"
#include "core/planner/search/state.h"

#include <functional>
#include <vector>

namespace warmbench::planner {

/// Why placed batches are late or off their ideal heat, in the order of the batches: each is taken out of the
/// finished plan and placed again as soon, or as near to its ideal, as can be, beside the others, alone, and
/// with hands and stock enough. `plans` and `held` are those of the answer. Ends early when `stopped`.
[[nodiscard]] std::vector<Compromise> compromises(const Problem& problem,
                                                  const std::vector<search::Plan>& plans,
                                                  const std::vector<int>& held,
                                                  const std::function<bool()>& stopped);

} // namespace warmbench::planner
