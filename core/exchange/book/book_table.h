#pragma once

#include "core/book/house_book.h"

#include <optional>
#include <string>
#include <string_view>

namespace warmbench {

/// One list of a house book (kindName<E>.many) as CSV by RFC 4180: a line of field names, a line a thing;
/// nested fields are JSON text. A text that a spreadsheet would take for a formula is led by an apostrophe.
/// Nothing for the name of no list.
[[nodiscard]] std::optional<std::string> writeTable(const HouseBook& book, std::string_view list);

/// The names of all lists, with commas between.
[[nodiscard]] std::string tableNames();

} // namespace warmbench
