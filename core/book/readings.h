#pragma once

#include "core/book/command.h"

#include <cstddef>
#include <map>
#include <vector>

/// The readings of loggers that a book keeps.
namespace warmbench {

/// A channel's readings in a place on the days from <= day < to, in order.
[[nodiscard]] std::vector<climate::MinuteReading>
readingsBetween(const HouseBook& book, const ReadingPlace& place, Channel channel, Day from, Day to);

/// What loggers measured in the root zones of one state of a book, read month by month as it is asked for: to
/// go from day to day.
class RootZoneLogs {
public:
    /// As measuredRootZone has it.
    [[nodiscard]] std::optional<Celsius> on(const HouseBook& book, ZoneId zone, Day day);
    /// The book has changed.
    void forget() { m_logs.clear(); }

private:
    struct Log {
        Day from; ///< the readings of the days from <= day < to
        Day to;
        std::vector<climate::MinuteReading> readings;
    };
    std::map<ZoneId, Log> m_logs;
};

/// The mean of what was measured in a zone's root zone in the day and night up to its last reading, where
/// that reading is of `day` or of the day before; else nothing. Each reading counts alike.
[[nodiscard]] std::optional<Celsius> measuredRootZone(const HouseBook& book, ZoneId zone, Day day);

/// The places that have readings of any channel, zones first.
[[nodiscard]] std::vector<ReadingPlace> placesWithReadings(const HouseBook& book);

/// How many readings of one channel the book would take, and what becomes of the others.
struct ReadingsToKeep {
    std::size_t fresh = 0;
    std::size_t same = 0;    ///< the book has them already
    std::size_t another = 0; ///< the book has another value for that minute, which stays
};
[[nodiscard]] ReadingsToKeep toKeep(const HouseBook& book, const ReadingPlace& place,
                                    const ChannelReadings& readings);

/// The months that change when readings are added to those that a place has, as they are then; ids are 0
/// where a month is new. Refused where the readings are not in order.
[[nodiscard]] Result<std::vector<ReadingMonth>> withReadings(const std::map<Day, ReadingMonth>& months,
                                                             const ReadingPlace& place,
                                                             const ChannelReadings& readings);
/// A month without its readings of the days from <= day < to; nothing packed where none is left.
[[nodiscard]] ReadingMonth withoutDays(const ReadingMonth& month, Day from, Day to);

} // namespace warmbench
