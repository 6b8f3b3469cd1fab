#pragma once

#include "core/planner/problem.h"

#include <atomic>
#include <cstdint>
#include <limits>
#include <memory>
#include <thread>

namespace warmbench::planner {

/// What a search and the work on its bound tell each other, thousandths.
struct Known {
    std::atomic<std::int64_t> total = std::numeric_limits<std::int64_t>::max(); ///< of the best answer
    std::atomic<std::int64_t> bound = 0;
};

/// Improves the bound that is known, against the total that is known: see the other `improveBound`.
void improveBound(const Problem& problem, Known& known, const std::stop_token& stop);

/// The same in a thread of its own. That shares in what it works with, so that nobody need wait for it
/// once it is asked to stop: see `endLater`.
[[nodiscard]] std::jthread improveBoundBeside(std::shared_ptr<const Problem> problem,
                                              std::shared_ptr<Known> known);

} // namespace warmbench::planner
