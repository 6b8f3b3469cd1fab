#pragma once

#include "core/book/house_book.h"
#include "core/planner/problem.h"

#include <vector>

namespace warmbench::season {

/// Whether a stock gives cuttings of this wood at all.
[[nodiscard]] bool yields(const Stock& stock, Wood wood);

/// What a stock can give of one wood in the days from `from` on, as running totals by day (day 0 is `from`).
///
/// A picking takes at most one flush: plants x cuttings a plant. Shoots taken grow again in `regrowthDays`,
/// so the total grows by what was taken that long ago; a flush that is left on the plants does not become
/// two. Batches in the book, planned ones too, have taken what they say, on their strike days. Outside the
/// season nothing is added. All batches from the stock count, whatever their wood: shoots taken once are
/// gone.
[[nodiscard]] std::vector<planner::StockStep> stockSteps(const HouseBook& book, const Stock& stock, Wood wood,
                                                         Day from, int days);

/// Cuttings of one wood in the days from `from` on when every flush is picked to the full as soon as it
/// stands, and nothing else is ever taken from the stock.
[[nodiscard]] std::int64_t fullYield(const HouseBook& book, const Stock& stock, Wood wood, Day from,
                                     int days);

} // namespace warmbench::season
