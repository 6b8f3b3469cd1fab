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

/// Why a batch that the plan weans is to be weaned.
Phrase whyByPlan(const HouseBook& book, const forecast::BatchOutlook& outlook, Day since, Day day) {
    const CheckSum seen = latestChecks(book, outlook.batch, day);
    if (seen.rooted == 0)
        return since == day
                   ? phrase("the plan weans it today, but no root of it was seen yet; look at it first")
                   : phrase("the plan weans it since %1, but no root of it was seen yet; look at it first",
                            since);
    const auto percent = std::lround(100 * outlook.rooted.expected);
    if (since == day)
        return phrase("the plan weans it today; about %1 % are rooted, %2 of %3 in the last checks", percent,
                      seen.rooted, seen.examined);
    return phrase("the plan weans it since %1, but nobody has yet; about %2 % are rooted, %3 of %4 in the "
                  "last checks",
                  since, percent, seen.rooted, seen.examined);
}

/// Of a batch that the plan's day has come to wean: nothing where it was weaned, or its place was given up.
std::optional<Due> weaningByPlan(const HouseBook& book, const forecast::BatchOutlook& outlook, Day day) {
    const auto since = weanedByPlanOnly(book, outlook.batch, day);
    if (!since) return std::nullopt;
    return Due{outlook.batch, Task::Wean, *since, static_cast<int>(std::lround(outlook.expected)),
               whyByPlan(book, outlook, *since, day)};
}

std::optional<Due> pottingDue(const HouseBook& book, const forecast::BatchOutlook& outlook, Day day) {
    const Batch& batch = book.get<Batch>(outlook.batch);
    const Stay* first = nullptr; // in which it no longer roots
    std::optional<Day> end;
    for (const Stay* stay : staysInOrder(book, batch.id)) {
        if (stay->stage != Stage::Rooting && !first) first = stay;
        end = end ? std::max(*end, stay->to) : stay->to;
    }
    if (!first || !end) return std::nullopt;
    const Day byRecipe = first->from + (batch.recipe.weanDays.value + batch.recipe.growOnDays.value);
    const Day since = std::min(byRecipe, *end);
    if (since > day) return std::nullopt;
    Due due{batch.id, Task::PotOn, since, static_cast<int>(std::lround(outlook.expected)), {}};
    if (outlook.rooting)
        due.why = phrase("its place is given up on %1, but nobody weaned it", *end);
    else if (byRecipe > *end)
        due.why = phrase("its place is given up on %1", *end);
    else
        due.why = phrase(first->weanedOn ? pattern("weaned on %1 and grown on as its recipe says")
                                         : pattern("grown on from %1 as its recipe says"),
                         first->weanedOn.value_or(first->from));
    return due;
}

} // namespace

std::vector<Due> dueOn(const HouseBook& book, const forecast::BookForecast& forecast) {
    std::vector<Due> found;
    for (const auto& [id, outlook] : forecast.batches()) {
        auto due = weaningByPlan(book, outlook, forecast.day());
        if (!due && outlook.rooting) due = weaningDue(book, outlook, forecast.day());
        if (!due) due = pottingDue(book, outlook, forecast.day());
        if (due) found.push_back(*due);
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Due& a, const Due& b) { return a.since < b.since; });
    return found;
}

} // namespace warmbench::round
