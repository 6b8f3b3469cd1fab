#include "core/season/planned_again.h"

#include "core/book/command.h"
#include "core/book/query.h"

#include <algorithm>
#include <map>
#include <stdexcept>

namespace warmbench::season {
namespace {

/// Each stay holds all containers, and none begins before the one before it ends.
bool movesAsOne(const HouseBook& book, const Batch& batch) {
    const std::vector<const Stay*> stays = staysInOrder(book, batch.id);
    for (std::size_t i = 0; i < stays.size(); ++i)
        if (stays[i]->places.size() != batch.containers.size() ||
            (i > 0 && stays[i]->from < stays[i - 1]->to))
            return false;
    return true;
}

/// Some of its containers have a place for fewer days than others, or none.
bool waitsForPlace(const HouseBook& book, const Batch& batch) {
    std::map<int, Day> ends;
    for (const Stay* stay : staysInOrder(book, batch.id))
        for (const Place& place : stay->places) {
            const auto [found, isNew] = ends.try_emplace(place.container, stay->to);
            if (!isNew) found->second = std::max(found->second, stay->to);
        }
    return ends.size() < batch.containers.size() ||
           std::any_of(ends.begin(), ends.end(),
                       [&](const auto& end) { return end.second != ends.begin()->second; });
}

/// The days on which a batch whose day has slipped by can be struck now.
Result<StrikeWindow> windowOfSlipped(const Batch& batch, const Season& season, int daysToReady, Day due,
                                     const PlanRequest& request) {
    const Day end = request.from + (request.days - 1);
    const Phrase wood = woodNames[static_cast<std::size_t>(batch.recipe.wood)];
    const std::vector<StrikeWindow> windows = strikeWindows(season, request.from, end + daysOfAYear);
    if (windows.empty() || windows.front().first > end)
        return Refusal{
            batch.code,
            windows.empty()
                ? phrase("it was not struck on %1, and its %2 is never right", batch.strikeDay, wood)
                : phrase("it was not struck on %1, and its %2 is right again from %3 on only",
                         batch.strikeDay, wood, windows.front().first)};
    const Day first = std::max(windows.front().first, request.from);
    const Day last = std::min(windows.front().last, end);
    const Day inTime = due - daysToReady;
    if (first <= inTime) return StrikeWindow{first, std::min(last, inTime)};
    if (first - inTime <= mostDaysLate) return StrikeWindow{first, std::min(last, first + 6)};
    return Refusal{batch.code,
                   phrase("it was not struck on %1, and would be ready on %2 now, %3 days after its "
                          "target's date; give the target a later date",
                          batch.strikeDay, first + daysToReady, first - inTime)};
}

} // namespace

std::vector<BatchId> plannedAgain(const HouseBook& book, const PlanRequest& request) {
    std::vector<BatchId> found;
    if (!request.changeCost) return found;
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.state != BatchState::Planned || batch.strikeDay >= request.from + request.days) continue;
        if ((!canStayAsPlanned(book, batch, request.from) || movesAsOne(book, batch)) && wayBy(batch.recipe))
            found.push_back(id);
    }
    return found;
}

bool canStayAsPlanned(const HouseBook& book, const Batch& batch, Day from) {
    return batch.strikeDay >= from && !waitsForPlace(book, batch);
}

Result<Way> wayOfPlanned(const HouseBook& book, const Batch& batch, Day due, const PlanRequest& request) {
    auto way = wayBy(batch.recipe);
    if (!way) throw std::logic_error(batch.code + ": its recipe's figures can't be");
    way->window = {batch.strikeDay, batch.strikeDay};
    way->cuttings = batch.cuttings();
    const Day end = request.from + (request.days - 1);
    const Nursery& nursery = book.nursery();
    const Season local =
        seasonFor(batch.recipe.season.value, nursery.latitude.units(), nursery.seasonShiftDays);
    if (batch.strikeDay < request.from) {
        const auto window = windowOfSlipped(batch, local, way->daysToReady, due, request);
        if (!window) return window.refusal();
        way->window = way->whole = *window;
        return *way;
    }
    for (const StrikeWindow& window : strikeWindows(local, request.from, end))
        if (window.holds(batch.strikeDay))
            way->window = {std::max(window.first, request.from),
                           std::max(batch.strikeDay, std::min({window.last, end, due - way->daysToReady}))};
    way->whole = way->window;
    return *way;
}

HouseBook without(HouseBook book, const std::vector<BatchId>& batches) {
    Group group;
    for (const BatchId id : batches) group.commands.push_back(Command{RemoveBatch{id}});
    if (auto change = book.perform(Command{group}); !change)
        throw std::logic_error("a planned batch can't leave a copy of the book: " + change.refusal().text());
    return book;
}

} // namespace warmbench::season
