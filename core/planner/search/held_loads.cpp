#include "core/planner/search/held_loads.h"

#include "core/planner/index.h"

namespace warmbench::planner::search {

void addHeldLoads(const Model& model, int zone, int choice, std::vector<packing::Load>& into) {
    const ZoneModel& place = model.zones[at(zone)];
    for (std::size_t i = 0; i < place.held.size(); ++i) {
        packing::Load load;
        load.to = place.heldChoices[at(choice)].until[i];
        load.fixed = model.problem->held[at(place.held[i])].slots;
        load.containers = static_cast<int>(load.fixed.size());
        into.push_back(std::move(load));
    }
}

} // namespace warmbench::planner::search
