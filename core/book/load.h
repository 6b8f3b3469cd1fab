#pragma once

#include "core/book/house_book.h"

#include <optional>
#include <vector>

/// How full the benches are, day by day.
namespace warmbench {

/// Slots taken on each of some days, by the set-point at which their mats run.
struct SlotLoad {
    Day from;
    int usable = 0;                            ///< slots of all zones that can take a container
    std::vector<std::optional<Celsius>> heats; ///< nothing (no mat running) first, then rising
    std::vector<std::vector<int>> takenByHeat; ///< [heat][days since from]
    std::vector<int> cuttingsStruck;           ///< [days since from], planned ones as well
    std::vector<int> batchesRooted;            ///< [days since from]: whose rooting is to end that day
    [[nodiscard]] int days() const { return static_cast<int>(cuttingsStruck.size()); }
    /// Slots taken on a day of it, whatever the heat.
    [[nodiscard]] int taken(Day day) const;
};

/// The load of the days from <= day < to. With no days, or none between them, it is empty.
[[nodiscard]] SlotLoad slotLoad(const HouseBook& book, Day from, Day to);

/// First and last day (that one still included) on which the book has a batch, a stay or a mat running;
/// nothing for a book without any.
struct DaySpan {
    Day first;
    Day last;
};
[[nodiscard]] std::optional<DaySpan> daysOf(const HouseBook& book);

/// The first day after `day` on which a slot of the zone falls free that was taken the day before; nothing
/// where none does.
[[nodiscard]] std::optional<Day> nextSlotsFree(const HouseBook& book, ZoneId zone, Day day);

} // namespace warmbench
