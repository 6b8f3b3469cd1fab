#include "core/placing/carried.h"

#include "core/book/container_numbers.h"
#include "core/book/query.h"
#include "core/book/whereabouts.h"
#include "core/rooting/prior/recipe_prior.h"

#include <algorithm>
#include <set>

namespace warmbench::placing {
namespace {

std::optional<double> needFrom(const HouseBook& book, const Batch& batch, Day day,
                               const forecast::BookForecast* forecast) {
    if (const forecast::BatchForecast* known = forecast ? forecast->find(batch.id) : nullptr)
        if (const auto ready = known->readyDay(0.5))
            return std::max(0.0, known->warmth().by(*ready) - known->warmth().by(day));
    const auto law = rooting::rootingNeed(batch.recipe);
    if (!law) return std::nullopt;
    const double all = law->quantile(forecast::readyPart);
    if (day <= batch.strikeDay) return all;
    return std::max(0.0, all - forecast::BatchWarmth(book, batch).by(day));
}

/// The containers of a batch that still hold something on a day.
std::vector<int> standingContainers(const HouseBook& book, const Batch& batch, Day day) {
    std::vector<int> numbers;
    for (const BatchContainer& one : batch.containers)
        if (batch.state == BatchState::Planned || standing(book, batch, one.number, day) > 0)
            numbers.push_back(one.number);
    std::sort(numbers.begin(), numbers.end());
    return numbers;
}

} // namespace

Result<Carried> takeUp(const HouseBook& book, BatchId id, std::vector<int> containers, Day day,
                       const forecast::BookForecast* forecast) {
    const Batch& batch = book.get<Batch>(id);
    Carried carried;
    carried.batch = id;
    carried.day = std::max(day, batch.strikeDay);
    carried.struck = batch.state != BatchState::Planned;
    const std::vector<int> all = standingContainers(book, batch, carried.day);
    if (batch.state == BatchState::Ended || all.empty())
        return Refusal{batch.code, phrase("nothing stands in it any more")};
    std::sort(containers.begin(), containers.end());
    containers.erase(std::unique(containers.begin(), containers.end()), containers.end());
    if (containers.empty()) containers = all;
    std::vector<int> strange;
    std::set_difference(containers.begin(), containers.end(), all.begin(), all.end(),
                        std::back_inserter(strange));
    if (!strange.empty())
        return Refusal{batch.code, phrase("nothing stands in container %1; it has %2",
                                          containerNumbers(strange), containerNumbers(all))};
    carried.whole = containers == all;
    carried.containers = std::move(containers);
    const ContainerType& type = book.get<ContainerType>(batch.containerType);
    carried.footprint = type.footprint;
    carried.turnable = type.turnable && type.footprint.height != type.footprint.width;
    std::set<Stage> stages;
    for (const int container : carried.containers) {
        const Stay* stay = stayOf(book, id, container, carried.day);
        if (!stay) {
            carried.placed = false;
            continue;
        }
        stages.insert(stay->stage);
        carried.end = carried.end ? std::max(*carried.end, stay->to) : stay->to;
    }
    if (stages.size() > 1)
        return Refusal{
            batch.code,
            phrase("some of these containers root and others are weaned; take up those of one stage")};
    if (!stages.empty()) {
        carried.stage = *stages.begin();
    } else {
        for (const Stay* stay : staysInOrder(book, id))
            if (stay->from < carried.day) carried.stage = stay->stage;
    }
    if (carried.stage == Stage::Rooting) carried.need = needFrom(book, batch, carried.day, forecast);
    return carried;
}

} // namespace warmbench::placing
