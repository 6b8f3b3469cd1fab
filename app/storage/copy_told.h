#pragma once

#include "app/storage/book_file.h"

#include <vector>

namespace warmbench::app {

/// What the journal of a copy of a book tells beside the book's own, once the copy was taken along.
struct CopyTold {
    bool isCopy = false;          ///< the two journals began as one; not so after an export
    std::vector<JournalLine> own; ///< what was done in the copy alone, the first step first
};

/// Reads both journals; changes neither book.
[[nodiscard]] Result<CopyTold> toldByCopy(const BookFile& home, const BookFile& copy);

} // namespace warmbench::app
