#pragma once

#include "core/book/house_book.h"

#include <vector>

/// What somebody weaned, and what only the plan did.
namespace warmbench {

/// The stays in which containers of a struck batch no longer root by the plan's day alone: they have begun by
/// `day`, a weaning is among them, and nobody weaned any of their containers by then. In the order of their
/// first days; those that have ended with them. Nothing of a batch of which some was potted on by then, nor
/// what is grown on without being weaned.
[[nodiscard]] std::vector<const Stay*> weanedByPlan(const HouseBook& book, BatchId batch, Day day);

/// Whether a batch still roots on a day: no container of it was weaned, or grown on without that, by then.
[[nodiscard]] bool isRooting(const HouseBook& book, BatchId batch, Day day);

} // namespace warmbench
