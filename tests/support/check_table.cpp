#include "tests/support/check_table.h"

#include <cmath>
#include <fstream>
#include <limits>
#include <sstream>
#include <stdexcept>

namespace warmbench::tests {
namespace {

std::vector<std::string> split(const std::string& text, char separator) {
    std::vector<std::string> parts;
    std::istringstream stream{text};
    for (std::string part; std::getline(stream, part, separator);) parts.push_back(part);
    if (!text.empty() && text.back() == separator) parts.emplace_back();
    return parts;
}

} // namespace

double CheckRow::number(const std::string& column) const {
    const std::string& cell = text(column);
    if (cell == "Inf") return std::numeric_limits<double>::infinity();
    if (cell == "-Inf") return -std::numeric_limits<double>::infinity();
    std::size_t used = 0;
    const double value = std::stod(cell, &used);
    if (used != cell.size() || !std::isfinite(value)) throw std::runtime_error(column + ": " + cell);
    return value;
}

double CheckRow::part(const std::string& column, const std::string& name) const {
    for (const std::string& part : split(text(column), ';'))
        if (part.starts_with(name) && part[name.size()] == '=')
            return std::stod(part.substr(name.size() + 1));
    throw std::runtime_error(column + " has no " + name);
}

CheckRow CheckRow::with(const CheckRow& other) const {
    auto cells = m_cells;
    cells.insert(other.m_cells.begin(), other.m_cells.end());
    return CheckRow{std::move(cells)};
}

std::vector<CheckRow> checkRows(const std::string& file) {
    std::ifstream stream{WARMBENCH_TEST_DATA "/data/checks/" + file};
    std::string line;
    if (!std::getline(stream, line)) throw std::runtime_error("cannot read " + file);
    const std::vector<std::string> names = split(line, ',');
    std::vector<CheckRow> rows;
    while (std::getline(stream, line)) {
        const std::vector<std::string> cells = split(line, ',');
        if (cells.size() != names.size()) throw std::runtime_error("not as wide as the first line: " + line);
        std::map<std::string, std::string> row;
        for (std::size_t i = 0; i < names.size(); ++i) row[names[i]] = cells[i];
        rows.emplace_back(std::move(row));
    }
    if (rows.empty()) throw std::runtime_error(file + " has no rows");
    return rows;
}

std::vector<CheckRow> checkRowsWithExpected(const std::string& id) {
    const auto given = checkRows(id + "_in.csv");
    const auto expected = checkRows(id + "_expected.csv");
    if (given.size() != expected.size()) throw std::runtime_error(id + ": rows differ in number");
    std::vector<CheckRow> rows;
    for (std::size_t i = 0; i < given.size(); ++i) rows.push_back(given[i].with(expected[i]));
    return rows;
}

std::map<std::string, std::vector<CheckRow>> byText(const std::vector<CheckRow>& rows,
                                                    const std::string& column) {
    std::map<std::string, std::vector<CheckRow>> groups;
    for (const CheckRow& row : rows) groups[row.text(column)].push_back(row);
    return groups;
}

} // namespace warmbench::tests
