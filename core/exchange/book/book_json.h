#pragma once

#include "core/book/house_book.h"

#include <string>
#include <string_view>

/// House books and what is in them as JSON: the format of exports, of the descriptions that new books are
/// made from, and of the journal. Its schema is resources/schema/house-book.schema.json.
namespace warmbench {

/// The `version` of the format, which stands in every book.
inline constexpr int bookFormatVersion = 1;

/// A whole book as indented JSON, the same text for the same book.
[[nodiscard]] std::string writeBook(const HouseBook& book);
/// The book that a whole text describes; ids are kept. Lists, texts, marks and optional fields may be left
/// out, and any setting of the nursery. Refused, with the JSON pointer of the place: what is no JSON, missing
/// or unknown fields, wrong types, decimals, words or days, numbers that stand twice, references to nothing,
/// and whatever breaks a rule of house books.
[[nodiscard]] Result<HouseBook> readBook(std::string_view text);

/// A change on one line.
[[nodiscard]] std::string writeChange(const Change& change);
/// Refused, with the JSON pointer, where the text tells no change.
[[nodiscard]] Result<Change> readChange(std::string_view text);

} // namespace warmbench
