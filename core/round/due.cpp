#include "core/round/due.h"

#include "core/book/progress.h"
#include "core/book/query.h"
#include "core/round/weaning.h"

#include <algorithm>
#include <cmath>

namespace warmbench::round {
namespace {

constexpr double rootedToWean = 0.7;
constexpr double rootedAtEnd = 0.5;

std::optional<Due> weaningDue(const HouseBook& book, const forecast::BatchOutlook& outlook, Day day) {
    const CheckSum seen = latestChecks(book, outlook.batch, day);
    const double share = outlook.rooted.expected;
    if (seen.rooted == 0) return std::nullopt;
    const bool ended = outlook.assumedReady && *outlook.assumedReady <= day;
    if (share < (ended ? rootedAtEnd : rootedToWean)) return std::nullopt;
    Due due{outlook.batch, Task::Wean, *seen.last, static_cast<int>(std::lround(outlook.expected)), {}};
    if (ended) due.since = std::min(due.since, *outlook.assumedReady);
    due.why =
        phrase(ended ? pattern("about %1 % are rooted, %2 of %3 in the last checks; its rooting time is over")
                     : pattern("about %1 % are rooted, %2 of %3 in the last checks"),
               std::lround(100 * share), seen.rooted, seen.examined);
    return due;
}

/// Of a batch that the plan's day alone moved to its weaning place: nothing where it was weaned.
std::optional<Due> weaningLeft(const HouseBook& book, const forecast::BatchOutlook& outlook, Day day) {
    const auto since = weanedByPlanOnly(book, outlook.batch, day);
    if (!since) return std::nullopt;
    Due due{outlook.batch, Task::Wean, *since, static_cast<int>(std::lround(outlook.expected)), {}};
    due.why = phrase("the plan weans it since %1, but no root of it was seen yet; look at it first", *since);
    return due;
}

std::optional<Due> pottingDue(const HouseBook& book, const forecast::BatchOutlook& outlook, Day day) {
    const Batch& batch = book.get<Batch>(outlook.batch);
    std::optional<Day> weanedFrom;
    std::optional<Day> end;
    for (const StayId id : book.staysOf(batch.id)) {
        const Stay& stay = book.get<Stay>(id);
        if (stay.stage != Stage::Rooting && (!weanedFrom || stay.from < *weanedFrom)) weanedFrom = stay.from;
        if (!end || stay.to > *end) end = stay.to;
    }
    if (!weanedFrom || !end) return std::nullopt;
    const Day byRecipe = *weanedFrom + (batch.recipe.weanDays.value + batch.recipe.growOnDays.value);
    const Day since = std::min(byRecipe, *end);
    if (since > day) return std::nullopt;
    Due due{batch.id, Task::PotOn, since, static_cast<int>(std::lround(outlook.expected)), {}};
    if (*end <= day && weanedByPlanOnly(book, batch.id, *end - 1))
        due.why =
            phrase("its place is given up on %1, but no root of it was seen and nobody weaned it", *end);
    else
        due.why = byRecipe <= *end ? phrase("weaned on %1 and grown on as its recipe says", *weanedFrom)
                                   : phrase("its place is given up on %1", *end);
    return due;
}

} // namespace

std::vector<Due> dueOn(const HouseBook& book, const forecast::BookForecast& forecast) {
    std::vector<Due> found;
    for (const auto& [id, outlook] : forecast.batches()) {
        auto due = outlook.rooting ? weaningDue(book, outlook, forecast.day())
                                   : weaningLeft(book, outlook, forecast.day());
        if (!due && !outlook.rooting) due = pottingDue(book, outlook, forecast.day());
        if (due) found.push_back(*due);
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Due& a, const Due& b) { return a.since < b.since; });
    return found;
}

} // namespace warmbench::round
