#include "core/planner/previous_plan.h"

#include "core/planner/index.h"

namespace warmbench::planner {

void recallPlan(Problem& problem, const Answer& answer) {
    problem.version = 2;
    for (Batch& batch : problem.batches) batch.previous.reset();
    for (const PlacedBatch& placed : answer.placed) problem.batches[at(placed.batch)].previous = placed.stays;
}

} // namespace warmbench::planner
