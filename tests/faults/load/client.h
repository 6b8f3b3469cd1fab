#pragma once

#include "core/book/house_book.h"

#include <cstdint>
#include <string>
#include <vector>

namespace warmbench::tests {

/// What one client did to a shared book, as it tells it itself.
struct ClientRun {
    int kept = 0;
    int faster = 0;                  ///< refused because somebody was faster with the same things or slots
    int refused = 0;                 ///< refused by a rule alone
    int failed = 0;                  ///< anything else: none is expected
    std::vector<std::string> checks; ///< notes of the checks that were kept and not taken back
    std::vector<std::int64_t> microseconds; ///< of every command, kept or refused
    std::size_t lastBook = 0;               ///< hash of the book as the client sees it at the end
    std::string trouble;                    ///< words of the last failure
};

/// Does so many commands on the book at an address, drawn by `client`: checks of a round, batches on slots
/// that others want too, moves of what others move, and undo. `wait` returns when all clients are done;
/// then the book is read a last time.
[[nodiscard]] ClientRun runClient(const std::string& address, int client, int commands, void (*wait)());

/// A hash of all that a book holds.
[[nodiscard]] std::size_t hashOf(const HouseBook& book);

} // namespace warmbench::tests
