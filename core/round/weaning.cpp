#include "core/round/weaning.h"

#include "core/book/query.h"
#include "core/book/weaned.h"

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
        one = Stay{{}, batch.id, Stage::Weaning, stay->zone, day, day + days, std::move(one.places), day};
        std::copy_if(stay->places.begin(), stay->places.end(), std::back_inserter(one.places),
                     [number = container](const Place& place) { return place.container == number; });
    }
    for (auto& [rootingStay, stay] : made) commands.push_back({AddStay{std::move(stay)}});
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

/// Weans on `day` what the plan weaned then or before: until then its containers rooted where they were.
void weanLate(std::vector<Command>& commands, const HouseBook& book, const std::vector<const Stay*>& stays,
              Day day) {
    for (const Stay* stay : stays) {
        Stay rooted = *stay;
        rooted.id = {};
        rooted.stage = Stage::Rooting;
        rooted.to = std::min(stay->to, day);
        if (stay->to <= day) {
            commands.push_back({RemoveStay{stay->id}});
        } else {
            if (stay->from < day)
                commands.push_back(
                    {MoveStay{stay->id, stay->zone, day, endOfLate(book, *stay, day), stay->places}});
            commands.push_back({WeanStay{stay->id, day}});
        }
        if (stay->from < day) commands.push_back({AddStay{std::move(rooted)}});
    }
}

/// Of stays by the plan alone those of a batch whose place has not ended; nothing where it has.
std::vector<const Stay*> stillStanding(std::vector<const Stay*> byPlan, Day day) {
    const bool stands =
        std::any_of(byPlan.begin(), byPlan.end(), [&](const Stay* stay) { return stay->to > day; });
    return stands ? byPlan : std::vector<const Stay*>{};
}

/// Why nothing of a batch can be weaned on a day.
Refusal notWeaned(const std::string& code, const Stay* weaned, const std::vector<const Stay*>& byPlan) {
    if (!byPlan.empty())
        return {code,
                phrase("its place was given up on %1; give it one first, or pot it on", byPlan.back()->to)};
    if (weaned) return {code, phrase("it was weaned on %1", weaned->weanedOn.value_or(weaned->from))};
    return {code, phrase("found no place for it, expected one where it roots")};
}

} // namespace

std::optional<Day> weanedByPlanOnly(const HouseBook& book, BatchId id, Day day) {
    const std::vector<const Stay*> stays = stillStanding(weanedByPlan(book, id, day), day);
    return stays.empty() ? std::nullopt : std::optional(stays.front()->from);
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
    const std::vector<const Stay*> byPlan = weanedByPlan(book, id, day);
    const std::vector<const Stay*> late = stillStanding(byPlan, day);
    if (found.last.empty() && late.empty()) return notWeaned(batch.code, found.weaned, byPlan);
    Group group{phrase("Wean %1", batch.code).text(), {}};
    endRooting(group.commands, stays, found, day);
    for (const Stay* stay : stays) {
        if (stay->stage == Stage::Rooting || stay->from <= day) continue;
        bool isFirst = false;
        for (const Place& place : stay->places) isFirst = found.last.erase(place.container) > 0 || isFirst;
        if (!isFirst) continue;
        group.commands.push_back(begunOn(stays, *stay, day));
        group.commands.push_back({WeanStay{stay->id, day}});
    }
    weanInPlace(group.commands, batch, found.last, day);
    weanLate(group.commands, book, late, day);
    return Command{std::move(group)};
}

} // namespace warmbench::round
