#include "core/planner/reasons/rehearsal.h"

#include "core/planner/index.h"

#include <limits>

namespace warmbench::planner {

using search::Plan;

LackingSupply lackingSupply(const search::State& house, const Batch& batch, int day) {
    return {batch.cuttings - house.handsLeft(day),
            batch.stock ? batch.cuttings - house.stockLeft(*batch.stock, day) : 0};
}

Rehearsal::Rehearsal(Problem wider, const std::vector<Plan>& plans, const std::vector<int>& held,
                     const search::Stopped& stopped)
    : problem(std::move(wider)), model(problem, {1, static_cast<int>(plans.size()), stopped}),
      finished(model), empty(model), m_stopped(stopped), m_inserter(model) {
    for (int zone = 0; zone < static_cast<int>(held.size()); ++zone)
        if (held[at(zone)] != finished.heldChoice(zone)) finished.chooseHeld(zone, held[at(zone)]);
    for (const Plan& one : plans)
        if (!stopped() && one.strike >= 0) finished.place(one);
}

std::int64_t Rehearsal::cost(const search::State& into, int batch) {
    if (m_stopped()) return search::never;
    search::Taste thorough;
    thorough.looks = std::numeric_limits<int>::max();
    return m_inserter.best(into, batch, thorough, m_random, plan);
}

} // namespace warmbench::planner
