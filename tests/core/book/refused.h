#pragma once

#include "core/book/command.h"

#include <catch2/catch.hpp>

#include <string>

namespace warmbench::tests {

/// The words with which a book refuses a command, or `done`; a refusal must leave the book as it was.
inline std::string refused(HouseBook& book, const Command& command) {
    const HouseBook before = book;
    const auto change = book.perform(command);
    if (change) return "done";
    CHECK(book == before);
    return change.refusal().text();
}

/// The same for a thing of the book after `edit` has changed it.
template <class E, class Change>
std::string refusedWith(HouseBook& book, IdOf<E> id, Change change) {
    E thing = book.get<E>(id);
    change(thing);
    return refused(book, {Put<E>{thing}});
}

} // namespace warmbench::tests
