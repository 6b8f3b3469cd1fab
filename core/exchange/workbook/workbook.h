#pragma once

#include "core/exchange/book/book_table.h"

#include <filesystem>
#include <utility>

namespace warmbench::exchange {

/// A list and the name of its sheet.
struct NamedTable {
    std::string name;
    BookTable table;
};

/// Writes lists as an Office Open XML workbook, a sheet each: numbers and days as such, all else as text that
/// is no formula, the heads held in sight. In place of a text too long for a cell it says so. The file is
/// complete or not there: one that was there before stays when it fails. Refused, with the file's name as its
/// place: what can't be written; more rows than a sheet takes (1,048,576).
[[nodiscard]] Outcome writeWorkbook(const std::filesystem::path& path, const std::vector<NamedTable>& tables);

} // namespace warmbench::exchange
