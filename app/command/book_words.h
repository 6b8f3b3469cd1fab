#pragma once

#include "core/book/house_book.h"

#include <cstddef>
#include <string>
#include <vector>

/// Words that several calls print.
namespace warmbench::app {

/// `Monday 30 November 2026`.
std::string dayWords(Day day);
/// `Glasshouse · Bench 1 · A`.
std::string placeWords(const HouseBook& book, ZoneId id);
/// The zones in which a batch stands on a day; `no place` where it has none.
std::string placesWords(const HouseBook& book, BatchId batch, Day day);
/// `1 batch`, `2 batches`.
std::string counted(std::size_t count, const std::string& one, const std::string& several);
/// `18 h`, or `4 days` from two days on.
std::string hoursWords(double hours);

/// A share in thousandths, to the nearest.
int permilleOf(double share);

/// A day from an option, such as `2027-02-01`; today where the option was left out.
Result<Day> readDay(const std::string& option, const std::string& text);

/// Columns of text under a head, as wide as they need; those after the first ones lean to the right.
class TextTable {
public:
    /// `left` columns lean to the left, and those that hold sentences.
    TextTable(std::vector<std::string> head, std::size_t left);
    void add(std::vector<std::string> row);
    [[nodiscard]] bool empty() const { return m_rows.size() == 1; }
    /// All lines, each led by `indent` blanks.
    [[nodiscard]] std::string text(std::size_t indent = 2) const;

private:
    std::vector<std::vector<std::string>> m_rows;
    std::size_t m_left;
};

} // namespace warmbench::app
