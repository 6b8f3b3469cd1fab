#pragma once

#include "core/book/command.h"

namespace warmbench::round {

/// The command that weans a batch on a day: its rooting stay ends, and its weaning begins that day where it
/// was to stand, for as long as it was to; in the slots that it has, for the recipe's days of weaning and
/// growing on, where no place was planned. Of a batch that stands in parts those that root are weaned, each
/// where it was to be. A batch that only the plan's day moved on rooted in its weaning place until that day;
/// it stays there as long as it was to from that day on, where the slots are free so long and it goes nowhere
/// else after it. Refused where none roots any longer, or a part was struck that day.
[[nodiscard]] Result<Command> weanCommand(const HouseBook& book, BatchId batch, Day day);

/// The first day of the weaning stay in which a batch stands by the plan's day alone: it has begun before
/// `day`, but no root of the batch was seen by then, none of it was potted on, and nobody weaned it. Nothing
/// of a batch that still roots, or that is grown on without being weaned. A weaning stay in the very slots in
/// which it rooted is one that somebody began.
[[nodiscard]] std::optional<Day> weanedByPlanOnly(const HouseBook& book, BatchId batch, Day day);

} // namespace warmbench::round
