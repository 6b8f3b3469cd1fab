#pragma once

#include "core/book/house_book.h"

#include <optional>
#include <string>

/// Questions to a book that more than one part asks.
namespace warmbench {

/// What people call it: `Bench 1 · A` for a zone, the code for a batch, the name for the rest.
[[nodiscard]] std::string zoneTitle(const HouseBook& book, ZoneId zone);
/// What is written on one container of a batch with this code: `27-048-A/07`.
[[nodiscard]] std::string containerCode(const std::string& batchCode, int container);
/// `Buddleja davidii, softwood`, with the recipe's own name behind where it has one.
[[nodiscard]] std::string recipeTitle(const HouseBook& book, const Recipe& recipe);

/// Cuttings still standing in one container of a batch at the end of `day`: struck, less those lost and
/// potted on up to and including that day. 0 for a container that the batch has not.
[[nodiscard]] int standing(const HouseBook& book, const Batch& batch, int container, Day day);
/// The same over all its containers.
[[nodiscard]] int standing(const HouseBook& book, const Batch& batch, Day day);
/// Plants potted on from a batch so far.
[[nodiscard]] int pottedOn(const HouseBook& book, BatchId batch);

/// The stays of a batch in the order of their first days.
[[nodiscard]] std::vector<const Stay*> staysInOrder(const HouseBook& book, BatchId batch);
/// Some container of one stands on a slot of the other, whatever their zones and days.
[[nodiscard]] bool shareSlots(const Stay& a, const Stay& b);
/// The stay of a batch that covers `day`; where its containers are in two, the first.
[[nodiscard]] const Stay* stayOn(const HouseBook& book, BatchId batch, Day day);
/// The set-point of a zone's mat on a day; nothing when it is off or there is none.
[[nodiscard]] std::optional<Celsius> setPointOn(const HouseBook& book, ZoneId zone, Day day);
/// The root zone that is to be expected in a zone on a day: the set-point or the unheated root zone of its
/// house, whichever is warmer.
[[nodiscard]] Celsius expectedRootZone(const HouseBook& book, const Zone& zone, Day day);
[[nodiscard]] const House& houseOf(const HouseBook& book, const Zone& zone);
/// Slots of a zone that hold a container on a day.
[[nodiscard]] int slotsTaken(const HouseBook& book, ZoneId zone, Day day);

/// The taxon with this name, synonym or common name; upper and lower case, and `x` and `×`, are one.
[[nodiscard]] const Taxon* findTaxon(const HouseBook& book, std::string_view name);
[[nodiscard]] const Batch* findBatch(const HouseBook& book, std::string_view code);

} // namespace warmbench
