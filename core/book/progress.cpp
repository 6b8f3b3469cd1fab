#include "core/book/progress.h"

#include "core/book/query.h"
#include "core/book/weaned.h"
#include "core/book/whereabouts.h"

#include <algorithm>

namespace warmbench {
namespace {

/// The latest check of each container up to a day, in order of container.
std::map<int, const RootCheck*> latestByContainer(const HouseBook& book, BatchId batch, Day day) {
    std::map<int, const RootCheck*> latest;
    for (const RootCheckId id : book.checksOf(batch)) {
        const RootCheck& check = book.get<RootCheck>(id);
        if (check.day > day) continue;
        const RootCheck*& known = latest[check.container];
        if (!known || known->day <= check.day) known = &check;
    }
    return latest;
}

/// The day from which the containers of a stay have grown on without a break, in other places before it too.
Day growingOnSince(const HouseBook& book, const Stay& stay) {
    const int container = stay.places.front().container;
    const Stay* first = &stay;
    while (true) {
        const Stay* before = stayOf(book, stay.batch, container, first->from - 1);
        if (!before || before->stage != Stage::GrowingOn) return first->from;
        first = before;
    }
}

/// Whether the containers of a stay no longer root in it by the plan's day alone.
bool onlyPlans(const HouseBook& book, const Stay& stay, Day day) {
    if (stay.weanedOn) return false;
    const auto stays = weanedByPlan(book, stay.batch, day);
    return std::find(stays.begin(), stays.end(), &stay) != stays.end();
}

} // namespace

const RootCheck* latestCheck(const HouseBook& book, BatchId batch, int container, Day day) {
    const auto latest = latestByContainer(book, batch, day);
    const auto found = latest.find(container);
    return found == latest.end() ? nullptr : found->second;
}

CheckSum latestChecks(const HouseBook& book, BatchId batch, Day day) {
    CheckSum sum;
    if (book.checksOf(batch).empty()) return sum;
    for (const auto& [container, check] : latestByContainer(book, batch, day)) {
        sum.examined += check->examined;
        sum.rooted += check->rooted;
        sum.callused += check->callused;
        sum.alive += check->alive;
        sum.dead += check->dead;
        sum.last = sum.last ? std::max(*sum.last, check->day) : check->day;
    }
    return sum;
}

Progress progressOn(const HouseBook& book, const Stay& stay, Day day, std::optional<Day> today) {
    const Batch& batch = book.get<Batch>(stay.batch);
    if (batch.state == BatchState::Planned) return Progress::Planned;
    const bool roots = stay.stage == Stage::Rooting || (today && day <= *today && onlyPlans(book, stay, day));
    if (!roots && stay.stage == Stage::Weaning) return Progress::Weaning;
    if (!roots)
        return day - growingOnSince(book, stay) >= batch.recipe.growOnDays.value ? Progress::Ready
                                                                                 : Progress::Weaning;
    const CheckSum found = latestChecks(book, batch.id, day);
    if (found.examined == 0) return Progress::Struck;
    if (2 * found.rooted >= found.examined) return Progress::Rooted;
    if (2 * (found.rooted + found.callused) >= found.examined) return Progress::Callused;
    return Progress::Struck;
}

std::vector<Trouble> troublesOn(const HouseBook& book, const Stay& stay, Day day) {
    std::vector<Trouble> troubles;
    const Batch& batch = book.get<Batch>(stay.batch);
    if (stay.stage == Stage::Rooting) {
        const Zone& zone = book.get<Zone>(stay.zone);
        const Recipe& recipe = batch.recipe;
        const Celsius rootZone = expectedRootZone(book, zone, day);
        if (rootZone < recipe.rootZoneLow.value)
            troubles.push_back({TroubleKind::TooCold, rootZone, recipe.rootZoneLow.value, 0, 0});
        if (rootZone > recipe.rootZoneHigh.value)
            troubles.push_back({TroubleKind::TooWarm, rootZone, recipe.rootZoneHigh.value, 0, 0});
        const auto& covers = recipe.covers.value;
        if (!covers.empty() && std::find(covers.begin(), covers.end(), zone.cover) == covers.end())
            troubles.push_back({TroubleKind::WrongCover, {}, {}, 0, 0});
    }
    const CheckSum found = latestChecks(book, batch.id, day);
    if (found.dead > 0 && 4 * found.dead >= found.examined)
        troubles.push_back({TroubleKind::Dying, {}, {}, found.dead, found.examined});
    return troubles;
}

} // namespace warmbench
