#include "core/book/command.h"
#include "core/book/query.h"

#include <algorithm>

namespace warmbench {
namespace {

template <class E>
std::string titleOf(const E& thing) {
    if constexpr (std::is_same_v<E, HandDay>)
        return thing.day.iso();
    else if constexpr (std::is_same_v<E, Recipe>)
        return std::string(woodNames[static_cast<std::size_t>(thing.wood)]) +
               (thing.name.empty() ? "" : " " + thing.name);
    else
        return thing.name;
}

std::string codeOf(const HouseBook& book, BatchId id) {
    const Batch* batch = book.find<Batch>(id);
    return batch ? batch->code : "a batch";
}

std::string codeOfStay(const HouseBook& book, StayId id) {
    const Stay* stay = book.find<Stay>(id);
    return stay ? codeOf(book, stay->batch) : "a batch";
}

std::string zoneOf(const HouseBook& book, ZoneId id) {
    return book.find<Zone>(id) ? zoneTitle(book, id) : "a zone";
}

std::string placeOf(const HouseBook& book, const ReadingPlace& place) {
    if (place.zone) return zoneOf(book, *place.zone);
    const House* house = place.house ? book.find<House>(*place.house) : nullptr;
    return house ? house->name : "a place";
}

std::string containerOf(const HouseBook& book, BatchId batch, int container) {
    return containerCode(codeOf(book, batch), container);
}

template <class E>
std::string say(const HouseBook&, const Put<E>& put) {
    return (put.thing.id.number == 0 ? "Add " : "Change ") + std::string(kindName<E>.one) + " " +
           titleOf(put.thing);
}
std::string say(const HouseBook&, const Put<Nursery>&) {
    return "Change the nursery's settings";
}
template <class E>
std::string say(const HouseBook& book, const Remove<E>& remove) {
    const E* thing = book.find<E>(remove.id);
    return "Remove " + std::string(kindName<E>.one) + (thing ? " " + titleOf(*thing) : "");
}
std::string say(const HouseBook& book, const AddBatch& add) {
    const Taxon* taxon = book.find<Taxon>(add.batch.taxon);
    return std::string(add.batch.state == BatchState::Planned ? "Plan " : "Strike ") +
           std::to_string(add.batch.cuttings()) + " cuttings of " + (taxon ? taxon->name : "a taxon");
}
std::string say(const HouseBook& book, const StrikeBatch& strike) {
    return "Strike " + codeOf(book, strike.batch);
}
std::string say(const HouseBook& book, const PlanBatch& plan) {
    const Batch* batch = book.find<Batch>(plan.batch);
    if (batch && plan.stays.empty()) return "Take " + batch->code + " off its planned places";
    if (batch && batch->strikeDay != plan.strikeDay)
        return "Plan " + batch->code + " for " + plan.strikeDay.iso() + " instead";
    return "Plan other places for " + codeOf(book, plan.batch);
}
std::string say(const HouseBook& book, const RemoveBatch& remove) {
    return "Remove the planned batch " + codeOf(book, remove.batch);
}
std::string say(const HouseBook& book, const DescribeBatch& one) {
    return "Describe " + codeOf(book, one.batch);
}
std::string say(const HouseBook& book, const MoveStay& move) {
    const Stay* stay = book.find<Stay>(move.stay);
    if (stay && stay->zone == move.zone && stay->places == move.places)
        return "Change the days of " + codeOfStay(book, move.stay);
    return "Move " + codeOfStay(book, move.stay) + " to " + zoneOf(book, move.zone);
}
std::string say(const HouseBook& book, const AddStay& add) {
    return "Give " + codeOf(book, add.stay.batch) + " a place in " + zoneOf(book, add.stay.zone);
}
std::string say(const HouseBook& book, const RemoveStay& remove) {
    return "Take " + codeOfStay(book, remove.stay) + " off its place";
}
std::string say(const HouseBook& book, const SetMatRuns& set) {
    return "Set the mat of " + zoneOf(book, set.zone);
}
std::string say(const HouseBook& book, const RecordCheck& record) {
    return "Record a root check of " + containerOf(book, record.check.batch, record.check.container);
}
std::string say(const HouseBook& book, const RemoveCheck& remove) {
    const RootCheck* check = book.find<RootCheck>(remove.check);
    return "Remove a root check" + (check ? " of " + containerOf(book, check->batch, check->container) : "");
}
std::string say(const HouseBook& book, const RecordLoss& record) {
    return "Record a loss in " + containerOf(book, record.loss.batch, record.loss.container);
}
std::string say(const HouseBook& book, const Refit& refit) {
    if (const auto* zone = std::get_if<Zone>(&refit.thing)) return "Refit zone " + zoneOf(book, zone->id);
    return "Refit bench " + std::get<Bench>(refit.thing).name;
}
std::string say(const HouseBook& book, const ClearAway& clear) {
    if (const auto* zone = std::get_if<ZoneId>(&clear.thing)) return "Take away zone " + zoneOf(book, *zone);
    const Bench* bench = book.find<Bench>(std::get<BenchId>(clear.thing));
    return "Take away " + (bench ? "bench " + bench->name : std::string("a bench"));
}
std::string say(const HouseBook& book, const PotOn& potOn) {
    return "Pot on " + codeOf(book, potOn.batch);
}
std::string say(const HouseBook& book, const Discard& discard) {
    return std::string(discard.containers.empty() ? "Discard " : "Discard containers of ") +
           codeOf(book, discard.batch);
}
std::string say(const HouseBook& book, const KeepReadings& keep) {
    std::size_t most = 0;
    for (const ChannelReadings& one : keep.channels) most = std::max(most, one.readings.size());
    return "Keep " + std::to_string(most) + " readings of " + placeOf(book, keep.place);
}
std::string say(const HouseBook& book, const RemoveReadings& remove) {
    return "Remove readings of " + placeOf(book, remove.place) + " from " + remove.from.iso() + " to " +
           (remove.to - 1).iso();
}
std::string say(const HouseBook& book, const Group& group) {
    if (!group.label.empty()) return group.label;
    return group.commands.empty() ? "Nothing" : words(book, group.commands.front());
}

} // namespace

std::string words(const HouseBook& book, const Command& command) {
    return std::visit([&](const auto& one) { return say(book, one); }, command.what);
}

} // namespace warmbench
