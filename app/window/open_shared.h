#pragma once

#include "app/storage/book_file.h"
#include "app/window/password_keeper.h"

namespace warmbench::app {

/// Opens a book. A password in a shared one's address is handed to `keys` once the server has taken it; where
/// the address has none and the server asks for one, that of `keys` is tried.
Result<std::unique_ptr<BookFile>> openBookWith(PasswordKeeper& keys, const std::string& name, OpenMode mode);

} // namespace warmbench::app
