#pragma once

#include "core/book/house_book.h"

/// Books for tests of what is drawn. All in them is invented.
namespace warmbench::tests {

/// The day on which the small nursery is looked at.
[[nodiscard]] Day smallNurseryToday();

/// A glasshouse with three benches and eight zones, twenty batches at every stage from planned to ready to
/// pot on, three of the planned ones without a place yet, root checks, losses and mats running.
[[nodiscard]] HouseBook smallNursery();

/// A house with `zones` zones of 10 x 10 slots and `batches` struck batches of equal size that fill them.
/// `batches` must be a multiple of `zones` that divides its 100 slots.
[[nodiscard]] HouseBook fullNursery(int zones, int batches);

} // namespace warmbench::tests
