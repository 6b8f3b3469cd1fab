#pragma once

#include "core/book/house_book.h"
#include "ui/dayline/stay_band.h"
#include "ui/words/wording.h"

namespace warmbench::ui {

/// The stays of a batch as bars, the last one in which it roots with the day on which it is likely to be
/// ready. What began before `today` keeps its beginning.
[[nodiscard]] std::vector<StayBar> stayBars(const HouseBook& book, BatchId batch, Day today,
                                            const Wording& wording);
/// All stays in a zone that share a day with from <= day < to, as bars; by batch.
[[nodiscard]] std::vector<StayBar> stayBars(const HouseBook& book, ZoneId zone, Day from, Day to, Day today,
                                            const Wording& wording);

} // namespace warmbench::ui
