#include "core/book/query.h"
#include "core/book/rules.h"

#include <algorithm>

/// Rules of batches and what happens to them: stays, root checks, potting on, losses.
namespace warmbench {
namespace {

std::string containerName(const Batch& batch, int container) {
    return batch.code + ", container " + std::to_string(container);
}

bool hasContainer(const Batch& batch, int container) {
    return std::any_of(batch.containers.begin(), batch.containers.end(),
                       [&](const BatchContainer& one) { return one.number == container; });
}

/// What root checks, pottings and losses share: a container of a batch that has been struck by then.
template <class E>
Outcome checkOccasion(const HouseBook& book, const E& thing) {
    const Batch& batch = book.get<Batch>(thing.batch);
    if (!hasContainer(batch, thing.container))
        return Refusal{batch.code, phrase("it has no container %1", thing.container)};
    const std::string place = containerName(batch, thing.container);
    if (batch.state == BatchState::Planned) return Refusal{place, phrase("it has not been struck")};
    if (thing.day < batch.strikeDay)
        return Refusal{place, phrase("%1 is before it was struck, on %2", thing.day, batch.strikeDay)};
    return std::nullopt;
}

/// Never more out of a container than was struck in it.
Outcome checkStanding(const HouseBook& book, const Batch& batch, int container) {
    const int left = standing(book, batch, container, Day::last());
    if (left >= 0) return std::nullopt;
    return Refusal{containerName(batch, container), phrase("that is %1 more than stood in it", -left)};
}

/// No two containers of a stay on one slot.
Outcome checkSlotsOnce(const Stay& stay, const Batch& batch) {
    std::vector<std::pair<Slot, int>> covered;
    for (const Place& place : stay.places)
        for (int row = 0; row < place.slots.height; ++row)
            for (int col = 0; col < place.slots.width; ++col)
                covered.push_back({{place.slots.row + row, place.slots.col + col}, place.container});
    std::sort(covered.begin(), covered.end());
    const auto twice = std::adjacent_find(covered.begin(), covered.end(),
                                          [](const auto& a, const auto& b) { return a.first == b.first; });
    if (twice == covered.end()) return std::nullopt;
    return Refusal{containerName(batch, std::next(twice)->second),
                   phrase("it stands on the same slot as container %1", twice->second)};
}

Outcome checkPlaces(const HouseBook& book, const Stay& stay, const Batch& batch, const Zone& zone) {
    const Footprint upright = book.get<ContainerType>(batch.containerType).footprint;
    const bool turnable = book.get<ContainerType>(batch.containerType).turnable;
    const std::string title = zoneTitle(book, zone.id);
    std::set<int> numbers;
    for (const BatchContainer& one : batch.containers) numbers.insert(one.number);
    std::set<int> seen;
    for (const Place& place : stay.places) {
        if (!numbers.contains(place.container))
            return Refusal{batch.code, phrase("it has no container %1", place.container)};
        const std::string name = containerName(batch, place.container);
        if (!seen.insert(place.container).second) return Refusal{name, phrase("it stands twice in one stay")};
        const Footprint lies{place.slots.height, place.slots.width};
        if (lies != upright && !(turnable && lies == Footprint{upright.width, upright.height}))
            return Refusal{name, phrase("it does not cover %1 by %2 slots", lies.height, lies.width)};
        if (!place.slots.within(zone.rows, zone.cols))
            return Refusal{name, phrase("its slots leave %1", title)};
        for (const Slot blocked : zone.blocked)
            if (place.slots.covers(blocked))
                return Refusal{name, phrase("it stands on a blocked slot of %1", title)};
    }
    return checkSlotsOnce(stay, batch);
}

bool meet(const Stay& a, const Stay& b) {
    return a.from < b.to && b.from < a.to;
}

} // namespace

Outcome checkThing(const HouseBook& book, const Batch& batch) {
    if (batch.code.empty()) return Refusal{"batch", phrase("it needs a code")};
    if (book.withKey<Batch>(batch.code).size() > 1)
        return Refusal{batch.code, phrase("two batches have this code")};
    if (batch.recipe.taxon != batch.taxon)
        return Refusal{batch.code, phrase("its recipe is for another taxon")};
    if (batch.stock) {
        const Stock& stock = book.get<Stock>(*batch.stock);
        if (stock.taxon != batch.taxon)
            return Refusal{batch.code, phrase("stock %1 is of another taxon", stock.name)};
    }
    if (batch.target) {
        const Target& target = book.get<Target>(*batch.target);
        if (target.taxon != batch.taxon)
            return Refusal{batch.code, phrase("target %1 wants another taxon", target.name)};
    }
    if (batch.containers.empty()) return Refusal{batch.code, phrase("it has no container")};
    std::set<int> numbers;
    for (const BatchContainer& one : batch.containers) {
        if (one.number < 1 || !numbers.insert(one.number).second)
            return Refusal{batch.code, phrase("its containers are not numbered 1, 2, 3, ...")};
        if (one.cuttings < 1 || one.cuttings > 100'000)
            return Refusal{containerName(batch, one.number),
                           phrase("%1 cuttings; expected 1 to 100000", one.cuttings)};
    }
    return std::nullopt;
}

Outcome checkUnused(const HouseBook& book, const Batch& batch) {
    const bool used = !book.staysOf(batch.id).empty() || !book.checksOf(batch.id).empty() ||
                      !book.pottingsOf(batch.id).empty() || !book.lossesOf(batch.id).empty();
    return used ? Outcome{Refusal{batch.code, phrase("it still has stays, checks, pottings or losses")}}
                : std::nullopt;
}

Outcome checkDependents(const HouseBook& book, const Batch& batch) {
    for (const StayId id : book.staysOf(batch.id))
        if (auto broken = checkThing(book, book.get<Stay>(id))) return broken;
    for (const RootCheckId id : book.checksOf(batch.id))
        if (auto broken = checkThing(book, book.get<RootCheck>(id))) return broken;
    for (const PottingId id : book.pottingsOf(batch.id))
        if (auto broken = checkThing(book, book.get<Potting>(id))) return broken;
    for (const LossId id : book.lossesOf(batch.id))
        if (auto broken = checkThing(book, book.get<Loss>(id))) return broken;
    return std::nullopt;
}

Outcome checkThing(const HouseBook& book, const Stay& stay) {
    const Batch& batch = book.get<Batch>(stay.batch);
    if (stay.to <= stay.from)
        return Refusal{batch.code, phrase("a stay that begins on %1 can't end on %2", stay.from, stay.to)};
    if (stay.from < batch.strikeDay)
        return Refusal{batch.code,
                       phrase("it can't stand there on %1: it is struck on %2", stay.from, batch.strikeDay)};
    if (stay.places.empty()) return Refusal{batch.code, phrase("a stay without a container")};
    if (stay.weanedOn && batch.state == BatchState::Planned)
        return Refusal{batch.code, phrase("it is not struck yet, so it can't be weaned")};
    if (stay.weanedOn && stay.stage == Stage::Rooting)
        return Refusal{batch.code,
                       phrase("what was weaned on %1 can't root from %2 on", *stay.weanedOn, stay.from)};
    if (auto broken = checkPlaces(book, stay, batch, book.get<Zone>(stay.zone))) return broken;
    for (const StayId id : book.staysOf(stay.batch)) {
        const Stay& other = book.get<Stay>(id);
        if (id == stay.id || !meet(stay, other)) continue;
        for (const Place& place : stay.places)
            for (const Place& taken : other.places)
                if (place.container == taken.container)
                    return Refusal{
                        containerName(batch, place.container),
                        phrase("it would be in two places on %1", std::max(stay.from, other.from))};
    }
    for (const StayId id : book.staysMeeting(stay.zone, stay.from, stay.to)) {
        if (id == stay.id) continue;
        const Stay& other = book.get<Stay>(id);
        for (const Place& place : stay.places)
            for (const Place& taken : other.places)
                if (place.slots.overlaps(taken.slots))
                    return Refusal{containerName(batch, place.container),
                                   phrase("its slot in %1 is taken by %2 on %3", zoneTitle(book, stay.zone),
                                          book.get<Batch>(other.batch).code,
                                          std::max(stay.from, other.from))};
    }
    return std::nullopt;
}

Outcome checkThing(const HouseBook& book, const RootCheck& check) {
    if (auto broken = checkOccasion(book, check)) return broken;
    const Batch& batch = book.get<Batch>(check.batch);
    const std::string place = containerName(batch, check.container);
    for (const int count : {check.examined, check.rooted, check.callused, check.alive, check.dead})
        if (count < 0) return Refusal{place, phrase("a count is below 0")};
    if (check.examined < 1) return Refusal{place, phrase("no cutting was examined")};
    const int told = check.rooted + check.callused + check.alive + check.dead;
    if (told != check.examined)
        return Refusal{
            place, phrase("%1 examined, but rooted, callused, alive and dead make %2", check.examined, told)};
    if (check.grade && (*check.grade < 0 || *check.grade > 5))
        return Refusal{place, phrase("grade %1; expected 0 to 5", *check.grade)};
    // What was lost or potted on that same day may have been looked at first.
    const int there = standing(book, batch, check.container, check.day - 1);
    if (check.examined > there)
        return Refusal{place, phrase("%1 examined, but only %2 stand in it", check.examined, there)};
    return std::nullopt;
}

Outcome checkThing(const HouseBook& book, const Potting& potting) {
    if (auto broken = checkOccasion(book, potting)) return broken;
    const Batch& batch = book.get<Batch>(potting.batch);
    if (potting.plants < 0 || potting.lost < 0 || potting.plants + potting.lost < 1)
        return Refusal{containerName(batch, potting.container), phrase("nothing was potted on or lost")};
    return checkStanding(book, batch, potting.container);
}

Outcome checkThing(const HouseBook& book, const Loss& loss) {
    if (auto broken = checkOccasion(book, loss)) return broken;
    const Batch& batch = book.get<Batch>(loss.batch);
    if (loss.cuttings < 1)
        return Refusal{containerName(batch, loss.container), phrase("no cutting was lost")};
    return checkStanding(book, batch, loss.container);
}

Outcome checkDependents(const HouseBook& book, const Loss& loss) {
    for (const RootCheckId id : book.checksOf(loss.batch))
        if (auto broken = checkThing(book, book.get<RootCheck>(id))) return broken;
    return std::nullopt;
}

Outcome checkDependents(const HouseBook& book, const Potting& potting) {
    for (const RootCheckId id : book.checksOf(potting.batch))
        if (auto broken = checkThing(book, book.get<RootCheck>(id))) return broken;
    return std::nullopt;
}

} // namespace warmbench
