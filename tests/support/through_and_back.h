#pragma once

#include "core/book/command.h"
#include "core/book/house_book.h"
#include "core/book/rules.h"

#include <catch2/catch.hpp>

namespace warmbench::tests {

/// What every command keeps: done, taken back and done again it leads to the same states, sound all of them.
/// The book is left as it is after the command.
inline void followsThroughAndBack(HouseBook& book, const Command& command) {
    const HouseBook before = book;
    CHECK(!words(book, command).empty());
    const Result<Change> change = book.perform(command);
    if (!change) FAIL(change.refusal().text());
    const HouseBook after = book;
    CHECK(!(after == before));
    CHECK(audit(book).empty());
    CHECK(!book.apply(change->inverse()));
    CHECK(book == before);
    CHECK(audit(book).empty());
    CHECK(!book.apply(*change));
    CHECK(book == after);
    CHECK(audit(book).empty());
}

} // namespace warmbench::tests
