#pragma once

#include <map>
#include <string>
#include <vector>

namespace warmbench::tests {

/// One row of a table of reference values in tests/data/checks, by the names of its columns.
class CheckRow {
public:
    explicit CheckRow(std::map<std::string, std::string> cells) : m_cells(std::move(cells)) {}

    /// The cell as it stands; throws where there is no such column.
    [[nodiscard]] const std::string& text(const std::string& column) const { return m_cells.at(column); }
    [[nodiscard]] bool has(const std::string& column) const { return m_cells.contains(column); }
    /// Whether the cell says NA.
    [[nodiscard]] bool absent(const std::string& column) const { return text(column) == "NA"; }
    /// The cell's number, `Inf` and `-Inf` included; throws for anything else.
    [[nodiscard]] double number(const std::string& column) const;
    /// The number of `name=...` in a cell of the form `a=1;b=2`; throws where it is not there.
    [[nodiscard]] double part(const std::string& column, const std::string& name) const;
    /// The cells of both rows.
    [[nodiscard]] CheckRow with(const CheckRow& other) const;

private:
    std::map<std::string, std::string> m_cells;
};

/// The rows of tests/data/checks/`file`; throws where it cannot be read or has no rows.
std::vector<CheckRow> checkRows(const std::string& file);

/// The rows of `ID_in.csv`, each with the cells of the same row of `ID_expected.csv`.
std::vector<CheckRow> checkRowsWithExpected(const std::string& id);

/// The rows by the text of one column, in their order within each.
std::map<std::string, std::vector<CheckRow>> byText(const std::vector<CheckRow>& rows,
                                                    const std::string& column);

} // namespace warmbench::tests
