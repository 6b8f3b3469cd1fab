#pragma once

#include "core/planner/packing/cells.h"

#include <vector>

namespace warmbench::planner::packing {

/// Packs `count` containers of one footprint into the slots `free`, by depth-first search over the first free
/// slot in reading order: a container begins there, as given or turned, or the slot stays empty while as many
/// as can stay empty are not used up. `slots` gets one place each. Ends after `steps` nodes.
enum class Alike : std::uint8_t { Packed, Impossible, StepsUp };
[[nodiscard]] Alike packAlike(const Cells& free, int count, Footprint footprint, bool turn, long steps,
                              std::vector<SlotRect>& slots);

} // namespace warmbench::planner::packing
