#include "core/book/rules.h"

#include <algorithm>

/// Rules of what is grown and in what: containers, media, taxa, recipes, stocks, targets.
namespace warmbench {
namespace {

Outcome checkComponents(const std::string& place, const std::vector<MediumComponent>& components) {
    for (const MediumComponent& component : components) {
        if (component.name.empty()) return Refusal{place, phrase("a component of the medium has no name")};
        if (component.parts < 1 || component.parts > 1000)
            return Refusal{place,
                           phrase("%1 parts of %2; expected 1 to 1000", component.parts, component.name)};
    }
    return std::nullopt;
}

/// No two things of a kind have one name.
template <class E>
Outcome checkName(const HouseBook& book, const E& thing) {
    if (thing.name.empty()) return Refusal{kindName<E>.one, phrase("it needs a name")};
    if (book.withKey<E>(thing.name).size() > 1)
        return Refusal{thing.name, phrase("two %1 have this name", Phrase(kindName<E>.several))};
    return std::nullopt;
}

/// The first thing of a kind that names `id` in `field`.
template <class E, class Id>
const E* firstWith(const HouseBook& book, Id E::*field, Id id) {
    for (const auto& [key, thing] : book.all<E>())
        if (thing.*field == id) return &thing;
    return nullptr;
}

template <class Id>
const Batch* firstBatchWith(const HouseBook& book, std::optional<Id> Batch::*field, Id id) {
    return firstWith<Batch, std::optional<Id>>(book, field, std::optional<Id>(id));
}

template <class Id>
Outcome checkBatchesWith(const HouseBook& book, std::optional<Id> Batch::*field, Id id) {
    for (const auto& [key, batch] : book.all<Batch>())
        if (batch.*field == id)
            if (auto broken = checkThing(book, batch)) return broken;
    return std::nullopt;
}

} // namespace

Outcome checkThing(const HouseBook& book, const ContainerType& type) {
    if (auto broken = checkName(book, type)) return broken;
    if (type.footprint.height < 1 || type.footprint.width < 1 || type.footprint.height > 100 ||
        type.footprint.width > 100)
        return Refusal{type.name, phrase("it covers %1 by %2 slots; expected 1 to 100 each way",
                                         type.footprint.height, type.footprint.width)};
    if (type.volume <= Litres{0}) return Refusal{type.name, phrase("it holds no medium")};
    if (type.cuttings < 1 || type.cuttings > 10'000)
        return Refusal{type.name, phrase("it takes %1 cuttings; expected 1 to 10000", type.cuttings)};
    return std::nullopt;
}

Outcome checkUnused(const HouseBook& book, const ContainerType& type) {
    if (const Batch* batch = firstWith(book, &Batch::containerType, type.id))
        return Refusal{type.name, phrase("%1 stands in it", batch->code)};
    return std::nullopt;
}

Outcome checkDependents(const HouseBook& book, const ContainerType& type) {
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.containerType != type.id) continue;
        for (const StayId stay : book.staysOf(id))
            if (auto broken = checkThing(book, book.get<Stay>(stay))) return broken;
    }
    return std::nullopt;
}

Outcome checkThing(const HouseBook& book, const Medium& medium) {
    if (auto broken = checkName(book, medium)) return broken;
    if (medium.components.empty()) return Refusal{medium.name, phrase("it has no components")};
    return checkComponents(medium.name, medium.components);
}

Outcome checkThing(const HouseBook& book, const Taxon& taxon) {
    return checkName(book, taxon);
}

Outcome checkUnused(const HouseBook& book, const Taxon& taxon) {
    if (firstWith(book, &Recipe::taxon, taxon.id)) return Refusal{taxon.name, phrase("a recipe is for it")};
    if (const Stock* stock = firstWith(book, &Stock::taxon, taxon.id))
        return Refusal{taxon.name, phrase("stock %1 is of it", stock->name)};
    if (const Target* target = firstWith(book, &Target::taxon, taxon.id))
        return Refusal{taxon.name, phrase("target %1 wants it", target->name)};
    if (const Batch* batch = firstWith(book, &Batch::taxon, taxon.id))
        return Refusal{taxon.name, phrase("batch %1 is of it", batch->code)};
    return std::nullopt;
}

Outcome checkThing(const HouseBook& book, const Recipe& recipe) {
    const std::string place =
        book.get<Taxon>(recipe.taxon).name + ", " + woodNames[static_cast<std::size_t>(recipe.wood)];
    if (recipe.rootZoneLow.value > recipe.rootZoneHigh.value)
        return Refusal{place, phrase("the root zone's lowest temperature is above its highest")};
    if (recipe.daysToRoot.value.low < 1 || recipe.daysToRoot.value.high < recipe.daysToRoot.value.low ||
        recipe.daysToRoot.value.high > 400)
        return Refusal{place, phrase("days to root must be 1 to 400, the fewest first")};
    const IntRange take = recipe.takePercent.value;
    if (take.low < 0 || take.high > 100 || take.low > take.high)
        return Refusal{place, phrase("take must be 0 to 100 %, the lowest first")};
    if (recipe.covers.value.empty()) return Refusal{place, phrase("it names no cover")};
    if (recipe.cuttingsPerContainer.value < 1) return Refusal{place, phrase("a container takes no cutting")};
    if (recipe.weanDays.value < 0 || recipe.weanDays.value > 400 || recipe.growOnDays.value < 0 ||
        recipe.growOnDays.value > 1000)
        return Refusal{place, phrase("weaning takes 0 to 400 days, growing on 0 to 1000")};
    return checkComponents(place, recipe.medium.value);
}

Outcome checkThing(const HouseBook& book, const Stock& stock) {
    if (auto broken = checkName(book, stock)) return broken;
    if (stock.plants < 0) return Refusal{stock.name, phrase("fewer than 0 plants")};
    for (const Flush& flush : stock.flushes)
        if (flush.cuttingsPerPlant < 0 || flush.regrowthDays < 1)
            return Refusal{
                stock.name,
                phrase("a flush yields 0 cuttings a plant or more, and grows again after a day or more")};
    return std::nullopt;
}

Outcome checkUnused(const HouseBook& book, const Stock& stock) {
    if (const Batch* batch = firstBatchWith(book, &Batch::stock, stock.id))
        return Refusal{stock.name, phrase("batch %1 was taken from it", batch->code)};
    return std::nullopt;
}

Outcome checkDependents(const HouseBook& book, const Stock& stock) {
    return checkBatchesWith(book, &Batch::stock, stock.id);
}

Outcome checkThing(const HouseBook& book, const Target& target) {
    if (auto broken = checkName(book, target)) return broken;
    if (target.plants < 1 || target.plants > 1'000'000)
        return Refusal{target.name, phrase("%1 plants; expected 1 to a million", target.plants)};
    if (target.worth < Money{0}) return Refusal{target.name, phrase("a plant's worth is below 0")};
    return std::nullopt;
}

Outcome checkUnused(const HouseBook& book, const Target& target) {
    if (const Batch* batch = firstBatchWith(book, &Batch::target, target.id))
        return Refusal{target.name, phrase("batch %1 is for it", batch->code)};
    return std::nullopt;
}

Outcome checkDependents(const HouseBook& book, const Target& target) {
    return checkBatchesWith(book, &Batch::target, target.id);
}

} // namespace warmbench
