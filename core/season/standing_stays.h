#pragma once

#include "core/book/house_book.h"
#include "core/planner/problem.h"

#include <map>

namespace warmbench::season {

/// Writes what already stands in the houses, and what has been planned before, into a problem whose zones are
/// filled in: `zoneIndex` says which zone of the book each is. A stay that covers day 0 becomes held, a later
/// one a pinned batch of its own that takes no cuttings (what it takes of stock and hands is the caller's to
/// count).
///
/// `ends` has stays that end on another day than their own, as a forecast says (forecast::stayEnds).
///
/// What roots keeps the root zone that its mat is set to: its end was reckoned with that. Nothing that the
/// book holds can make the problem impossible: where stays that share a zone's days accept no common state of
/// its mat, the temperatures that they accept are widened to their recipes' ranges, and where that is not
/// enough to what the zone can be.
void addStandingStays(planner::Problem& problem, const HouseBook& book,
                      const std::map<ZoneId, int>& zoneIndex, Day from,
                      const std::map<StayId, Day>& ends = {});

} // namespace warmbench::season
