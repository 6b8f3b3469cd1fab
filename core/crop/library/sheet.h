#pragma once

#include "core/crop/crop.h"
#include "core/exchange/csv/csv_reader.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace warmbench {

/// A CSV file read record by record, its cells by the names of their columns and as the values that they
/// stand for. The first cell that cannot be read is kept as the refusal, and all after it are read as empty,
/// so that a reader looks for it once a record.
class Sheet {
public:
    /// All columns must be there. A text that cannot be read gives a sheet without records and with a
    /// refusal.
    Sheet(std::string name, const std::string& text, const std::vector<std::string>& columns);

    /// Moves on to the next record; false at the end or after a refusal.
    bool next();
    [[nodiscard]] const Outcome& refusal() const { return m_refusal; }
    [[nodiscard]] std::size_t line() const { return m_reader ? m_reader->line() : 0; }

    /// Refuses the current record for what stands in a column.
    void refuse(std::string_view column, std::string_view expected);

    [[nodiscard]] std::string text(std::string_view column);
    // Each of these is nothing for an empty cell, and a refusal for one that is not of its kind.
    std::optional<std::string> words(std::string_view column);
    std::optional<double> number(std::string_view column);
    std::optional<int> count(std::string_view column);           ///< 0 to 9999
    std::optional<Celsius> temperature(std::string_view column); ///< -50 to 100 °C
    std::optional<bool> yesOrNo(std::string_view column);
    /// `MM-DD`, or `MM` for the first or last day of that month; the last of February is the 29th.
    std::optional<MonthDay> monthDay(std::string_view column, bool lastOfMonth);
    std::optional<Wood> wood(std::string_view column);

private:
    [[nodiscard]] std::size_t place(std::string_view column) const;

    std::vector<std::string> m_columns;
    std::optional<exchange::CsvReader> m_reader;
    Outcome m_refusal;
};

/// A wood by its name in woodNames.
[[nodiscard]] std::optional<Wood> woodNamed(std::string_view name);
/// A cover by its name in coverNames.
[[nodiscard]] std::optional<Cover> coverNamed(std::string_view name);
/// A decimal number, and nothing else in the text.
[[nodiscard]] std::optional<double> numberIn(std::string_view text);

} // namespace warmbench
