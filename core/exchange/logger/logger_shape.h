#pragma once

#include "core/quantity/result.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace warmbench::exchange {

/// In which order a date's parts stand: `2027-03-01`, `01.03.2027` or `1/3/2027`, `03/01/2027`.
enum class DateOrder : std::uint8_t { YearFirst, DayFirst, MonthFirst };

/// How a logger's file is to be read; what was found in it, and may be set otherwise.
struct LoggerShape {
    char delimiter = ',';
    bool decimalComma = false;
    bool fahrenheit = false;
    bool byHeat = false; ///< no head says °F, but the numbers do
    DateOrder order = DateOrder::YearFirst;
    bool timeApart = false; ///< the time of day stands in the column after the date
    std::size_t timeColumn = 0;
    std::size_t celsiusColumn = 1; ///< of the temperature, whatever its unit
    std::optional<std::size_t> humidityColumn;
    std::size_t firstLine = 1;      ///< line of the first reading, counted from 1
    std::vector<std::string> names; ///< of the columns, where a line before has them

    [[nodiscard]] Phrase words() const;
};

/// What somebody knows of a file beforehand: columns by name or by number from 1.
struct LoggerHints {
    std::string celsius;
    std::string humidity;
    std::optional<bool> fahrenheit;
    std::optional<DateOrder> order;
    std::optional<char> delimiter; ///< `;`, `,`, `|` or a tab
    std::optional<bool> decimalComma;
};

/// Finds out how a file is to be read from its first lines. Refused where no line has a time and a number.
[[nodiscard]] Result<LoggerShape> shapeOf(const std::string& name, std::string_view text,
                                          const LoggerHints& hints);

/// The cells of one line; quotes round a cell are taken off.
void splitLine(std::string_view line, char delimiter, std::vector<std::string_view>& cells);

/// What a clock shows in a cell or two: seconds since its 1970-01-01 00:00, and whether an offset from UTC
/// was given (then the seconds are in UTC). Nothing for anything else.
struct Shown {
    std::int64_t seconds = 0;
    bool offset = false;
};
[[nodiscard]] std::optional<Shown> shownIn(std::string_view date, std::string_view time, DateOrder order);

/// A decimal number with a point, or a comma.
[[nodiscard]] std::optional<double> numberIn(std::string_view cell, bool decimalComma);

} // namespace warmbench::exchange
