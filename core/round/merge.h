#pragma once

#include "core/book/command.h"
#include "core/book/house_book.h"

#include <map>
#include <string>
#include <vector>

namespace warmbench::round {

/// How much was done on a round, and from which day to which.
struct RoundDeeds {
    std::size_t checks = 0;
    std::size_t losses = 0; ///< cuttings that died, containers thrown away
    std::size_t weanings = 0;
    std::size_t pottings = 0;
    Day first = Day::last();
    Day last = Day::first();
    friend bool operator==(const RoundDeeds&, const RoundDeeds&) = default;
};

/// What was done on a round with a copy of the book that was carried along, to be done in the book.
struct RoundMerge {
    std::vector<Command> commands; ///< in order of their days, for the book's own batches
    RoundDeeds all;                ///< of them
    std::map<BatchId, RoundDeeds> byBatch;
    std::vector<Refusal> conflicts; ///< why others are not among them, in the same order
};

/// Brings home the checks, losses, weanings and pottings of a copy that the book does not have yet. In
/// conflict is what concerns a batch or container that the book has not, what it can't hold any more, such as
/// a check of more cuttings than stand there now, and a container that was looked at, thrown away or potted
/// on on one day in both books with another result, or a batch weaned on another day.
[[nodiscard]] RoundMerge mergeRound(const HouseBook& book, const HouseBook& copy);

/// Does all of it in one step; `copy` is the copy's name, as the journal shall tell it.
[[nodiscard]] Command bringHome(const RoundMerge& merge, const std::string& copy);

} // namespace warmbench::round
