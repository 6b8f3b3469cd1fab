#pragma once

#include "core/book/house_book.h"

#include <vector>

namespace warmbench::season {

/// What a stock can give of one wood, day by day.
struct WoodCalendar {
    Wood wood = Wood::Softwood;
    std::vector<std::int64_t> shoots; ///< on the plants at the beginning of each day; 0 out of season
    std::vector<std::int64_t> taken;  ///< by batches struck or planned on it, of this wood
};

/// Every wood that a stock yields, on the days from <= day < from + days. On a day of its season a flush
/// stands, less what was taken of any wood in the days that shoots take to grow again.
[[nodiscard]] std::vector<WoodCalendar> stockCalendar(const HouseBook& book, const Stock& stock, Day from,
                                                      int days);

/// Cuttings of any wood taken from a stock on from <= day < to.
[[nodiscard]] std::int64_t takenFrom(const HouseBook& book, StockId stock, Day from, Day to);

/// A day on which more is taken from a stock than stands on it.
struct Overcut {
    StockId stock;
    Day day;
    Wood wood = Wood::Softwood; ///< that is taken
    std::int64_t taken = 0;     ///< on that day
    std::int64_t stands = 0;    ///< of shoots; 0 out of season
    friend bool operator==(const Overcut&, const Overcut&) = default;
    [[nodiscard]] std::int64_t over() const { return taken - stands; }
};

/// Days from `from` on, of batches struck or planned; those of a wood that the stock has no flush of are left
/// out, as nothing is known of them.
[[nodiscard]] std::vector<Overcut> overcuts(const HouseBook& book, const Stock& stock, Day from);
[[nodiscard]] std::vector<Overcut> overcuts(const HouseBook& book, Day from);

/// A target of as many plants as the stock has, to renew it from its own cuttings in the next season of its
/// woods; with the next free name and no id. Its day leaves time for the slowest of the taxon's recipes.
[[nodiscard]] Target renewalOf(const HouseBook& book, const Stock& stock, Day today);

} // namespace warmbench::season
