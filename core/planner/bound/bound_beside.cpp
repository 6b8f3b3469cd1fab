#include "core/planner/bound/bound_beside.h"

#include "core/planner/bound/bound.h"

#include <utility>

namespace warmbench::planner {

std::jthread improveBoundBeside(std::shared_ptr<const Problem> problem, std::shared_ptr<Known> known) {
    return std::jthread(
        [problem = std::move(problem), known = std::move(known)](const std::stop_token& ended) {
            improveBound(
                *problem, {}, [&] { return known->total.load(); },
                [&](std::int64_t bound) { known->bound = bound; }, ended);
        });
}

} // namespace warmbench::planner
