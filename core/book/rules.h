#pragma once

#include "core/book/house_book.h"

#include <vector>

/// The rules that every house book keeps, each stated once, of one thing among its neighbours.
namespace warmbench {

/// The first rule that a thing breaks as it stands in the book, in words for a propagator; nothing when
/// sound. What it refers to must be there (checkFields).
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
[[nodiscard]] Outcome checkThing(const HouseBook& book, const ReadingMonth& month);

/// Refused while anything rests on a thing that was removed.
[[nodiscard]] Outcome checkUnused(const HouseBook& book, const House& house);
[[nodiscard]] Outcome checkUnused(const HouseBook& book, const Bench& bench);
[[nodiscard]] Outcome checkUnused(const HouseBook& book, const Zone& zone);
[[nodiscard]] Outcome checkUnused(const HouseBook& book, const ContainerType& type);
[[nodiscard]] Outcome checkUnused(const HouseBook& book, const Taxon& taxon);
[[nodiscard]] Outcome checkUnused(const HouseBook& book, const Stock& stock);
[[nodiscard]] Outcome checkUnused(const HouseBook& book, const Target& target);
[[nodiscard]] Outcome checkUnused(const HouseBook& book, const Batch& batch);

/// Whether things whose rules look at `thing` are still sound after it was added, changed or removed; only
/// those kinds have an overload that others look at.
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const House& house);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Bench& bench);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Zone& zone);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const ContainerType& type);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Stock& stock);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Target& target);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Batch& batch);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Loss& loss);
[[nodiscard]] Outcome checkDependents(const HouseBook& book, const Potting& potting);

/// The rules round a change, in the book as it is after it; the book was sound before.
[[nodiscard]] Outcome checkChange(const HouseBook& book, const Change& change);

/// Every rule that the book breaks, at most one of each thing; empty for a sound one. Where things refer to
/// others that are not there, or have fields that nothing can have, only that is told.
[[nodiscard]] std::vector<BrokenRule> audit(const HouseBook& book);

} // namespace warmbench
