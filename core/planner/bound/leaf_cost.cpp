#include "core/planner/bound/leaf_cost.h"

#include "core/planner/index.h"

#include <algorithm>
#include <limits>

namespace warmbench::planner {
namespace {

/// Slots taken in the zones of one kind, by day and set-point + 1.
using Taken = std::vector<std::vector<int>>;

/// Units for the mats of a kind on one day, in which what is held stands in no zone.
double dayCost(const ZoneShelf& shelf, const std::vector<int>& taken) {
    const int zones = shelf.count + static_cast<int>(shelf.held.size());
    int used = 0;
    double cost = 0;
    for (std::size_t state = 0; state < taken.size(); ++state) {
        if (taken[state] == 0) continue;
        if (shelf.slots == 0) return infinity;
        const int needed = (taken[state] + shelf.slots - 1) / shelf.slots;
        used += needed;
        cost += needed * shelf.dayCost[state];
    }
    return used > zones ? infinity : cost;
}

/// The same where something is held in the only zone, which keeps one state while it stands there.
double heldCost(const ZoneShelf& shelf, const HeldState& held, const Taken& taken) {
    const std::size_t state = at(held.setPoint + 1);
    double cost = 0;
    for (std::size_t day = 0; day < taken.size(); ++day) {
        if (day >= held.load.size()) {
            cost += dayCost(shelf, taken[day]);
            continue;
        }
        for (std::size_t other = 0; other < taken[day].size(); ++other)
            if (other != state && taken[day][other] > 0) return infinity;
        if (taken[day][state] > 0 && taken[day][state] + held.load[day] > shelf.slots) return infinity;
        cost += shelf.dayCost[state];
    }
    return cost;
}

double matsOf(const ZoneShelf& shelf, const Taken& taken) {
    if (shelf.count == 0 && shelf.held.size() == 1) {
        double least = infinity;
        for (const HeldState& state : shelf.held.front().states)
            least = std::min(least, heldCost(shelf, state, taken));
        return least;
    }
    double cost = 0;
    for (const auto& day : taken) cost += dayCost(shelf, day);
    return cost;
}

} // namespace

double leafCost(const Formulation& formulation, const std::vector<int>& links) {
    std::vector<Taken> taken;
    for (const ZoneShelf& shelf : formulation.shelves)
        taken.emplace_back(static_cast<std::size_t>(formulation.days),
                           std::vector<int>(shelf.dayCost.size(), 0));
    double cost = 0;
    for (const int index : links) {
        const Link& link = formulation.links[static_cast<std::size_t>(index)];
        const Lane& lane = formulation.lanes[static_cast<std::size_t>(link.lane)];
        cost += link.cost;
        for (int day = link.choice.from; day < std::min(link.choice.to, formulation.days); ++day)
            taken[static_cast<std::size_t>(lane.kind)][static_cast<std::size_t>(day)]
                 [at(lane.setPoint + 1)] += lane.slots;
    }
    for (std::size_t kind = 0; kind < taken.size(); ++kind)
        cost += matsOf(formulation.shelves[kind], taken[kind]);
    return cost;
}

} // namespace warmbench::planner
