#pragma once

#include "core/book/house_book.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace warmbench {

/// One value of a list, as text, with what it is.
struct TableCell {
    enum class Kind : std::uint8_t { Text, Number, Day };
    std::string text; ///< a number as an exact decimal, a day as `2027-02-28`; empty where there is none
    Kind kind = Kind::Text;
    friend bool operator==(const TableCell&, const TableCell&) = default;
};

/// One list of a house book: the first row holds the names of the fields, then a row a thing; a field that
/// names another thing has what people call that (its code or name), nested fields are JSON text.
using BookTable = std::vector<std::vector<TableCell>>;

/// The list of this name (kindName<E>.many); nothing for the name of no list.
[[nodiscard]] std::optional<BookTable> bookTable(const HouseBook& book, std::string_view list);

/// A list as CSV by RFC 4180. A text that a spreadsheet would take for a formula is led by an apostrophe.
[[nodiscard]] std::string csvText(const BookTable& table);

/// The names of all lists.
[[nodiscard]] std::vector<std::string> tableNames();

} // namespace warmbench
