#pragma once

#include "core/quantity/result.h"

#include <string>
#include <vector>

namespace warmbench::app {

/// What became of a damaged book's things of one kind.
struct RescuedKind {
    const char* several; ///< kindName<E>.several
    int saved = 0;
    int fromJournal = 0;  ///< of these, those whose row could not be read
    int dropped = 0;      ///< read, but they break a rule without what is lost
    bool damaged = false; ///< some of its rows can't be read
};

struct Rescue {
    std::vector<RescuedKind> kinds;
    int entries = 0;           ///< of the journal, that could be read in an unbroken chain from the first on
    bool journalWhole = false; ///< its end is there, and it tells the whole book: nothing is lost
};

/// Saves what can be saved of a damaged book in a file to a new one. The damaged file is only copied, never
/// opened itself. Refused where the new name is taken, or where the file is no house book at all.
[[nodiscard]] Result<Rescue> rescueBook(const std::string& damaged, const std::string& newBook);

} // namespace warmbench::app
