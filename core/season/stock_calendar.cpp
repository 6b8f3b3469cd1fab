#include "core/season/stock_calendar.h"

#include "core/crop/season.h"
#include "core/season/need.h"
#include "core/season/new_target.h"
#include "core/season/renewal.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace warmbench::season {
namespace {

/// A batch that roots, weans and grows on for as long as is usual, where no recipe says it.
constexpr int usualDaysToReady = 120;
/// To spare at the end of a season.
constexpr int weekToSpare = 7;

struct StockTaking {
    Wood wood = Wood::Softwood;
    std::int64_t cuttings = 0;
};

/// All that was and will be taken from a stock, by day.
std::multimap<Day, StockTaking> takingsFrom(const HouseBook& book, StockId stock) {
    std::multimap<Day, StockTaking> takings;
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.stock == stock)
            takings.emplace(batch.strikeDay, StockTaking{batch.recipe.wood, batch.cuttings()});
    return takings;
}

Season localSeason(const HouseBook& book, const Flush& flush) {
    const Nursery& nursery = book.nursery();
    return seasonFor(flush.season, nursery.latitude.units(), nursery.seasonShiftDays);
}

/// Shoots on the plants at the beginning of a day.
std::int64_t shootsOn(const HouseBook& book, const Stock& stock, const Flush& flush,
                      const std::multimap<Day, StockTaking>& takings, Day day) {
    if (strikeWindows(localSeason(book, flush), day, day).empty()) return 0;
    std::int64_t shoots = std::int64_t{stock.plants} * flush.cuttingsPerPlant;
    const auto end = takings.lower_bound(day);
    for (auto one = takings.lower_bound(day - flush.regrowthDays + 1); one != end; ++one)
        shoots -= one->second.cuttings;
    return std::max<std::int64_t>(0, shoots);
}

} // namespace

std::vector<WoodCalendar> stockCalendar(const HouseBook& book, const Stock& stock, Day from, int days) {
    const auto takings = takingsFrom(book, stock.id);
    std::vector<WoodCalendar> calendars;
    for (const Flush& flush : stock.flushes) {
        if (flush.cuttingsPerPlant == 0) continue;
        WoodCalendar calendar;
        calendar.wood = flush.wood;
        for (int i = 0; i < days; ++i) {
            calendar.shoots.push_back(shootsOn(book, stock, flush, takings, from + i));
            const auto [first, last] = takings.equal_range(from + i);
            std::int64_t taken = 0;
            for (auto one = first; one != last; ++one)
                if (one->second.wood == flush.wood) taken += one->second.cuttings;
            calendar.taken.push_back(taken);
        }
        calendars.push_back(std::move(calendar));
    }
    return calendars;
}

std::int64_t takenFrom(const HouseBook& book, StockId stock, Day from, Day to) {
    std::int64_t taken = 0;
    for (const auto& [day, taking] : takingsFrom(book, stock))
        if (day >= from && day < to) taken += taking.cuttings;
    return taken;
}

std::vector<Overcut> overcuts(const HouseBook& book, const Stock& stock, Day from) {
    const auto takings = takingsFrom(book, stock.id);
    std::vector<Overcut> found;
    for (auto one = takings.lower_bound(from); one != takings.end(); one = takings.upper_bound(one->first)) {
        const Day day = one->first;
        std::map<Wood, std::int64_t> byWood;
        std::int64_t all = 0;
        const auto [first, last] = takings.equal_range(day);
        for (auto taking = first; taking != last; ++taking) {
            byWood[taking->second.wood] += taking->second.cuttings;
            all += taking->second.cuttings;
        }
        for (const Flush& flush : stock.flushes) {
            if (flush.cuttingsPerPlant == 0 || byWood[flush.wood] == 0) continue;
            const std::int64_t stands = shootsOn(book, stock, flush, takings, day);
            // Cuttings of all woods are of the same shoots.
            if (all > stands) found.push_back({stock.id, day, flush.wood, all, stands});
        }
    }
    return found;
}

std::vector<Overcut> overcuts(const HouseBook& book, Day from) {
    std::vector<Overcut> found;
    for (const auto& [id, stock] : book.all<Stock>()) {
        const std::vector<Overcut> of = overcuts(book, stock, from);
        found.insert(found.end(), of.begin(), of.end());
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Overcut& a, const Overcut& b) { return a.day < b.day; });
    return found;
}

Target renewalOf(const HouseBook& book, const Stock& stock, Day today) {
    Target target;
    target.name = nextTargetName(book);
    target.taxon = stock.taxon;
    target.plants = std::max(1, stock.plants);
    target.worth = usualWorth;
    target.note = renewalNote(stock);
    int slowest = 0;
    for (const auto& [id, recipe] : book.all<Recipe>())
        if (recipe.taxon == stock.taxon)
            if (const auto way = wayBy(recipe)) slowest = std::max(slowest, way->daysToReady);
    if (slowest == 0) slowest = usualDaysToReady;
    // The end of the first season that is still to come, and the days until its plants are potted on.
    std::optional<Day> last;
    for (const Flush& flush : stock.flushes)
        for (const StrikeWindow& window : strikeWindows(localSeason(book, flush), today, today + 365))
            if (const Day end = window.last - weekToSpare; end >= today && (!last || end < *last)) last = end;
    target.due = last.value_or(today + weekToSpare) + slowest;
    return target;
}

} // namespace warmbench::season
