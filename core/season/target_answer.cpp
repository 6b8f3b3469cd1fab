#include "core/season/target_answer.h"

#include "core/book/query.h"
#include "core/rooting/strike_count.h"
#include "core/season/container_choice.h"
#include "core/season/stock_yield.h"

#include <algorithm>
#include <cmath>

namespace warmbench::season {
namespace {

/// Whether a zone can be brought to a root zone that a recipe takes, on a day.
bool canRootIn(const HouseBook& book, const Zone& zone, const Recipe& recipe, Day day) {
    const std::vector<Cover>& covers = recipe.covers.value;
    if (std::find(covers.begin(), covers.end(), zone.cover) == covers.end()) return false;
    const Celsius floor = onDay(houseOf(book, zone).unheatedRootZone, day);
    const auto suits = [&](Celsius warmth) {
        return warmth >= recipe.rootZoneLow.value && warmth <= recipe.rootZoneHigh.value;
    };
    if (suits(floor)) return true;
    return zone.mat && std::any_of(zone.mat->setPoints.begin(), zone.mat->setPoints.end(),
                                   [&](Celsius point) { return suits(std::max(point, floor)); });
}

void addStocks(TargetAnswer& answer, const HouseBook& book, TaxonId taxon) {
    const int days = answer.window.last - answer.window.first + 1;
    std::int64_t all = 0;
    for (const auto& [id, stock] : book.all<Stock>()) {
        if (stock.taxon != taxon || !yields(stock, answer.recipe.wood)) continue;
        const auto steps = stockSteps(book, stock, answer.recipe.wood, answer.window.first, days);
        if (steps.empty()) continue;
        answer.stocks.push_back({id, steps.back().total});
        all += steps.back().total;
    }
    std::stable_sort(answer.stocks.begin(), answer.stocks.end(),
                     [](const StockOffer& a, const StockOffer& b) { return a.cuttings > b.cuttings; });
    const Phrase wood = woodNames[static_cast<std::size_t>(answer.recipe.wood)];
    if (answer.stocks.empty())
        answer.inTheWay.push_back(phrase("no stock gives %1 cuttings of it then", wood));
    else if (all < answer.cuttings)
        answer.inTheWay.push_back(phrase(all == 1 ? pattern("its stock gives %1 %2 cutting of %3")
                                                  : pattern("its stock gives %1 %2 cuttings of %3"),
                                         all, wood, answer.cuttings));
}

void addZones(TargetAnswer& answer, const HouseBook& book) {
    for (const auto& [id, zone] : book.all<Zone>()) {
        if (!canRootIn(book, zone, answer.recipe, answer.window.first)) continue;
        answer.zones.push_back(id);
        answer.freeSlots += zone.usableSlots() - slotsTaken(book, id, answer.window.first);
    }
    if (answer.zones.empty())
        answer.inTheWay.push_back(phrase("no zone has a cover and a heat that suit it"));
    else if (answer.freeSlots < answer.slots)
        answer.inTheWay.push_back(phrase(answer.freeSlots == 1
                                             ? pattern("zones that suit it have %1 slot free on %2")
                                             : pattern("zones that suit it have %1 slots free on %2"),
                                         answer.freeSlots, answer.window.first));
}

void addHands(TargetAnswer& answer, const HouseBook& book) {
    std::int64_t hands = 0;
    for (Day day = answer.window.first; day <= answer.window.last; day = day + 1) {
        std::int64_t left = book.nursery().strikesByWeekday[static_cast<std::size_t>(day.weekday())];
        for (const HandDayId id : book.withKey<HandDay>(day)) left = book.get<HandDay>(id).cuttings;
        for (const BatchId id : book.batchesStruckOn(day)) left -= book.get<Batch>(id).cuttings();
        hands += std::max<std::int64_t>(0, left);
    }
    if (hands < answer.cuttings)
        answer.inTheWay.push_back(phrase(hands == 1 ? pattern("hands are left for %1 cutting in those days")
                                                    : pattern("hands are left for %1 cuttings in those days"),
                                         hands));
}

/// Where more than twice as many are struck as would do on average, it is doubt that asks for them.
constexpr double muchDoubt = 2;
constexpr double lessSure = 0.7;

Phrase doubtOf(const Way& way, int plants) {
    if (static_cast<double>(way.cuttings) * way.meanTake() <= muchDoubt * plants) return {};
    const IntRange& take = way.recipe.takePercent.value;
    const auto fewer = rooting::strikeCount(plants, lessSure, way.take);
    if (!fewer || fewer->strike >= way.cuttings)
        return phrase("%1 cuttings for %2 plants, as the recipe's take may be anything from %3 to %4 %: "
                      "checks of your own, taken over into a recipe in Results, would ask for fewer",
                      way.cuttings, plants, take.low, take.high);
    return phrase("%1 cuttings for %2 plants, as the recipe's take may be anything from %3 to %4 %: at a "
                  "sureness of %5 % they would be %6, and checks of your own, taken over into a recipe in "
                  "Results, would ask for fewer as well",
                  way.cuttings, plants, take.low, take.high, std::lround(100 * lessSure), fewer->strike);
}

} // namespace

std::optional<TargetAnswer> answerFor(const HouseBook& book, const TargetNeed& need) {
    if (!need.way) return std::nullopt;
    const Way& way = *need.way;
    TargetAnswer answer;
    answer.recipe = way.recipe;
    answer.window = way.window;
    answer.cuttings = way.cuttings;
    answer.openDays = way.recipe.weanDays.value + way.recipe.growOnDays.value;
    answer.rootingDays = way.daysToReady - answer.openDays;
    if (const ContainerType* type = containerFor(book, way.recipe)) {
        const int each = std::max(1, cuttingsIn(*type, way.recipe));
        answer.containerType = type->id;
        answer.containers = static_cast<int>((way.cuttings + each - 1) / each);
        answer.slots = answer.containers * type->footprint.height * type->footprint.width;
    } else {
        answer.inTheWay.push_back(phrase("the book has no container to strike in"));
    }
    addStocks(answer, book, book.get<Target>(need.target).taxon);
    addZones(answer, book);
    addHands(answer, book);
    answer.doubt = doubtOf(way, need.missing);
    if (way.late) answer.inTheWay.push_back(phrase("even struck at once it is late"));
    return answer;
}

} // namespace warmbench::season
