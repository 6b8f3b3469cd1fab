#include "core/exchange/workbook/workbook.h"

#include <xlsxwriter.h>

#include <system_error>

namespace warmbench::exchange {
namespace {

constexpr std::size_t mostRows = LXW_ROW_MAX;
/// Longer texts are no cells of a sheet, in bytes: it counts 32,767 characters.
constexpr std::size_t mostText = 32767;
constexpr double dayWidth = 11;

struct Formats {
    lxw_format* head;
    lxw_format* day;
};

lxw_datetime dateOf(const std::string& iso) {
    const Day day = *Day::fromIso(iso);
    lxw_datetime date{};
    date.year = day.year();
    date.month = std::stoi(iso.substr(5, 2));
    date.day = std::stoi(iso.substr(8, 2));
    return date;
}

lxw_error writeCell(lxw_worksheet* sheet, lxw_row_t row, lxw_col_t col, const TableCell& cell,
                    const Formats& formats) {
    if (cell.text.empty()) return LXW_NO_ERROR;
    switch (cell.kind) {
    case TableCell::Kind::Number:
        return worksheet_write_number(sheet, row, col, std::stod(cell.text), nullptr);
    case TableCell::Kind::Day: {
        lxw_datetime date = dateOf(cell.text);
        return worksheet_write_datetime(sheet, row, col, &date, formats.day);
    }
    case TableCell::Kind::Text:
        break;
    }
    const std::string tooLong =
        "(" + std::to_string(cell.text.size()) + " bytes, too long for a cell; CSV and JSON hold them)";
    return worksheet_write_string(sheet, row, col,
                                  (cell.text.size() > mostText ? tooLong : cell.text).c_str(),
                                  row == 0 ? formats.head : nullptr);
}

lxw_error writeSheet(lxw_workbook* workbook, const NamedTable& named, const Formats& formats) {
    lxw_worksheet* sheet = workbook_add_worksheet(workbook, named.name.c_str());
    if (!sheet) return LXW_ERROR_SHEETNAME_LENGTH_EXCEEDED;
    worksheet_freeze_panes(sheet, 1, 0);
    for (std::size_t row = 0; row < named.table.size(); ++row)
        for (std::size_t col = 0; col < named.table[row].size(); ++col) {
            const TableCell& cell = named.table[row][col];
            const auto column = static_cast<lxw_col_t>(col);
            if (row == 1 && cell.kind == TableCell::Kind::Day)
                worksheet_set_column(sheet, column, column, dayWidth, nullptr);
            if (const lxw_error error = writeCell(sheet, static_cast<lxw_row_t>(row), column, cell, formats))
                return error;
        }
    return LXW_NO_ERROR;
}

} // namespace

Outcome writeWorkbook(const std::filesystem::path& path, const std::vector<NamedTable>& tables) {
    for (const NamedTable& named : tables)
        if (named.table.size() > mostRows)
            return Refusal{path.string(), phrase("%1 has %2 rows; a sheet takes %3", named.name,
                                                 named.table.size(), mostRows)};
    const std::filesystem::path part = path.string() + ".part";
    lxw_workbook* workbook = workbook_new(part.c_str());
    Formats formats{workbook_add_format(workbook), workbook_add_format(workbook)};
    format_set_bold(formats.head);
    format_set_num_format(formats.day, "yyyy-mm-dd");
    lxw_error error = LXW_NO_ERROR;
    for (const NamedTable& named : tables)
        if (!error) error = writeSheet(workbook, named, formats);
    const lxw_error closed = workbook_close(workbook);
    if (!error) error = closed;
    std::error_code failed;
    if (!error) std::filesystem::rename(part, path, failed);
    if (!error && !failed) return std::nullopt;
    std::error_code ignored;
    std::filesystem::remove(part, ignored);
    return Refusal{path.string(), phrase("it can't be written: %1",
                                         error ? std::string(lxw_strerror(error)) : failed.message())};
}

} // namespace warmbench::exchange
