#include "core/season/heat_choice.h"

#include "core/book/query.h"
#include "core/forecast/batch_warmth.h"
#include "core/rooting/prior/recipe_prior.h"
#include "core/season/month_problem.h"

#include <algorithm>

namespace warmbench::season {
namespace {

constexpr int longest = 366;

/// Nothing where the mat's power does not hold the set-point on some day.
std::optional<HeatChoice> choiceAt(const HouseBook& book, const Zone& zone, const Recipe& recipe, Day from,
                                   std::optional<Celsius> setPoint, double degreeDays) {
    const House& house = houseOf(book, zone);
    const climate::Thresholds thresholds = forecast::thresholdsOf(recipe);
    HeatChoice choice{setPoint, {}, {}, true};
    double passed = 0;
    if (degreeDays <= 0) choice.days = 0;
    for (int i = 0; i < longest && !choice.days; ++i) {
        const Day day = from + i;
        Celsius rootZone = onDay(house.unheatedRootZone, day);
        if (setPoint) {
            const auto cost = matCostPerDay(book, zone, *setPoint, onDay(house.air, day));
            if (!cost) return std::nullopt;
            choice.cost += *cost;
            rootZone = std::max(rootZone, *setPoint);
        }
        choice.suits =
            choice.suits && rootZone >= recipe.rootZoneLow.value && rootZone <= recipe.rootZoneHigh.value;
        passed += climate::steadyDegreeDays(rootZone.units(), 24, thresholds);
        if (passed >= degreeDays) choice.days = i + 1;
    }
    return choice;
}

std::vector<HeatChoice> choicesFrom(const HouseBook& book, const Zone& zone, const Recipe& recipe, Day from,
                                    double passed) {
    const auto need = rooting::rootingNeed(recipe);
    const Mat* mat = zone.matOn(from);
    if (!mat || !need) return {};
    std::vector<std::optional<Celsius>> ways{std::nullopt};
    for (const Celsius setPoint : mat->setPoints) ways.emplace_back(setPoint);
    std::vector<HeatChoice> choices;
    for (const auto& way : ways)
        if (auto choice = choiceAt(book, zone, recipe, from, way, need->quantile(0.9) - passed))
            choices.push_back(*choice);
    return choices;
}

} // namespace

std::vector<HeatChoice> heatChoices(const HouseBook& book, const Zone& zone, const Recipe& recipe,
                                    Day strikeDay) {
    return choicesFrom(book, zone, recipe, strikeDay, 0);
}

std::vector<HeatChoice> heatChoices(const HouseBook& book, const Zone& zone, const Batch& batch, Day day) {
    const Day from = std::max(day, batch.strikeDay);
    return choicesFrom(book, zone, batch.recipe, from, forecast::BatchWarmth(book, batch).by(from));
}

} // namespace warmbench::season
