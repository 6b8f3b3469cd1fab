#include "core/round/weaning.h"

#include "core/book/progress.h"
#include "core/book/query.h"
#include "core/book/whereabouts.h"

#include <algorithm>
#include <map>
#include <set>

namespace warmbench::round {
namespace {

bool holds(const Stay& stay, int container) {
    return std::any_of(stay.places.begin(), stay.places.end(),
                       [&](const Place& place) { return place.container == container; });
}

bool shareContainers(const Stay& one, const Stay& other) {
    return std::any_of(one.places.begin(), one.places.end(),
                       [&](const Place& place) { return holds(other, place.container); });
}

/// A stay from `day` on. Where another of its containers follows at its end it reaches up to that, else it
/// is as long as it was.
Command begunOn(const std::vector<const Stay*>& stays, const Stay& stay, Day day) {
    const bool followed = std::any_of(stays.begin(), stays.end(), [&](const Stay* other) {
        return other->from == stay.to && shareContainers(*other, stay);
    });
    const Day to = followed ? stay.to : day + (stay.to - stay.from);
    return {MoveStay{stay.id, stay.zone, day, to, stay.places}};
}

/// Where each container stands on a day that it is to be weaned on, those weaned before left out.
struct Rooting {
    std::map<int, const Stay*> last; ///< by container, the last stay in which it roots
    std::set<int> later;             ///< containers that root from that day on or after it only
    const Stay* weaned = nullptr;    ///< the last stay of a container that is weaned already
};

Rooting rootingOn(const std::vector<const Stay*>& stays, Day day) {
    Rooting found;
    std::set<int> weaned;
    for (const Stay* stay : stays) {
        if (stay->stage == Stage::Rooting || stay->from > day) continue;
        found.weaned = stay;
        for (const Place& place : stay->places) weaned.insert(place.container);
    }
    for (const Stay* stay : stays) {
        if (stay->stage != Stage::Rooting) continue;
        for (const Place& place : stay->places) {
            if (weaned.contains(place.container)) continue;
            if (stay->from < day)
                found.last[place.container] = stay;
            else if (!found.last.contains(place.container))
                found.later.insert(place.container);
        }
    }
    return found;
}

/// Ends rooting on `day` for containers that root by then, and takes back what they were to root in later.
void endRooting(std::vector<Command>& commands, const std::vector<const Stay*>& stays, const Rooting& found,
                Day day) {
    for (const Stay* stay : stays) {
        const bool roots = std::any_of(stay->places.begin(), stay->places.end(), [&](const Place& place) {
            return found.last.contains(place.container);
        });
        if (stay->stage != Stage::Rooting || stay->to <= day || !roots) continue;
        if (stay->from < day)
            commands.push_back({MoveStay{stay->id, stay->zone, stay->from, day, stay->places}});
        else
            commands.push_back({RemoveStay{stay->id}});
    }
}

/// Weans containers that have no place to be weaned in where each of them roots.
void weanInPlace(std::vector<Command>& commands, const Batch& batch,
                 const std::map<int, const Stay*>& rooting, Day day) {
    const int days = std::max(1, batch.recipe.weanDays.value + batch.recipe.growOnDays.value);
    std::map<StayId, Stay> made;
    for (const auto& [container, stay] : rooting) {
        Stay& one = made[stay->id];
        one = Stay{{}, batch.id, Stage::Weaning, stay->zone, day, day + days, std::move(one.places)};
        std::copy_if(stay->places.begin(), stay->places.end(), std::back_inserter(one.places),
                     [number = container](const Place& place) { return place.container == number; });
    }
    for (auto& [rootingStay, stay] : made) commands.push_back({AddStay{std::move(stay)}});
}

/// Whether a stay's containers rooted in its slots up to its first day.
bool rootedThere(const HouseBook& book, const Stay& stay) {
    return std::all_of(stay.places.begin(), stay.places.end(), [&](const Place& place) {
        const Stay* before = stayOf(book, stay.batch, place.container, stay.from - 1);
        return before && before->stage == Stage::Rooting && before->zone == stay.zone &&
               std::find(before->places.begin(), before->places.end(), place) != before->places.end();
    });
}

/// Stays in which a batch is weaned by the plan's day alone, as weanedByPlanOnly has it.
std::vector<const Stay*> begunByPlan(const HouseBook& book, BatchId id, Day day) {
    if (latestChecks(book, id, day).rooted > 0 || !book.pottingsOf(id).empty()) return {};
    std::vector<const Stay*> found;
    for (const Stay* stay : staysOn(book, id, day))
        if (stay->stage == Stage::Weaning && stay->from < day && !rootedThere(book, *stay))
            found.push_back(stay);
    return found;
}

/// Whether nothing but the stay itself stands in its slots from its last day to another.
bool freeAfter(const HouseBook& book, const Stay& stay, Day to) {
    const auto meeting = book.staysMeeting(stay.zone, stay.to, to);
    return std::none_of(meeting.begin(), meeting.end(), [&](StayId id) {
        const Stay& other = book.get<Stay>(id);
        return id != stay.id && std::any_of(other.places.begin(), other.places.end(), [&](const Place& one) {
                   return std::any_of(stay.places.begin(), stay.places.end(),
                                      [&](const Place& own) { return own.slots.overlaps(one.slots); });
               });
    });
}

/// The end of a weaning stay that begins on `day` instead of before: it is as long as it was to be where its
/// containers go nowhere else at its end and its slots are free so long, else it ends when it was to.
Day endOfLate(const HouseBook& book, const Stay& stay, Day day) {
    const Day wanted = day + (stay.to - stay.from);
    for (const StayId id : book.staysOf(stay.batch))
        if (const Stay& next = book.get<Stay>(id); next.from >= stay.to && shareContainers(next, stay))
            return stay.to;
    return freeAfter(book, stay, wanted) ? wanted : stay.to;
}

/// Begins weaning on `day` where the plan began it before: until then the containers rooted there.
Command begunLate(const HouseBook& book, const Batch& batch, const std::vector<const Stay*>& stays, Day day) {
    Group group{phrase("Wean %1", batch.code).text(), {}};
    for (const Stay* stay : stays) {
        Stay rooted = *stay;
        rooted.id = {};
        rooted.stage = Stage::Rooting;
        rooted.to = day;
        group.commands.push_back(
            {MoveStay{stay->id, stay->zone, day, endOfLate(book, *stay, day), stay->places}});
        group.commands.push_back({AddStay{std::move(rooted)}});
    }
    return {std::move(group)};
}

} // namespace

std::optional<Day> weanedByPlanOnly(const HouseBook& book, BatchId id, Day day) {
    std::optional<Day> first;
    for (const Stay* stay : begunByPlan(book, id, day)) first = std::min(first.value_or(day), stay->from);
    return first;
}

Result<Command> weanCommand(const HouseBook& book, BatchId id, Day day) {
    const Batch& batch = book.get<Batch>(id);
    const std::vector<const Stay*> stays = staysInOrder(book, id);
    Rooting found = rootingOn(stays, day);
    if (!found.later.empty()) {
        const auto first = std::find_if(stays.begin(), stays.end(), [&](const Stay* stay) {
            return stay->stage == Stage::Rooting && holds(*stay, *found.later.begin());
        });
        return Refusal{batch.code, phrase("it roots from %1 on; expected a day after", (*first)->from)};
    }
    if (found.last.empty() && found.weaned)
        if (const auto late = begunByPlan(book, id, day); !late.empty())
            return begunLate(book, batch, late, day);
    if (found.last.empty() && found.weaned)
        return Refusal{batch.code, phrase("it was weaned on %1", found.weaned->from)};
    if (found.last.empty())
        return Refusal{batch.code, phrase("found no place for it, expected one where it roots")};
    Group group{phrase("Wean %1", batch.code).text(), {}};
    endRooting(group.commands, stays, found, day);
    for (const Stay* stay : stays) {
        if (stay->stage == Stage::Rooting || stay->from <= day) continue;
        bool isFirst = false;
        for (const Place& place : stay->places) isFirst = found.last.erase(place.container) > 0 || isFirst;
        if (isFirst) group.commands.push_back(begunOn(stays, *stay, day));
    }
    weanInPlace(group.commands, batch, found.last, day);
    return Command{std::move(group)};
}

} // namespace warmbench::round
