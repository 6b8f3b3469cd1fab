#pragma once

#include "core/crop/crop.h"
#include "core/exchange/logger/logger_shape.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// A list as text, one thing a line, such as lines copied from a spreadsheet.
namespace warmbench::season {

struct TextLine {
    std::size_t number = 0; ///< counted from 1
    std::string_view text;
};
using Cells = std::vector<std::string>;

/// The lines that are not empty; a byte order mark is passed over.
[[nodiscard]] std::vector<TextLine> linesOf(std::string_view text);
[[nodiscard]] Cells cellsOf(std::string_view line, char delimiter);
/// The delimiter that parts the lines into the most cells, the same number in nearly each.
[[nodiscard]] char delimiterOf(const std::vector<TextLine>& lines);
/// The order in which most dates of a column can be read, the day before the month where both can be; nothing
/// where most cells are no dates.
[[nodiscard]] std::optional<exchange::DateOrder> orderOf(const std::vector<Cells>& rows, std::size_t column);

/// A to Z in small letters.
[[nodiscard]] std::string lowered(std::string text);
[[nodiscard]] std::optional<Wood> woodIn(const std::string& cell);
[[nodiscard]] std::optional<Day> dayIn(const std::string& cell, exchange::DateOrder order);
/// A whole number of at least `least`, at most a million.
[[nodiscard]] std::optional<int> countIn(const std::string& cell, int least = 1);

} // namespace warmbench::season
