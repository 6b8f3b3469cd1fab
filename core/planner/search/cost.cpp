#include "core/planner/search/cost.h"

#include "core/planner/index.h"
#include "core/planner/packing/cells.h"
#include "core/planner/search/previous.h"

#include <algorithm>
#include <cstdlib>

namespace warmbench::planner::search {

namespace {

bool isAsBefore(const std::vector<PlacedStay>& before, const PlacedBatch& placed) {
    return std::equal(before.begin(), before.end(), placed.stays.begin(), placed.stays.end(),
                      [](const PlacedStay& was, const PlacedStay& is) {
                          return standsThere(was, is.zone, is.from, is.slots);
                      });
}

void addBatch(const Problem& problem, const PlacedBatch& placed, const std::vector<std::vector<int>>& states,
              Cost& cost) {
    const Batch& batch = problem.batches[at(placed.batch)];
    const std::int64_t end = placed.stays.back().to;
    if (batch.due && end > *batch.due) cost.late += batch.latePerDay * (end - *batch.due) * thousandths;
    std::vector<SlotRect> before;
    for (std::size_t k = 0; k < placed.stays.size(); ++k) {
        const PlacedStay& stay = placed.stays[k];
        const int state = states[at(stay.zone)][at(std::min(stay.from, problem.days - 1))];
        std::int64_t degrees = 0;
        for (int day = stay.from; day < stay.to; ++day)
            degrees += std::abs(rootZone(problem.zones[at(stay.zone)], state, day) - batch.stays[k].ideal);
        cost.offIdeal += degrees * batch.stays[k].offIdeal;
        cost.scatter += (packing::groups(stay.slots) - 1) * problem.scatterCost * thousandths;
        std::vector<SlotRect> slots = stay.slots;
        std::sort(slots.begin(), slots.end());
        if (k > 0 && (stay.zone != placed.stays[k - 1].zone || slots != before))
            cost.moves += batch.moveCost * thousandths;
        before.swap(slots);
    }
    if (batch.previous && !isAsBefore(*batch.previous, placed))
        cost.changes += problem.changeCost * thousandths;
}

} // namespace

Cost costOf(const Problem& problem, const Answer& answer) {
    Cost cost;
    std::vector<std::vector<int>> states(problem.zones.size(), std::vector<int>(at(problem.days), -1));
    for (const ZoneRuns& zone : answer.mats)
        for (const MatRun& run : zone.runs) {
            cost.mats += (run.to - run.from) * thousandths *
                         problem.zones[at(zone.zone)].setPoints[at(run.setPoint)].costPerDay;
            std::fill(states[at(zone.zone)].begin() + run.from, states[at(zone.zone)].begin() + run.to,
                      run.setPoint);
        }
    for (const UnplacedBatch& unplaced : answer.unplaced) {
        const Batch& batch = problem.batches[at(unplaced.batch)];
        cost.unplaced += batch.value * thousandths;
        if (batch.previous) cost.changes += problem.changeCost * thousandths;
    }
    for (const PlacedBatch& placed : answer.placed) addBatch(problem, placed, states, cost);
    return cost;
}

} // namespace warmbench::planner::search
