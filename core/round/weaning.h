#pragma once

#include "core/book/command.h"

namespace warmbench::round {

/// The command that weans a batch on a day: its rooting stay ends, and its weaning begins that day where it
/// was to stand, for as long as it was to; in the slots that it has, for the recipe's days of weaning and
/// growing on, where no place was planned. Of a batch that stands in parts those that root are weaned, each
/// where it was to be. Refused where none roots any longer, or a part was struck that day.
[[nodiscard]] Result<Command> weanCommand(const HouseBook& book, BatchId batch, Day day);

} // namespace warmbench::round
