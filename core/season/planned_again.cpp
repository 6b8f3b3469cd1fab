#include "core/season/planned_again.h"

#include "core/book/command.h"
#include "core/book/query.h"

#include <algorithm>
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

} // namespace

std::vector<BatchId> plannedAgain(const HouseBook& book, const PlanRequest& request) {
    std::vector<BatchId> found;
    if (!request.changeCost) return found;
    for (const auto& [id, batch] : book.all<Batch>()) {
        const int day = batch.strikeDay - request.from;
        if (batch.state == BatchState::Planned && day >= 0 && day < request.days && wayBy(batch.recipe) &&
            movesAsOne(book, batch))
            found.push_back(id);
    }
    return found;
}

std::optional<Way> wayOfPlanned(const HouseBook& book, const Batch& batch, Day due,
                                const PlanRequest& request) {
    auto way = wayBy(batch.recipe);
    if (!way) return std::nullopt;
    way->window = {batch.strikeDay, batch.strikeDay};
    way->cuttings = batch.cuttings();
    const Day end = request.from + (request.days - 1);
    const Nursery& nursery = book.nursery();
    const Season local =
        seasonFor(batch.recipe.season.value, nursery.latitude.units(), nursery.seasonShiftDays);
    for (const StrikeWindow& window : strikeWindows(local, request.from, end))
        if (window.holds(batch.strikeDay))
            way->window = {std::max(window.first, request.from),
                           std::max(batch.strikeDay, std::min({window.last, end, due - way->daysToReady}))};
    way->whole = way->window;
    return way;
}

HouseBook without(HouseBook book, const std::vector<BatchId>& batches) {
    Group group;
    for (const BatchId id : batches) group.commands.push_back(Command{RemoveBatch{id}});
    if (auto change = book.perform(Command{group}); !change)
        throw std::logic_error("a planned batch can't leave a copy of the book: " + change.refusal().text());
    return book;
}

} // namespace warmbench::season
