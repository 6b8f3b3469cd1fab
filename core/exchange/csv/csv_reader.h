#pragma once

#include "core/quantity/result.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace warmbench::exchange {

/// A column that a reader asks for by the name that the first line gives it.
struct CsvColumn {
    std::string name;
    bool required = true;
};

/// Reads a CSV text record by record (RFC 4180: commas; cells in double quotes may hold commas, line ends and
/// doubled quotes). The first line names the columns, which may stand in any order; columns that nobody
/// asked for are passed over. UTF-8 with or without a byte order mark; lines end with CRLF, LF or CR; empty
/// lines are passed over. Blanks around a cell without quotes are dropped. Everything else is refused with
/// the file's name and the line, counted from 1.
class CsvReader {
public:
    /// Reads the first line. `name` is the file's, for refusals.
    static Result<CsvReader> open(std::string name, std::string text, std::vector<CsvColumn> columns);

    /// Moves on to the next record: false at the end of the text.
    Result<bool> next();

    /// The current record's cell in a column, by its place in the list given to open; empty for a column that
    /// the file does not have. Valid until the next call of next.
    [[nodiscard]] std::string_view cell(std::size_t column) const;
    /// Whether the file has that column.
    [[nodiscard]] bool has(std::size_t column) const { return m_places[column] != absent; }
    /// The line on which the current record begins.
    [[nodiscard]] std::size_t line() const { return m_line; }
    /// `FILE: line 7, count: found '-3', expected ...` for the current record.
    [[nodiscard]] Refusal refusal(std::size_t column, std::string_view expected) const;
    /// The same for what a record says as a whole.
    [[nodiscard]] Refusal refusal(std::string_view what) const;

private:
    static constexpr std::size_t absent = static_cast<std::size_t>(-1);

    CsvReader(std::string name, std::string text, std::vector<CsvColumn> columns);
    Outcome readHeader();
    Result<bool> readRecord();
    Outcome readCell();
    Outcome readQuoted(std::string& cell);
    bool takeLineEnd();

    std::string m_name;
    std::string m_text;
    std::vector<CsvColumn> m_columns;
    std::vector<std::size_t> m_places; ///< for each column asked for, its place in a record
    std::vector<std::string> m_cells;  ///< of the current record; only the first m_cellCount count
    std::size_t m_cellCount = 0;
    std::size_t m_width = 0; ///< cells of the first line
    std::size_t m_position = 0;
    std::size_t m_line = 0;     ///< of the current record
    std::size_t m_nextLine = 1; ///< of m_position
};

} // namespace warmbench::exchange
