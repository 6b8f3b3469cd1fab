#pragma once

#include "core/book/command.h"

/// Stock that is renewed from its own cuttings: `renewalOf` (stock_calendar.h) makes the target, and what is
/// potted on for it becomes stock plants.
namespace warmbench::season {

/// What stands in the note of a target that renews a stock; it is how the target is known again.
[[nodiscard]] std::string renewalNote(const Stock& stock);

/// The stock that a batch's target renews; null where it has no such target.
[[nodiscard]] const Stock* renewedBy(const HouseBook& book, const Batch& batch);

/// Pots containers on and adds their plants to those of a stock, as one step.
[[nodiscard]] Command potOnAsStock(const HouseBook& book, const PotOn& potOn, const Stock& stock);

} // namespace warmbench::season
