#pragma once

#include "core/planner/problem.h"

#include <cstdint>
#include <functional>
#include <stop_token>

namespace warmbench::planner {

/// Limits of the work on a bound.
struct BoundOptions {
    std::size_t memory = std::size_t{400} << 20; ///< bytes, about; larger formulations are not built
};

/// Finds lower bounds of the total cost of every plan of `problem`, in thousandths of a currency unit, and
/// calls `onImproved` with each as soon as it is proven, every one above the one before, the first within
/// a moment. None is ever above the optimum.
/// `incumbentTotal` gives the total of the best plan known at the time of the call (any value at or above the
/// optimum, INT64_MAX where there is none); it may fall from call to call. Both functions are called from the
/// calling thread.
/// Returns when the bound has reached the incumbent's total, when nothing more can be proven, or within
/// 20 ms of a request to stop. resources/doc/planner-bound.md says why the bounds hold. Where pinned and held
/// batches cannot be kept at all, any number is a bound.
void improveBound(const Problem& problem, const BoundOptions& options,
                  const std::function<std::int64_t()>& incumbentTotal,
                  const std::function<void(std::int64_t)>& onImproved, const std::stop_token& stop);

} // namespace warmbench::planner
