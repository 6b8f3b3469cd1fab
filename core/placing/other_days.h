#pragma once

#include "core/book/command.h"

namespace warmbench::placing {

/// The command that gives a stay other days: a planned batch whose first stay begins on another day is struck
/// on that day, and all its stays move along where the whole first stay moved.
[[nodiscard]] Result<Command> otherDays(const HouseBook& book, StayId stay, Day from, Day to);

} // namespace warmbench::placing
