#include "core/season/month_problem.h"

#include "core/book/query.h"
#include "core/forecast/mat_heat.h"
#include "core/forecast/stay_ends.h"
#include "core/season/batch_price.h"
#include "core/season/container_choice.h"
#include "core/season/planned_again.h"
#include "core/season/standing_stays.h"
#include "core/season/stock_yield.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace warmbench::season {
namespace {

/// Weaned cuttings stand in the open at these root zones, in tenths: common practice, no source.
constexpr std::int64_t openLow = 30;
constexpr std::int64_t openHigh = 320;

planner::Zone plannerZone(const HouseBook& book, const Zone& zone, Day from, int days) {
    const House& house = houseOf(book, zone);
    const Bench& bench = book.get<Bench>(zone.bench);
    planner::Zone made;
    made.id = house.name + " / " + bench.name + " / " + zone.name;
    made.rows = zone.rows;
    made.cols = zone.cols;
    made.blocked.assign(static_cast<std::size_t>(zone.rows) * static_cast<std::size_t>(zone.cols), 0);
    for (const Slot slot : zone.blocked)
        made.blocked[static_cast<std::size_t>(slot.row) * static_cast<std::size_t>(zone.cols) +
                     static_cast<std::size_t>(slot.col)] = 1;
    made.cover = zone.cover;
    std::int64_t airSum = 0;
    for (int day = 0; day < days; ++day) {
        made.floor.push_back(onDay(house.unheatedRootZone, from + day).parts);
        airSum += onDay(house.air, from + day).parts;
    }
    const Mat* mat = zone.matDuring(from, from + days);
    if (!mat) return made;
    // The format knows one cost a day for each set-point: that in the mean air of the days planned.
    const Celsius air{airSum / days};
    for (const Celsius setPoint : mat->setPoints)
        if (const auto cost = matCostPerDay(book, zone, setPoint, air))
            made.setPoints.push_back({setPoint.parts, cost->parts});
    made.hasMat = !made.setPoints.empty();
    return made;
}

std::vector<std::int64_t> handsByDay(const HouseBook& book, Day from, int days) {
    std::map<Day, int> special;
    for (const auto& [id, day] : book.all<HandDay>()) special[day.day] = day.cuttings;
    std::vector<std::int64_t> hands;
    for (int i = 0; i < days; ++i) {
        const Day day = from + i;
        const auto found = special.find(day);
        std::int64_t left = found != special.end()
                                ? found->second
                                : book.nursery().strikesByWeekday[static_cast<std::size_t>(day.weekday())];
        for (const BatchId id : book.batchesStruckOn(day)) left -= book.get<Batch>(id).cuttings();
        hands.push_back(std::max<std::int64_t>(0, left));
    }
    return hands;
}

/// Days in a zone at the recipe's ideal until the rooting stay is over.
planner::StayRule rootingRule(const Way& way, const Nursery& nursery, int containers) {
    const Recipe& recipe = way.recipe;
    planner::StayRule rule;
    for (const Cover cover : recipe.covers.value)
        rule.covers = static_cast<std::uint8_t>(rule.covers | 1 << static_cast<int>(cover));
    rule.low = recipe.rootZoneLow.value.parts;
    rule.ideal = recipe.rootZoneIdeal.value.parts;
    rule.high = recipe.rootZoneHigh.value.parts;
    rule.offIdeal = nursery.offIdealCost.parts * containers;
    rule.duration.base = recipe.base.value.parts;
    rule.duration.cap = std::max(rule.high, rule.duration.base);
    rule.duration.degreeDays = way.rooting.parts;
    return rule;
}

std::optional<planner::StayRule> openRule(const Recipe& recipe) {
    const int days = std::min(recipe.weanDays.value + recipe.growOnDays.value, planner::longestStay);
    if (days == 0) return std::nullopt;
    planner::StayRule rule;
    rule.covers = 1 << static_cast<int>(Cover::Open);
    rule.low = std::min(openLow, recipe.rootZoneLow.value.parts);
    rule.high = std::max(openHigh, recipe.rootZoneHigh.value.parts);
    rule.ideal = rule.low;
    rule.duration.days = days;
    return rule;
}

/// Where a batch is planned to stand, in the terms of a problem.
std::vector<planner::PlacedStay> placedStays(const HouseBook& book, BatchId batch,
                                             const std::map<ZoneId, int>& zoneIndex, Day from) {
    std::vector<planner::PlacedStay> placed;
    for (const Stay* stay : staysInOrder(book, batch)) {
        planner::PlacedStay one{zoneIndex.at(stay->zone), stay->from - from, stay->to - from, {}};
        for (const Place& place : stay->places) one.slots.push_back(place.slots);
        placed.push_back(std::move(one));
    }
    return placed;
}

/// Builds the batches of the targets on top of the house. `book` is without those that are planned again.
class PartMaker {
public:
    PartMaker(const HouseBook& book, MonthProblem& month) : m_book(book), m_month(month) {}

    /// A batch planned before, to be placed again.
    void makeAgain(const Batch& planned, const PlanRequest& request,
                   std::vector<planner::PlacedStay> previous) {
        const Target* target = planned.target ? &m_book.get<Target>(*planned.target) : nullptr;
        BatchPart part;
        part.id = planned.code;
        part.again = planned.id;
        part.target = planned.target;
        const auto way = wayOfPlanned(m_book, planned, target ? target->due : Day::last(), request);
        if (!way) {
            m_month.shortfalls.push_back(
                {planned.target, planned.id, planned.cuttings(), way.refusal().what});
            return;
        }
        part.way = *way;
        part.stock = planned.stock;
        part.containerType = planned.containerType;
        part.containers = static_cast<int>(planned.containers.size());
        part.cuttings = planned.cuttings();
        const double plants = static_cast<double>(part.cuttings) * part.way.meanTake();
        const Money worth = worthOfPlant(m_book, planned.target);
        addPart(std::move(part),
                static_cast<std::int64_t>(std::llround(static_cast<double>(worth.parts) * plants)));
        if (!previous.empty()) m_month.problem.batches.back().previous = std::move(previous);
        if (planned.stock) m_promised[*planned.stock] += planned.cuttings();
    }

    void make(std::size_t index) {
        const TargetNeed& need = m_month.needs[index];
        const Way& way = *need.way;
        const Target& target = m_book.get<Target>(need.target);
        const ContainerType* type = containerFor(m_book, way.recipe);
        if (!type) return fallShort(need, way.cuttings, phrase("the book has no container to strike in"));
        if (!fitsSomewhere(*type))
            return fallShort(need, way.cuttings, phrase("%1 is too large for every zone", type->name));
        const int each = cuttingsIn(*type, way.recipe);
        const std::int64_t limit = std::max<std::int64_t>(1, containersInOnePart(*type, way.recipe, each));
        std::int64_t left = way.cuttings;
        int letter = 0;
        for (const auto& [stock, has] : stocksFor(target.taxon, way)) {
            std::int64_t take = std::min(left, has);
            m_promised[stock] += take;
            left -= take;
            while (take > 0) {
                const std::int64_t cuttings = std::min(take, limit * each);
                BatchPart part{target.name + "-", {}, need.target, way, stock, type->id, 0, cuttings};
                for (int rest = letter++; rest >= 0; rest = rest / 26 - 1)
                    part.id += static_cast<char>('a' + rest % 26);
                part.containers = static_cast<int>((cuttings + each - 1) / each);
                // The worth of this part's share of the plants that are missing.
                addPart(std::move(part), target.worth.parts * need.missing * cuttings /
                                             std::max<std::int64_t>(1, way.cuttings));
                take -= cuttings;
            }
            if (left == 0) break;
        }
        if (left > 0) fallShort(need, left, shortOfStock(target.taxon, way, left));
    }

private:
    void fallShort(const TargetNeed& need, std::int64_t cuttings, Phrase why) {
        m_month.shortfalls.push_back({need.target, {}, cuttings, std::move(why)});
    }

    [[nodiscard]] bool fitsSomewhere(const ContainerType& type) const {
        const auto fits = [](const planner::Zone& zone, int height, int width) {
            return height <= zone.rows && width <= zone.cols;
        };
        const int height = type.footprint.height;
        const int width = type.footprint.width;
        return std::any_of(
            m_month.problem.zones.begin(), m_month.problem.zones.end(), [&](const planner::Zone& zone) {
                return fits(zone, height, width) || (type.turnable && fits(zone, width, height));
            });
    }

    /// At most half of a day's hands and a quarter of the largest zone with a fitting cover.
    [[nodiscard]] std::int64_t containersInOnePart(const ContainerType& type, const Recipe& recipe,
                                                   int each) const {
        const auto& hands = m_month.problem.strikeCapacity;
        const std::int64_t mostHands = *std::max_element(hands.begin(), hands.end());
        std::int64_t slots = 0;
        for (const planner::Zone& zone : m_month.problem.zones) {
            const auto& covers = recipe.covers.value;
            if (std::find(covers.begin(), covers.end(), zone.cover) != covers.end())
                slots = std::max<std::int64_t>(slots, std::int64_t{zone.rows} * zone.cols);
        }
        const std::int64_t area = std::int64_t{type.footprint.height} * type.footprint.width;
        return std::min(mostHands / 2 / each, slots / 4 / area);
    }

    /// The stocks that give this wood in the way's days, those that give most first, with what each can still
    /// give.
    [[nodiscard]] std::vector<std::pair<StockId, std::int64_t>> stocksFor(TaxonId taxon,
                                                                          const Way& way) const {
        std::vector<std::pair<StockId, std::int64_t>> found;
        for (const auto& [id, stock] : m_book.all<Stock>()) {
            if (stock.taxon != taxon || !yields(stock, way.recipe.wood)) continue;
            std::int64_t total = 0;
            for (const planner::StockStep& step :
                 stockSteps(m_book, stock, way.recipe.wood, m_month.from, m_month.strikeDays))
                if (m_month.from + step.day <= way.window.last) total = step.total;
            const auto promised = m_promised.find(id);
            if (promised != m_promised.end()) total -= promised->second;
            if (total > 0) found.emplace_back(id, total);
        }
        std::stable_sort(found.begin(), found.end(),
                         [](const auto& a, const auto& b) { return a.second > b.second; });
        return found;
    }

    [[nodiscard]] Phrase shortOfStock(TaxonId taxon, const Way& way, std::int64_t left) const {
        bool any = false;
        for (const auto& [id, stock] : m_book.all<Stock>())
            any = any || (stock.taxon == taxon && yields(stock, way.recipe.wood));
        const Phrase wood = woodNames[static_cast<std::size_t>(way.recipe.wood)];
        if (!any) return phrase("no stock gives %1 cuttings of it", wood);
        return phrase(left == 1 ? pattern("stock is short by %1 %2 cutting by %3")
                                : pattern("stock is short by %1 %2 cuttings by %3"),
                      left, wood, way.window.last);
    }

    int stockIndex(StockId id, Wood wood) {
        const auto key = std::make_pair(id, wood);
        if (const auto found = m_stockIndex.find(key); found != m_stockIndex.end()) return found->second;
        const Stock& stock = m_book.get<Stock>(id);
        planner::Stock made{stock.name + " (" + woodNames[static_cast<std::size_t>(wood)] + ")",
                            stockSteps(m_book, stock, wood, m_month.from, m_month.strikeDays)};
        m_month.problem.stocks.push_back(std::move(made));
        return m_stockIndex[key] = static_cast<int>(m_month.problem.stocks.size()) - 1;
    }

    void addPart(BatchPart part, std::int64_t value) {
        const Way& way = part.way;
        const Nursery& nursery = m_book.nursery();
        const ContainerType& type = m_book.get<ContainerType>(part.containerType);
        planner::Batch batch;
        batch.id = part.id;
        batch.containers = part.containers;
        batch.footprint = type.footprint;
        batch.turn = type.turnable;
        batch.cuttings = part.cuttings;
        if (part.stock && yields(m_book.get<Stock>(*part.stock), way.recipe.wood))
            batch.stock = stockIndex(*part.stock, way.recipe.wood);
        batch.strikeFirst = way.window.first - m_month.from;
        batch.strikeLast = way.window.last - m_month.from;
        if (part.target) batch.due = m_book.get<Target>(*part.target).due - m_month.from;
        price(batch, value, nursery);
        batch.stays.push_back(rootingRule(way, nursery, part.containers));
        if (const auto rule = openRule(way.recipe)) batch.stays.push_back(*rule);
        m_month.problem.batches.push_back(std::move(batch));
        m_month.parts.push_back(std::move(part));
    }

    const HouseBook& m_book;
    MonthProblem& m_month;
    std::map<StockId, std::int64_t> m_promised;
    std::map<std::pair<StockId, Wood>, int> m_stockIndex;
};

} // namespace

std::optional<Money> matCostPerDay(const HouseBook& book, const Zone& zone, Celsius setPoint, Celsius air) {
    const climate::MatLoad load = forecast::matLoadIn(book, zone, setPoint, air);
    if (!load.holds) return std::nullopt;
    return Money::fromUnits(climate::matEnergy(load, 24) * book.nursery().pricePerKilowattHour.units());
}

std::int64_t MonthProblem::cuttingsWanted() const {
    std::int64_t wanted = 0;
    for (const TargetNeed& need : needs)
        if (need.way) wanted += need.way->cuttings;
    for (const BatchPart& part : parts)
        if (part.again) wanted += part.cuttings;
    for (const Shortfall& shortfall : shortfalls)
        if (shortfall.again) wanted += shortfall.cuttings;
    return wanted;
}

MonthProblem monthProblem(const HouseBook& book, const RecipeLibrary& library, const PlanRequest& request) {
    MonthProblem month;
    month.from = request.from;
    month.strikeDays = request.days;
    const forecast::BookForecast forecast = forecastForPlan(book, request);
    month.needs = targetNeeds(book, library, request, forecast);
    const std::vector<BatchId> again = plannedAgain(book, request);
    const HouseBook rest = without(book, again);
    int longest = 0;
    for (const TargetNeed& need : month.needs)
        if (need.way) longest = std::max(longest, need.way->daysToReady);
    for (const BatchId id : again)
        longest = std::max(longest, wayBy(book.get<Batch>(id).recipe)->daysToReady);
    planner::Problem& problem = month.problem;
    problem.start = request.from.iso();
    problem.days = std::max(request.days, std::min(request.days + longest, longestHorizon));
    problem.scatterCost = book.nursery().scatterCost.parts;
    std::map<ZoneId, int> zoneIndex;
    for (const auto& [id, zone] : book.all<Zone>()) {
        zoneIndex[id] = static_cast<int>(problem.zones.size());
        month.zones.push_back(id);
        problem.zones.push_back(plannerZone(book, zone, request.from, problem.days));
    }
    problem.strikeCapacity = handsByDay(rest, request.from, problem.days);
    const std::map<StayId, Day> ends = forecast::stayEnds(rest, forecast);
    for (const auto& [id, end] : ends)
        if (end < rest.get<Stay>(id).to) month.early.emplace(id, end);
    addStandingStays(problem, rest, zoneIndex, request.from, ends);
    month.firstPart = problem.batches.size();
    PartMaker maker(rest, month);
    for (const BatchId id : again) {
        const Batch& batch = book.get<Batch>(id);
        maker.makeAgain(batch, request,
                        canStayAsPlanned(book, batch, request.from)
                            ? placedStays(book, id, zoneIndex, request.from)
                            : std::vector<planner::PlacedStay>());
    }
    for (std::size_t index = 0; index < month.needs.size(); ++index)
        if (month.needs[index].way) maker.make(index);
    if (std::any_of(problem.batches.begin(), problem.batches.end(),
                    [](const planner::Batch& batch) { return batch.previous.has_value(); })) {
        problem.version = 2;
        problem.changeCost = request.changeCost->parts;
    }
    return month;
}

} // namespace warmbench::season
