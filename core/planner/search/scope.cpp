#include "core/planner/search/scope.h"

#include "core/planner/index.h"
#include "core/planner/search/model.h"

#include <numeric>

namespace warmbench::planner::search {

Scope Scope::whole(const Model& model) {
    std::vector<int> all(model.zones.size());
    std::iota(all.begin(), all.end(), 0);
    Scope scope = ofZones(model, all);
    for (int batch = 0; batch < static_cast<int>(model.batches.size()); ++batch) scope.add(batch);
    return scope;
}

Scope Scope::ofZones(const Model& model, const std::vector<int>& zones) {
    Scope scope;
    scope.zones = zones;
    scope.zonesOfClass.resize(model.classes.size());
    for (const int zone : zones) scope.zonesOfClass[at(model.zones[at(zone)].zoneClass)].push_back(zone);
    scope.holds.assign(model.batches.size(), 0);
    return scope;
}

} // namespace warmbench::planner::search
