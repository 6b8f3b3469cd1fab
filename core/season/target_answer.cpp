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
    const Mat* mat = zone.matOn(day);
    return mat && std::any_of(mat->setPoints.begin(), mat->setPoints.end(),
                              [&](Celsius point) { return suits(std::max(point, floor)); });
}

void addStocks(TargetAnswer& answer, const HouseBook& book, TaxonId taxon) {
    const int days = answer.window.last - answer.window.first + 1;
    std::int64_t all = 0;
    bool any = false;
    bool anyOfWood = false;
    bool taken = false; // a flush of those days is, by other batches
    for (const auto& [id, stock] : book.all<Stock>()) {
        if (stock.taxon != taxon) continue;
        any = true;
        if (!yields(stock, answer.recipe.wood)) continue;
        anyOfWood = true;
        const auto steps = stockSteps(book, stock, answer.recipe.wood, answer.window.first, days);
        if (steps.empty()) {
            taken = taken || fullYield(book, stock, answer.recipe.wood, answer.window.first, days) > 0;
            continue;
        }
        answer.stocks.push_back({id, steps.back().total});
        all += steps.back().total;
    }
    std::stable_sort(answer.stocks.begin(), answer.stocks.end(),
                     [](const StockOffer& a, const StockOffer& b) { return a.cuttings > b.cuttings; });
    const Phrase wood = woodNames[static_cast<std::size_t>(answer.recipe.wood)];
    const bool one = answer.cuttings == 1;
    if (!any)
        answer.inTheWay.push_back(
            phrase(one ? pattern("the book has no stock of it, which would have to give %1 %2 cutting")
                       : pattern("the book has no stock of it, which would have to give %1 %2 cuttings"),
                   answer.cuttings, wood));
    else if (!anyOfWood)
        answer.inTheWay.push_back(
            phrase(one ? pattern("its stock gives no %2 cuttings at all, and %1 is needed")
                       : pattern("its stock gives no %2 cuttings at all, and %1 are needed"),
                   answer.cuttings, wood));
    else if (answer.stocks.empty() && taken)
        answer.inTheWay.push_back(phrase(
            one ? pattern("other batches take all %2 cuttings that its stock gives in those days, and %1 "
                          "is needed")
                : pattern("other batches take all %2 cuttings that its stock gives in those days, and %1 "
                          "are needed"),
            answer.cuttings, wood));
    else if (answer.stocks.empty())
        answer.inTheWay.push_back(
            phrase(one ? pattern("its stock gives no %2 cuttings in those days, and %1 is needed")
                       : pattern("its stock gives no %2 cuttings in those days, and %1 are needed"),
                   answer.cuttings, wood));
    else if (all < answer.cuttings)
        answer.inTheWay.push_back(phrase(all == 1 ? pattern("its stock gives %1 %2 cutting of %3")
                                                  : pattern("its stock gives %1 %2 cuttings of %3"),
                                         all, wood, answer.cuttings));
}

bool holds(const Zone& zone, const ContainerType& type) {
    const auto [height, width] = std::pair(type.footprint.height, type.footprint.width);
    return (height <= zone.rows && width <= zone.cols) ||
           (type.turnable && width <= zone.rows && height <= zone.cols);
}

void addZones(TargetAnswer& answer, const HouseBook& book) {
    const auto& all = book.all<Zone>();
    bool suits = false;
    for (const auto& [id, zone] : all) {
        if (!canRootIn(book, zone, answer.recipe, answer.window.first)) continue;
        suits = true;
        if (answer.containerType && !holds(zone, book.get<ContainerType>(*answer.containerType))) continue;
        answer.zones.push_back(id);
        answer.freeSlots += zone.usableSlots() - slotsTaken(book, id, answer.window.first);
    }
    if (all.empty())
        answer.inTheWay.push_back(phrase("no house has a zone to root them in"));
    else if (!suits)
        answer.inTheWay.push_back(phrase("no zone has a cover and a heat that suit it"));
    else if (answer.zones.empty())
        answer.inTheWay.push_back(phrase("%1 is too large for every zone that suits it",
                                         book.get<ContainerType>(*answer.containerType).name));
    else if (answer.freeSlots < answer.slots)
        answer.inTheWay.push_back(phrase(answer.freeSlots == 1
                                             ? pattern("zones that suit it have %1 slot free on %2")
                                             : pattern("zones that suit it have %1 slots free on %2"),
                                         answer.freeSlots, answer.window.first));
    const auto open = [](const auto& entry) { return entry.second.cover == Cover::Open; };
    if (!all.empty() && answer.openDays > 0 && std::none_of(all.begin(), all.end(), open))
        answer.inTheWay.push_back(phrase("no zone is without a cover, to wean and grow on in"));
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
    if (!need.anyWay()) return std::nullopt;
    const Way& way = *need.anyWay();
    const Target& target = book.get<Target>(need.target);
    TargetAnswer answer;
    answer.recipe = way.recipe;
    answer.window = way.whole;
    answer.ahead = !need.way;
    answer.cuttings = way.cuttings;
    answer.openDays = way.recipe.weanDays.value + way.recipe.growOnDays.value;
    answer.rootingDays = way.daysToReady - answer.openDays;
    answer.ready = way.whole.first + way.daysToReady;
    answer.lateDays = std::max(0, answer.ready - target.due);
    if (answer.lateDays > 0)
        answer.inTheWay.push_back(phrase(
            answer.lateDays == 1 ? pattern("even struck on %1 they are potted on by %2 only, 1 day late")
                                 : pattern("even struck on %1 they are potted on by %2 only, %3 days "
                                           "late"),
            answer.window.first, answer.ready, answer.lateDays));
    if (const ContainerType* type = containerFor(book, way.recipe)) {
        const int each = std::max(1, cuttingsIn(*type, way.recipe));
        answer.containerType = type->id;
        answer.containers = static_cast<int>((way.cuttings + each - 1) / each);
        answer.slots = answer.containers * type->footprint.height * type->footprint.width;
    } else {
        answer.inTheWay.push_back(phrase("the book has no container to strike in"));
    }
    addStocks(answer, book, target.taxon);
    addZones(answer, book);
    addHands(answer, book);
    answer.doubt = doubtOf(way, need.missing);
    return answer;
}

} // namespace warmbench::season
