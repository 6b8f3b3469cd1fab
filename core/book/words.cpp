#include "core/book/command.h"
#include "core/book/query.h"

#include <algorithm>
#include <array>

namespace warmbench {
namespace {

/// The names of kinds (kindName) and woods (woodNames), and what a journal has before a step that was taken
/// back or done again, marked for those who translate.
[[maybe_unused]] constexpr std::array kindWords{pattern("Undo: %1"),
                                                pattern("Redo: %1"),
                                                pattern("nursery"),
                                                pattern("hand day"),
                                                pattern("house"),
                                                pattern("bench"),
                                                pattern("zone"),
                                                pattern("mat run"),
                                                pattern("container type"),
                                                pattern("medium"),
                                                pattern("taxon"),
                                                pattern("recipe"),
                                                pattern("stock"),
                                                pattern("target"),
                                                pattern("batch"),
                                                pattern("stay"),
                                                pattern("root check"),
                                                pattern("potting on"),
                                                pattern("loss"),
                                                pattern("month of readings"),
                                                pattern("houses"),
                                                pattern("benches"),
                                                pattern("zones"),
                                                pattern("container types"),
                                                pattern("media"),
                                                pattern("taxa"),
                                                pattern("recipes"),
                                                pattern("stocks"),
                                                pattern("targets"),
                                                pattern("batches"),
                                                pattern("results"),
                                                pattern("softwood"),
                                                pattern("semi-ripe"),
                                                pattern("hardwood"),
                                                pattern("evergreen hardwood"),
                                                pattern("basal"),
                                                pattern("leaf-bud")};

template <class E>
Phrase titleOf(const E& thing) {
    if constexpr (std::is_same_v<E, HandDay>) {
        return phrase("%1", thing.day);
    } else if constexpr (std::is_same_v<E, Recipe>) {
        const Phrase wood = woodNames[static_cast<std::size_t>(thing.wood)];
        return thing.name.empty() ? wood : phrase("%1 %2", wood, thing.name);
    } else {
        return phrase("%1", thing.name);
    }
}

Phrase codeOf(const HouseBook& book, BatchId id) {
    const Batch* batch = book.find<Batch>(id);
    return batch ? phrase("%1", batch->code) : phrase("a batch");
}

Phrase codeOfStay(const HouseBook& book, StayId id) {
    const Stay* stay = book.find<Stay>(id);
    return stay ? codeOf(book, stay->batch) : phrase("a batch");
}

Phrase zoneOf(const HouseBook& book, ZoneId id) {
    return book.find<Zone>(id) ? phrase("%1", zoneTitle(book, id)) : phrase("a zone");
}

Phrase placeOf(const HouseBook& book, const ReadingPlace& place) {
    if (place.zone) return zoneOf(book, *place.zone);
    const House* house = place.house ? book.find<House>(*place.house) : nullptr;
    return house ? phrase("%1", house->name) : phrase("a place");
}

std::string containerOf(const HouseBook& book, BatchId batch, int container) {
    return containerCode(codeOf(book, batch).text(), container);
}

template <class E>
Phrase say(const HouseBook&, const Put<E>& put) {
    return phrase(put.thing.id.number == 0 ? pattern("Add %1 %2") : pattern("Change %1 %2"),
                  Phrase(kindName<E>.one), titleOf(put.thing));
}
Phrase say(const HouseBook&, const Put<Nursery>&) {
    return phrase("Change the nursery's settings");
}
template <class E>
Phrase say(const HouseBook& book, const Remove<E>& remove) {
    const E* thing = book.find<E>(remove.id);
    if (!thing) return phrase("Remove %1", Phrase(kindName<E>.one));
    return phrase("Remove %1 %2", Phrase(kindName<E>.one), titleOf(*thing));
}
Phrase say(const HouseBook& book, const AddBatch& add) {
    const Taxon* taxon = book.find<Taxon>(add.batch.taxon);
    const Phrase name = taxon ? phrase("%1", taxon->name) : phrase("a taxon");
    const bool one = add.batch.cuttings() == 1;
    const bool planned = add.batch.state == BatchState::Planned;
    return phrase(planned ? (one ? pattern("Plan %1 cutting of %2") : pattern("Plan %1 cuttings of %2"))
                          : (one ? pattern("Strike %1 cutting of %2") : pattern("Strike %1 cuttings of %2")),
                  add.batch.cuttings(), name);
}
Phrase say(const HouseBook& book, const StrikeBatch& strike) {
    return phrase("Strike %1", codeOf(book, strike.batch));
}
Phrase say(const HouseBook& book, const PlanBatch& plan) {
    const Batch* batch = book.find<Batch>(plan.batch);
    if (batch && plan.stays.empty()) return phrase("Take %1 off its planned places", batch->code);
    if (batch && batch->strikeDay != plan.strikeDay)
        return phrase("Plan %1 for %2 instead", batch->code, plan.strikeDay);
    return phrase("Plan other places for %1", codeOf(book, plan.batch));
}
Phrase say(const HouseBook& book, const RemoveBatch& remove) {
    return phrase("Remove the planned batch %1", codeOf(book, remove.batch));
}
Phrase say(const HouseBook& book, const DescribeBatch& one) {
    return phrase("Describe %1", codeOf(book, one.batch));
}
Phrase say(const HouseBook& book, const MoveStay& move) {
    const Stay* stay = book.find<Stay>(move.stay);
    if (stay && stay->zone == move.zone && stay->places == move.places)
        return phrase("Change the days of %1", codeOfStay(book, move.stay));
    return phrase("Move %1 to %2", codeOfStay(book, move.stay), zoneOf(book, move.zone));
}
Phrase say(const HouseBook& book, const AddStay& add) {
    return phrase("Give %1 a place in %2", codeOf(book, add.stay.batch), zoneOf(book, add.stay.zone));
}
Phrase say(const HouseBook& book, const RemoveStay& remove) {
    return phrase("Take %1 off its place", codeOfStay(book, remove.stay));
}
Phrase say(const HouseBook& book, const WeanStay& wean) {
    return phrase("Wean %1", codeOfStay(book, wean.stay));
}
Phrase say(const HouseBook& book, const SetMatRuns& set) {
    return phrase("Set the mat of %1", zoneOf(book, set.zone));
}
Phrase say(const HouseBook& book, const RecordCheck& record) {
    return phrase("Record a root check of %1", containerOf(book, record.check.batch, record.check.container));
}
Phrase say(const HouseBook& book, const RemoveCheck& remove) {
    const RootCheck* check = book.find<RootCheck>(remove.check);
    if (!check) return phrase("Remove a root check");
    return phrase("Remove a root check of %1", containerOf(book, check->batch, check->container));
}
Phrase say(const HouseBook& book, const RecordLoss& record) {
    return phrase("Record a loss in %1", containerOf(book, record.loss.batch, record.loss.container));
}
Phrase say(const HouseBook& book, const Refit& refit) {
    if (const auto* zone = std::get_if<Zone>(&refit.thing))
        return phrase("Refit zone %1", zoneOf(book, zone->id));
    return phrase("Refit bench %1", std::get<Bench>(refit.thing).name);
}
Phrase say(const HouseBook& book, const ClearAway& clear) {
    if (const auto* zone = std::get_if<ZoneId>(&clear.thing))
        return phrase("Take away zone %1", zoneOf(book, *zone));
    const Bench* bench = book.find<Bench>(std::get<BenchId>(clear.thing));
    return bench ? phrase("Take away bench %1", bench->name) : phrase("Take away a bench");
}
Phrase say(const HouseBook& book, const PotOn& potOn) {
    return phrase("Pot on %1", codeOf(book, potOn.batch));
}
Phrase say(const HouseBook& book, const Discard& discard) {
    return phrase(discard.containers.empty() ? pattern("Discard %1") : pattern("Discard containers of %1"),
                  codeOf(book, discard.batch));
}
Phrase say(const HouseBook& book, const KeepReadings& keep) {
    std::size_t most = 0;
    for (const ChannelReadings& one : keep.channels) most = std::max(most, one.readings.size());
    return phrase(most == 1 ? pattern("Keep %1 reading of %2") : pattern("Keep %1 readings of %2"), most,
                  placeOf(book, keep.place));
}
Phrase say(const HouseBook& book, const RemoveReadings& remove) {
    return phrase("Remove readings of %1 from %2 to %3", placeOf(book, remove.place), remove.from,
                  remove.to - 1);
}
Phrase say(const HouseBook& book, const Group& group) {
    if (!group.label.empty()) return group.label;
    return group.commands.empty() ? phrase("Nothing") : words(book, group.commands.front());
}

} // namespace

Phrase words(const HouseBook& book, const Command& command) {
    return std::visit([&](const auto& one) { return say(book, one); }, command.what);
}

} // namespace warmbench
