#pragma once

#include "core/book/house_book.h"

#include <vector>

/// The rules that every house book keeps, each stated once, of one thing among its neighbours.
namespace warmbench {

/// The first rule that a thing breaks as it stands in the book, in words for a propagator; nothing when
/// sound.
[[nodiscard]] Outcome checkThing(const HouseBook& book, const Nursery& nursery);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const HandDay& day);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const House& house);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const Bench& bench);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const Zone& zone);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const MatRun& run);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const ContainerType& type);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const Medium& medium);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const Taxon& taxon);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const Recipe& recipe);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const Stock& stock);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const Target& target);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const Batch& batch);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const Stay& stay);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const RootCheck& check);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const Potting& potting);
[[nodiscard]] Outcome checkThing(const HouseBook& book, const Loss& loss);

/// Whether things that rest on `thing` are still sound after it was changed, or still need it after it was
/// removed; only those kinds have an overload on which others rest.
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const House& house, bool removed);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Bench& bench, bool removed);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Zone& zone, bool removed);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const ContainerType& type, bool removed);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Taxon& taxon, bool removed);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Stock& stock, bool removed);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Target& target, bool removed);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Batch& batch, bool removed);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Loss& loss, bool removed);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Potting& potting, bool removed);

/// The rules round one edit, in the book as it is after the whole change.
template <class E>
[[nodiscard]] Outcome checkEdit(const HouseBook& book, const Edit<E>& edit) {
    const E* now = book.find<E>(edit.id());
    if (now)
        if (auto broken = checkThing(book, *now)) return broken;
    if (edit.before)
        if constexpr (requires { checkDependents(book, *edit.before, false); })
            return checkDependents(book, now ? *now : *edit.before, !now);
    return std::nullopt;
}

/// Every rule that the book breaks; empty for a sound one.
[[nodiscard]] std::vector<Refusal> audit(const HouseBook& book);

} // namespace warmbench
