#include "app/command/book_words.h"

#include "core/book/query.h"
#include "core/book/whereabouts.h"
#include "core/quantity/utf8.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>

namespace warmbench::app {

std::string dayWords(Day day) {
    static constexpr std::array weekdays{"Monday", "Tuesday",  "Wednesday", "Thursday",
                                         "Friday", "Saturday", "Sunday"};
    return std::string(weekdays[static_cast<std::size_t>(day.weekday())]) + " " +
           std::to_string(day.dayOfMonth()) + " " + monthNames[day.month() - 1] + " " +
           std::to_string(day.year());
}

std::string placeWords(const HouseBook& book, ZoneId id) {
    return houseOf(book, book.get<Zone>(id)).name + " · " + zoneTitle(book, id);
}

std::string placesWords(const HouseBook& book, BatchId batch, Day day) {
    std::string words;
    const bool ended = zonesOn(book, batch, day).empty();
    for (const ZoneId zone : zonesLastOn(book, batch, day))
        words += (words.empty() ? (ended ? "last in " : "") : " and ") + placeWords(book, zone);
    return words.empty() ? "no place" : words;
}

std::string counted(std::size_t count, const std::string& one, const std::string& several) {
    return std::to_string(count) + " " + (count == 1 ? one : several);
}

std::string hoursWords(double hours) {
    if (hours < 48) return std::to_string(std::lround(hours)) + " h";
    return counted(static_cast<std::size_t>(std::lround(hours / 24)), "day", "days");
}

int permilleOf(double share) {
    return static_cast<int>(std::lround(share * 1000));
}

Result<Day> readDay(const std::string& option, const std::string& text) {
    if (text.empty()) {
        const auto now = std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now());
        return Day{now};
    }
    if (const auto day = Day::fromIso(text)) return *day;
    return Refusal{option, "found '" + text + "', expected a date such as 2027-02-01"};
}

TextTable::TextTable(std::vector<std::string> head, std::size_t left)
    : m_rows{std::move(head)}, m_left(left) {}

void TextTable::add(std::vector<std::string> row) {
    m_rows.push_back(std::move(row));
}

std::string TextTable::text(std::size_t indent) const {
    constexpr std::size_t sentence = 25; // no figure is as wide
    std::vector<std::size_t> widths(m_rows.front().size(), 0);
    for (const auto& row : m_rows)
        for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], characters(row[i]));
    std::string all;
    for (const auto& row : m_rows) {
        std::string line(indent, ' ');
        for (std::size_t i = 0; i < row.size(); ++i) {
            const std::string blanks(widths[i] - characters(row[i]), ' ');
            if (i > 0) line += "  ";
            line += i < m_left || widths[i] > sentence ? row[i] + blanks : blanks + row[i];
        }
        line.erase(line.find_last_not_of(' ') + 1);
        all += line + "\n";
    }
    return all;
}

} // namespace warmbench::app
