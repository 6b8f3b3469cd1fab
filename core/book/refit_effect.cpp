#include "core/book/refit.h"

#include "core/book/query.h"

#include <algorithm>
#include <map>

namespace warmbench {
namespace {

/// Where one container stands on a day: in which zone, on which slots of its bench.
struct Spot {
    ZoneId zone;
    SlotRect onBench;
};

std::optional<Spot> spotOf(const HouseBook& book, BatchId batch, int container, Day day) {
    for (const StayId id : book.staysOf(batch)) {
        const Stay& stay = book.get<Stay>(id);
        if (day < stay.from || day >= stay.to) continue;
        const Zone& zone = book.get<Zone>(stay.zone);
        for (const Place& place : stay.places)
            if (place.container == container)
                return Spot{stay.zone,
                            {place.slots.row + zone.row, place.slots.col + zone.col, place.slots.height,
                             place.slots.width}};
    }
    return std::nullopt;
}

/// Days on which something about a batch's places may change: the ends of its stays before and after.
std::set<Day> turningDays(const HouseBook& before, const HouseBook& after, BatchId batch, Day day) {
    std::set<Day> days{day};
    for (const HouseBook* book : {&before, &after})
        for (const StayId id : book->staysOf(batch)) days.insert(book->get<Stay>(id).from);
    return days;
}

void note(std::vector<RefitEffect::Containers>& list, BatchId batch, int container, Day from) {
    const auto found = std::find_if(list.begin(), list.end(),
                                    [&](const auto& one) { return one.batch == batch && one.from == from; });
    if (found == list.end())
        list.push_back({batch, {container}, from});
    else
        found->containers.push_back(container);
}

void compare(const HouseBook& before, const HouseBook& after, const Batch& batch, Day day,
             const std::set<ZoneId>& moved, RefitEffect& effect) {
    const std::set<Day> days = turningDays(before, after, batch.id, day);
    for (const BatchContainer& one : batch.containers) {
        std::optional<Day> unplaced;
        std::optional<Day> redrawn;
        std::optional<Day> unshown;
        std::optional<Day> uncounted;
        for (const Day turn : days) {
            const auto stood = spotOf(before, batch.id, one.number, turn);
            if (!stood) continue;
            const auto stands = spotOf(after, batch.id, one.number, turn);
            if (!stands && turn >= day && !unplaced) unplaced = turn;
            const bool counts = stayOn(after, batch.id, turn) != nullptr;
            if (!stands && turn < day && counts && !unshown) unshown = turn;
            if (!stands && turn < day && !counts && !uncounted) uncounted = turn;
            if (stands && turn < day && !redrawn && !moved.contains(stood->zone) &&
                stands->onBench != stood->onBench)
                redrawn = turn;
        }
        if (unplaced) note(effect.unplaced, batch.id, one.number, *unplaced);
        if (redrawn) note(effect.redrawn, batch.id, one.number, *redrawn);
        if (unshown) note(effect.unshown, batch.id, one.number, *unshown);
        if (uncounted) note(effect.uncounted, batch.id, one.number, *uncounted);
    }
}

/// `named` are the zones that the command speaks of itself.
Result<RefitEffect> effectOn(const HouseBook& book, const Command& command, Day day,
                             const std::set<ZoneId>& named) {
    HouseBook after = book;
    const auto change = after.perform(command);
    if (!change) return change.refusal();
    RefitEffect effect;
    std::set<BatchId> batches;
    std::set<ZoneId> moved;
    for (const AnyEdit& edit : change->edits) {
        if (const auto* stay = std::get_if<Edit<Stay>>(&edit))
            batches.insert(stay->before ? stay->before->batch : stay->after->batch);
        if (const auto* run = std::get_if<Edit<MatRun>>(&edit)) {
            effect.runs.push_back(*run->before);
            if (run->after) effect.runs.back().from = run->after->to;
        }
        const auto* zone = std::get_if<Edit<Zone>>(&edit);
        if (!zone) continue;
        const bool isNamed = named.contains(zone->id());
        if (!zone->after && !isNamed) effect.gone.push_back(zone->id());
        if (zone->after && !isNamed) effect.cut.push_back(zone->id());
        if (zone->after && zone->before->rows == zone->after->rows && zone->before->cols == zone->after->cols)
            moved.insert(zone->id());
    }
    for (const BatchId batch : batches) compare(book, after, book.get<Batch>(batch), day, moved, effect);
    return effect;
}

} // namespace

Result<RefitEffect> effectOf(const HouseBook& book, const Refit& refit) {
    std::set<ZoneId> named;
    if (const auto* zone = std::get_if<Zone>(&refit.thing)) named.insert(zone->id);
    return effectOn(book, {refit}, refit.day, named);
}

Result<RefitEffect> effectOf(const HouseBook& book, const ClearAway& clear) {
    std::set<ZoneId> named;
    if (const auto* zone = std::get_if<ZoneId>(&clear.thing)) named.insert(*zone);
    return effectOn(book, {clear}, clear.day, named);
}

} // namespace warmbench
