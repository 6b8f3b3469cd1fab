#pragma once

#include "core/planner/worth/worth.h"

#include <nlohmann/json.hpp>

#include <string>

namespace warmbench::app {

/// What units and mats are worth, as lines for people.
[[nodiscard]] std::string worthTable(const planner::Problem& problem, const planner::Worth& worth);

/// The same: `total`, `units` (`zone`, `stock` or `day`, `alike` zones, `price`, `saved`, `exact`; null where
/// the problem is too large to price them) and `mats` (`zone`, `alike`, `like` or null, `cost`, `saves` or
/// null), in currency units.
[[nodiscard]] nlohmann::ordered_json worthJson(const planner::Problem& problem, const planner::Worth& worth);

} // namespace warmbench::app
