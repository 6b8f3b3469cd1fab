#pragma once

#include "core/planner/packing/cells.h"

#include <optional>
#include <vector>

namespace warmbench::placing {

/// Places for `count` containers of one footprint on free slots, close round a slot that is aimed at: the
/// first as near to it as can be, each further one beside those before where any is left, so that they are
/// one compact patch unless what is free is in pieces. In order of rows and columns. As many as find room.
///
/// It looks at each free slot near the aim a few times: some thousand containers on tens of thousands of
/// slots take a few milliseconds.
[[nodiscard]] std::vector<SlotRect> slotsRound(const planner::packing::Cells& free, Footprint footprint,
                                               int count, Slot aim);

} // namespace warmbench::placing
