#include "core/planner/refusals.h"

namespace warmbench::planner {

Outcome impossible(const search::Model& model) {
    const Problem& problem = *model.problem;
    for (std::size_t z = 0; z < model.zones.size(); ++z)
        if (!model.zones[z].held.empty() && model.zones[z].heldChoices.empty())
            return Refusal{problem.zones[z].id,
                           phrase("no set-point, nor off, suits all that is held there together")};
    for (std::size_t b = 0; b < model.batches.size(); ++b)
        if (model.batches[b].pinned && model.batches[b].strikeLast < model.batches[b].strikeFirst)
            return Refusal{problem.batches[b].id,
                           phrase("cannot be placed as pinned: no zone and day suit it")};
    return {};
}

Outcome brokenPin(const Problem& problem, const Answer& answer) {
    for (const UnplacedBatch& unplaced : answer.unplaced)
        if (problem.batches[static_cast<std::size_t>(unplaced.batch)].pin)
            return Refusal{
                problem.batches[static_cast<std::size_t>(unplaced.batch)].id,
                phrase("cannot be placed as pinned together with the other pinned and held batches")};
    return {};
}

} // namespace warmbench::planner
