#include "core/planner/previous_plan.h"

#include "core/planner/index.h"

namespace warmbench::planner {

void recallPlan(Problem& problem, const Answer& answer) {
    problem.version = 2;
    for (Batch& batch : problem.batches) batch.previous.reset();
    for (const PlacedBatch& placed : answer.placed) {
        std::vector<PreviousStay>& previous = problem.batches[at(placed.batch)].previous.emplace();
        for (const PlacedStay& stay : placed.stays)
            previous.push_back({stay.zone, stay.from, stay.to, stay.slots});
    }
}

} // namespace warmbench::planner
