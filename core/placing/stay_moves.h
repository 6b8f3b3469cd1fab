#pragma once

#include "core/book/command.h"

#include <optional>

/// Commands, each one step of undo, that move containers and stretch stays: made of the book's own commands,
/// whose rules refuse what can't be.
namespace warmbench::placing {

/// Containers of a batch that come to stand on other slots from a day on.
struct Move {
    BatchId batch; ///< of the book
    Day day;
    ZoneId zone;
    std::vector<Place> places; ///< the containers that move, and their slots there
    /// Where given, the day on which they leave; what follows on the stay that they had moves along by as
    /// many days. Without it they leave when they would have left. Containers that have no place on `day`
    /// need it.
    std::optional<Day> to{};
};

/// What has been until the day stays in the book; containers that are not named stay where they are. Those
/// that come to stand beside others of their batch, for as long and in the same stage, are one stay with them
/// again: so a batch is split and joined. Refused in words where it makes no sense as such.
[[nodiscard]] Result<Command> moveContainers(const HouseBook& book, const Move& move);

/// Gives a stay of the book other days. A stay of the same containers that ended where it began ends with its
/// new beginning, and those that come after it move along by as many days as its end does.
[[nodiscard]] Result<Command> setStayDays(const HouseBook& book, StayId stay, Day from, Day to);

} // namespace warmbench::placing
