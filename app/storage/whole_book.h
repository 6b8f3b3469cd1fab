#pragma once

#include "core/book/house_book.h"

namespace warmbench::app {

/// Everything of a book as one change of an empty one.
[[nodiscard]] inline Change changeTo(const HouseBook& book) {
    Change change;
    const HouseBook empty;
    forEachKind([&]<class E>() {
        for (const auto& [id, thing] : book.all<E>()) {
            Edit<E> edit{std::nullopt, thing};
            if (const E* before = empty.find<E>(id)) edit.before = *before;
            change.edits.emplace_back(std::move(edit));
        }
    });
    return change;
}

} // namespace warmbench::app
