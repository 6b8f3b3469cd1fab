#pragma once

#include "app/storage/book_file.h"

namespace warmbench::app {

/// Opens the BOOK of a call: the name of a house book's file, or the address of a shared one. Refused with
/// its name as the place.
Result<std::unique_ptr<BookFile>> openBook(const std::string& book, OpenMode mode);

/// A house book described in a JSON file; places of refusals are `file: /pointer`.
Result<HouseBook> readBookFile(const std::string& path);

} // namespace warmbench::app
