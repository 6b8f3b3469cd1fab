#include "core/season/list/list_text.h"

#include <algorithm>
#include <cmath>

namespace warmbench::season {
namespace {

constexpr int mostCounted = 1'000'000;

} // namespace

std::vector<TextLine> linesOf(std::string_view text) {
    if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
    std::vector<TextLine> lines;
    for (std::size_t number = 1; !text.empty(); ++number) {
        const std::size_t end = text.find('\n');
        const std::string_view line = text.substr(0, end);
        if (line.find_first_not_of(" \t\r,;") != std::string_view::npos) lines.push_back({number, line});
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
    }
    return lines;
}

Cells cellsOf(std::string_view line, char delimiter) {
    std::vector<std::string_view> views;
    exchange::splitLine(line, delimiter, views);
    return {views.begin(), views.end()};
}

char delimiterOf(const std::vector<TextLine>& lines) {
    char best = ',';
    std::size_t most = 0;
    for (const char delimiter : {'\t', ';', ','}) {
        std::size_t least = std::string::npos;
        for (const TextLine& line : lines) least = std::min(least, cellsOf(line.text, delimiter).size());
        if (!lines.empty() && least > most) {
            most = least;
            best = delimiter;
        }
    }
    return best;
}

std::optional<exchange::DateOrder> orderOf(const std::vector<Cells>& rows, std::size_t column) {
    std::optional<exchange::DateOrder> best;
    std::size_t most = 0;
    std::size_t cells = 0;
    for (const exchange::DateOrder order :
         {exchange::DateOrder::YearFirst, exchange::DateOrder::DayFirst, exchange::DateOrder::MonthFirst}) {
        std::size_t dates = 0;
        cells = 0;
        for (const Cells& row : rows) {
            if (column >= row.size() || row[column].empty()) continue;
            ++cells;
            if (dayIn(row[column], order)) ++dates;
        }
        if (dates <= most) continue;
        most = dates;
        best = order;
    }
    return 2 * most > cells ? best : std::nullopt;
}

std::string lowered(std::string text) {
    for (char& c : text)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return text;
}

std::optional<Wood> woodIn(const std::string& cell) {
    for (std::size_t i = 0; i < woodNames.size(); ++i)
        if (lowered(cell) == woodNames[i]) return static_cast<Wood>(i);
    return std::nullopt;
}

std::optional<Day> dayIn(const std::string& cell, exchange::DateOrder order) {
    const auto shown = exchange::shownIn(cell, "00:00", order);
    constexpr std::int64_t secondsADay = 86'400;
    if (!shown || shown->seconds % secondsADay != 0) return std::nullopt;
    return *Day::make(1970, 1, 1) + static_cast<int>(shown->seconds / secondsADay);
}

std::optional<int> countIn(const std::string& cell, int least) {
    const auto number = exchange::numberIn(cell, false);
    if (!number || *number != std::floor(*number) || *number < least || *number > mostCounted)
        return std::nullopt;
    return static_cast<int>(*number);
}

} // namespace warmbench::season
