#include "core/placing/heat_there.h"

#include "core/book/query.h"
#include "core/season/month_problem.h"

#include <algorithm>

namespace warmbench::placing {
namespace {

/// As the planner has it for weaned cuttings, in tenths: common practice, no source.
constexpr std::int64_t openLow = 30;
constexpr std::int64_t openHigh = 320;
/// So far is looked ahead for a batch to be ready.
constexpr int longestRooting = 400;

struct Range {
    std::int64_t low = 0;
    std::int64_t high = 0;
};

Range rangeOf(const Recipe& recipe, Stage stage) {
    const std::int64_t low = recipe.rootZoneLow.value.parts;
    const std::int64_t high = recipe.rootZoneHigh.value.parts;
    if (stage == Stage::Rooting) return {low, high};
    return {std::min(openLow, low), std::max(openHigh, high)};
}

/// What a batch is to stand for at given root zones.
struct Days {
    Day to;
    std::optional<Day> ready;
};

Days daysThere(const Carried& carried, const Recipe& recipe, const std::vector<std::int64_t>& warmth) {
    Days days{carried.end.value_or(carried.day + std::max(1, recipe.daysToRoot.value.high)), {}};
    if (!carried.need) return days;
    const climate::Thresholds thresholds = forecast::thresholdsOf(recipe);
    double passed = 0;
    for (std::size_t day = 0; day < warmth.size() && !days.ready; ++day) {
        passed += climate::steadyDegreeDays(static_cast<double>(warmth[day]) / 10, 24, thresholds);
        if (passed >= *carried.need) days.ready = carried.day + static_cast<int>(day) + 1;
    }
    if (days.ready && carried.whole && !carried.struck) days.to = *days.ready;
    if (days.ready && !carried.end) days.to = *days.ready;
    return days;
}

/// The first batch in the zone that would not bear these root zones on a day on which they are others than
/// now.
std::optional<BatchId> harmed(const HouseBook& book, const Carried& carried, const Zone& zone, Day to,
                              const std::vector<std::int64_t>& now, const std::vector<std::int64_t>& then) {
    for (const StayId id : book.staysMeeting(zone.id, carried.day, to)) {
        const Stay& stay = book.get<Stay>(id);
        if (stay.batch == carried.batch) continue;
        const Range range = rangeOf(book.get<Batch>(stay.batch).recipe, stay.stage);
        for (Day day = std::max(stay.from, carried.day); day < std::min(stay.to, to); day = day + 1) {
            const auto at = static_cast<std::size_t>(day - carried.day);
            if (then[at] != now[at] && (then[at] < range.low || then[at] > range.high)) return stay.batch;
        }
    }
    return std::nullopt;
}

bool holds(const HouseBook& book, const Zone& zone, Celsius setPoint, Day from, Day to) {
    Celsius coldest = onDay(houseOf(book, zone).air, from);
    for (Day day = from; day < to; day = day + 1)
        coldest = std::min(coldest, onDay(houseOf(book, zone).air, day));
    return season::matCostPerDay(book, zone, setPoint, coldest).has_value();
}

} // namespace

std::vector<std::int64_t> rootZonesAt(const HouseBook& book, const Zone& zone, Day from, Day to,
                                      std::optional<Celsius> setPoint) {
    const House& house = houseOf(book, zone);
    std::vector<std::int64_t> warmth;
    warmth.reserve(static_cast<std::size_t>(std::max(0, to - from)));
    for (Day day = from; day < to; day = day + 1) {
        warmth.push_back(onDay(house.unheatedRootZone, day).parts);
        if (setPoint) warmth.back() = std::max(warmth.back(), setPoint->parts);
    }
    return warmth;
}

std::vector<std::int64_t> rootZones(const HouseBook& book, const Zone& zone, Day from, Day to) {
    std::vector<std::int64_t> warmth = rootZonesAt(book, zone, from, to, std::nullopt);
    for (const MatRunId id : book.matRunsMeeting(zone.id, from, to)) {
        const MatRun& run = book.get<MatRun>(id);
        for (Day day = std::max(run.from, from); day < std::min(run.to, to); day = day + 1) {
            std::int64_t& one = warmth[static_cast<std::size_t>(day - from)];
            one = std::max(one, run.setPoint.parts);
        }
    }
    return warmth;
}

HeatThere heatThere(const HouseBook& book, const Carried& carried, const Zone& zone) {
    const Recipe& recipe = book.get<Batch>(carried.batch).recipe;
    const Range range = rangeOf(recipe, carried.stage);
    const Day last = std::max(carried.day + longestRooting, carried.end.value_or(carried.day));
    const std::vector<std::int64_t> now = rootZones(book, zone, carried.day, last);
    const auto worst = [&](const std::vector<std::int64_t>& warmth, Day to) {
        const auto end = warmth.begin() + std::min<std::ptrdiff_t>(to - carried.day, std::ssize(warmth));
        const auto [coldest, warmest] = std::minmax_element(warmth.begin(), end);
        return Range{*coldest, *warmest};
    };
    HeatThere there;
    const Days asRun = daysThere(carried, recipe, now);
    there.setPoint = setPointOn(book, zone.id, carried.day);
    there.to = asRun.to;
    there.ready = asRun.ready;
    const Range found = worst(now, asRun.to);
    if (found.low >= range.low && found.high <= range.high && (!carried.need || asRun.ready)) {
        there.suits = true;
        return there;
    }
    there.tooWarm = found.high > range.high && found.low >= range.low;
    there.rootZone = {there.tooWarm ? found.high : found.low};
    there.limit = {there.tooWarm ? range.high : range.low};
    if (!zone.matOn(carried.day) || carried.stage != Stage::Rooting) return there;
    std::vector<std::optional<Celsius>> ways{std::nullopt};
    ways.insert(ways.end(), zone.mat->setPoints.begin(), zone.mat->setPoints.end());
    std::int64_t nearest = std::numeric_limits<std::int64_t>::max();
    for (const auto& way : ways) {
        const std::vector<std::int64_t> then = rootZonesAt(book, zone, carried.day, last, way);
        const Days days = daysThere(carried, recipe, then);
        const Range reached = worst(then, days.to);
        if (reached.low < range.low || reached.high > range.high || (carried.need && !days.ready)) continue;
        const std::int64_t off = std::abs(then.front() - recipe.rootZoneIdeal.value.parts);
        if (off >= nearest || (way && !holds(book, zone, *way, carried.day, days.to))) continue;
        if (const auto other = harmed(book, carried, zone, days.to, now, then)) {
            if (!there.suits) {
                there.others = other;
                there.setPoint = way;
            }
            continue;
        }
        nearest = off;
        there.suits = there.changes = true;
        there.setPoint = way;
        there.to = days.to;
        there.ready = days.ready;
        there.others.reset();
    }
    return there;
}

} // namespace warmbench::placing
