#pragma once

#include "core/book/command.h"

namespace warmbench::round {

/// The command that weans a batch on a day: its rooting stay ends, and its weaning begins that day where it
/// was to stand, for as long as it was to; in the slots that it has, for the recipe's days of weaning and
/// growing on, where no place was planned. Of a batch that stands in parts those that root are weaned, each
/// where it was to be. What the plan has begun to wean before rooted in its weaning place until that day; it
/// stays there as long as it was to from that day on, where the slots are free so long and it goes nowhere
/// else after it. The stays keep the day (`weanedOn`), also where it is the plan's. Refused where none roots
/// any longer, its place was given up, or a part was struck that day.
[[nodiscard]] Result<Command> weanCommand(const HouseBook& book, BatchId batch, Day day);

/// The first day of a stay in which a batch is weaned by the plan's day alone (`weanedByPlan`), as long as it
/// has a place; nothing where somebody weaned it, or it was potted on.
[[nodiscard]] std::optional<Day> weanedByPlanOnly(const HouseBook& book, BatchId batch, Day day);

} // namespace warmbench::round
