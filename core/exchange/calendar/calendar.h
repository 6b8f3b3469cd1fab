#pragma once

#include "core/book/house_book.h"

#include <string>

namespace warmbench::exchange {

/// What makes a calendar's entries the same ones the next time it is written.
struct CalendarStamp {
    std::string origin;        ///< tells this book from every other; letters, digits and dashes
    std::int64_t revision = 0; ///< higher for each later state of the book
    std::string moment;        ///< when it is written, UTC, such as `20270201T063000Z`
};

/// The season from a day on (seasonEvents) as an iCalendar text (RFC 5545): an all-day event each, whose UID
/// stays the same however often it is written, so that importing it again moves what has moved.
[[nodiscard]] std::string writeCalendar(const HouseBook& book, Day from, const CalendarStamp& stamp);

} // namespace warmbench::exchange
