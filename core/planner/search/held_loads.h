#pragma once

#include "core/planner/packing/repack.h"
#include "core/planner/search/model.h"

#include <vector>

namespace warmbench::planner::search {

/// Adds what is held in a zone, at one of its held choices, to its loads: each fixed where it stands, from
/// day 0 on.
void addHeldLoads(const Model& model, int zone, int choice, std::vector<packing::Load>& into);

} // namespace warmbench::planner::search
