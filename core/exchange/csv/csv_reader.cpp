#include "core/exchange/csv/csv_reader.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace warmbench::exchange {
namespace {

constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

/// Where the first byte stands that is not part of well-formed UTF-8 (Unicode 15, table 3-7), or is zero.
std::optional<std::size_t> firstForeignByte(std::string_view text) {
    const auto byteAt = [text](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    for (std::size_t i = 0; i < text.size();) {
        const unsigned char lead = byteAt(i);
        if (lead == 0) return i;
        if (lead < 0x80) {
            ++i;
            continue;
        }
        const std::size_t length = lead >= 0xC2 && lead < 0xE0   ? 2
                                   : lead >= 0xE0 && lead < 0xF0 ? 3
                                   : lead >= 0xF0 && lead < 0xF5 ? 4
                                                                 : 0;
        if (length == 0 || i + length > text.size()) return i;
        for (std::size_t k = 1; k < length; ++k)
            if ((byteAt(i + k) & 0xC0) != 0x80) return i;
        const unsigned char second = byteAt(i + 1);
        if ((lead == 0xE0 && second < 0xA0) || (lead == 0xED && second > 0x9F) ||
            (lead == 0xF0 && second < 0x90) || (lead == 0xF4 && second > 0x8F))
            return i;
        i += length;
    }
    return std::nullopt;
}

std::string lineText(std::size_t line) {
    return "line " + std::to_string(line);
}

std::string shortened(std::string_view found) {
    constexpr std::size_t longest = 60;
    std::string text{found.substr(0, longest)};
    std::replace_if(
        text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < ' '; }, ' ');
    return found.size() > longest ? text + "..." : text;
}

void trim(std::string& cell) {
    const std::size_t last = cell.find_last_not_of(" \t");
    cell.erase(last == std::string::npos ? 0 : last + 1);
    cell.erase(0, std::min(cell.find_first_not_of(" \t"), cell.size()));
}

std::string listed(const std::vector<std::string>& names) {
    std::string text;
    for (const std::string& name : names) text.append(text.empty() ? "" : ", ").append(name);
    return text;
}

} // namespace

CsvReader::CsvReader(std::string name, std::string text, std::vector<CsvColumn> columns)
    : m_name(std::move(name)), m_text(std::move(text)), m_columns(std::move(columns)),
      m_places(m_columns.size(), absent) {}

Result<CsvReader> CsvReader::open(std::string name, std::string text, std::vector<CsvColumn> columns) {
    CsvReader reader{std::move(name), std::move(text), std::move(columns)};
    if (auto refused = reader.readHeader()) return *std::move(refused);
    return reader;
}

Outcome CsvReader::readHeader() {
    if (const auto foreign = firstForeignByte(m_text)) {
        const auto end = m_text.begin() + static_cast<std::ptrdiff_t>(*foreign);
        m_line = 1 + static_cast<std::size_t>(std::count(m_text.begin(), end, '\n'));
        return refusal("found bytes that are not UTF-8 text, expected a CSV file saved as UTF-8");
    }
    if (m_text.starts_with(byteOrderMark)) m_position = byteOrderMark.size();

    std::vector<std::string> required;
    for (const CsvColumn& column : m_columns)
        if (column.required) required.push_back(column.name);
    const auto any = readRecord();
    if (!any) return any.refusal();
    if (!*any)
        return Refusal{m_name, phrase("found an empty file, expected a first line that names the columns %1",
                                      listed(required))};

    m_width = m_cellCount;
    for (std::size_t column = 0; column < m_columns.size(); ++column)
        for (std::size_t place = 0; place < m_width; ++place) {
            if (m_cells[place] != m_columns[column].name) continue;
            if (has(column))
                return refusal("found the column " + m_cells[place] + " twice, expected it once");
            m_places[column] = place;
        }
    for (std::size_t column = 0; column < m_columns.size(); ++column)
        if (m_columns[column].required && !has(column)) {
            m_cells.resize(m_width);
            return refusal("found the columns '" + shortened(listed(m_cells)) + "', expected one named " +
                           m_columns[column].name);
        }
    return {};
}

Result<bool> CsvReader::next() {
    auto read = readRecord();
    if (!read || !*read) return read;
    if (m_cellCount != m_width)
        return refusal("found " + std::to_string(m_cellCount) + (m_cellCount == 1 ? " cell" : " cells") +
                       ", expected " + std::to_string(m_width) + " as in the first line");
    return true;
}

std::string_view CsvReader::cell(std::size_t column) const {
    return has(column) ? std::string_view{m_cells[m_places[column]]} : std::string_view{};
}

Refusal CsvReader::refusal(std::size_t column, std::string_view expected) const {
    const std::string_view found = cell(column);
    return {m_name + ": " + lineText(m_line) + ", " + m_columns[column].name,
            (found.empty() ? "found nothing" : "found '" + shortened(found) + "'") + ", expected " +
                std::string{expected}};
}

Refusal CsvReader::refusal(std::string_view what) const {
    return {m_name + ": " + lineText(m_line), std::string{what}};
}

Result<bool> CsvReader::readRecord() {
    while (takeLineEnd()) {
    }
    if (m_position == m_text.size()) return false;
    m_line = m_nextLine;
    m_cellCount = 0;
    while (true) {
        if (auto refused = readCell()) return *std::move(refused);
        if (m_position == m_text.size() || takeLineEnd()) return true;
        ++m_position; // the comma that ended the cell
    }
}

/// Reads up to the comma, line end or end of text that ends a cell.
Outcome CsvReader::readCell() {
    if (m_cellCount == m_cells.size()) m_cells.emplace_back();
    std::string& cell = m_cells[m_cellCount++];
    cell.clear();
    if (m_position < m_text.size() && m_text[m_position] == '"') return readQuoted(cell);
    const std::size_t end = std::min(m_text.find_first_of(",\r\n", m_position), m_text.size());
    cell.assign(m_text, m_position, end - m_position);
    m_position = end;
    if (cell.find('"') != std::string::npos)
        return refusal("found a quotation mark inside '" + shortened(cell) +
                       "', expected the whole cell in quotation marks, doubled inside it");
    trim(cell);
    return {};
}

Outcome CsvReader::readQuoted(std::string& cell) {
    ++m_position;
    while (true) {
        const std::size_t quote = m_text.find('"', m_position);
        if (quote == std::string::npos)
            return refusal("found a cell whose quotation mark is never closed, expected a closing one");
        const std::string_view part = std::string_view{m_text}.substr(m_position, quote - m_position);
        m_nextLine += static_cast<std::size_t>(std::count(part.begin(), part.end(), '\n'));
        cell.append(part);
        m_position = quote + 1;
        if (m_position == m_text.size() || m_text[m_position] != '"') break;
        cell.push_back('"');
        ++m_position;
    }
    if (m_position == m_text.size()) return {};
    const char after = m_text[m_position];
    if (after == ',' || after == '\r' || after == '\n') return {};
    return refusal("found text after a closing quotation mark, expected a comma or the line's end");
}

bool CsvReader::takeLineEnd() {
    if (m_position == m_text.size()) return false;
    if (m_text[m_position] != '\r' && m_text[m_position] != '\n') return false;
    if (m_text.compare(m_position, 2, "\r\n") == 0) ++m_position;
    ++m_position;
    ++m_nextLine;
    return true;
}

} // namespace warmbench::exchange
