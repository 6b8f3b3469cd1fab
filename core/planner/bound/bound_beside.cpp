#include "core/planner/bound/bound_beside.h"

#include "core/planner/bound/bound.h"

#include <utility>

namespace warmbench::planner {

void improveBound(const Problem& problem, Known& known, const std::stop_token& stop) {
    improveBound(
        problem, {}, [&] { return known.total.load(); }, [&](std::int64_t bound) { known.bound = bound; },
        stop);
}

std::jthread improveBoundBeside(std::shared_ptr<const Problem> problem, std::shared_ptr<Known> known) {
    return std::jthread([problem = std::move(problem), known = std::move(known)](
                            const std::stop_token& ended) { improveBound(*problem, *known, ended); });
}

} // namespace warmbench::planner
