#include "core/forecast/place_climate.h"

#include "core/book/query.h"
#include "core/climate/vapour.h"

#include <algorithm>
#include <cmath>

namespace warmbench::forecast {
namespace {

ReadingPlace houseOfZone(const HouseBook& book, ZoneId zone) {
    return {std::nullopt, houseOf(book, book.get<Zone>(zone)).id};
}

/// Where the air of a place is measured: over the zone, else in its house.
ReadingPlace airPlace(const HouseBook& book, const ReadingPlace& place) {
    if (!place.zone || !book.readingsOf(place, Channel::Air).empty()) return place;
    return houseOfZone(book, *place.zone);
}

std::vector<climate::MinuteReading> deficitOf(const std::vector<climate::MinuteReading>& air,
                                              const std::vector<climate::MinuteReading>& humidity) {
    std::vector<climate::MinuteReading> found;
    found.reserve(std::min(air.size(), humidity.size()));
    auto damp = humidity.begin();
    for (const climate::MinuteReading& warmth : air) {
        while (damp != humidity.end() && damp->minute < warmth.minute) ++damp;
        if (damp == humidity.end()) break;
        if (damp->minute != warmth.minute) continue;
        const double lacks = climate::deficit(climate::saturationPressure(warmth.units()),
                                              climate::pressureFromHumidity(warmth.units(), damp->units()));
        found.push_back({warmth.minute, static_cast<std::int32_t>(std::lround(lacks * 100))});
    }
    return found;
}

std::vector<ExpectedDay> expectedIn(const HouseBook& book, ZoneId id, Day from, Day to) {
    const Zone& zone = book.get<Zone>(id);
    std::vector<ExpectedDay> days;
    for (Day day = from; day < to; day = day + 1) {
        ExpectedDay one{day, {}, onDay(houseOf(book, zone).unheatedRootZone, day), {}, {}};
        for (const MatRunId run : book.matRunsMeeting(id, day, day + 1))
            one.setPoint = book.get<MatRun>(run).setPoint;
        if (one.setPoint) one.rootZone = std::max(one.rootZone, *one.setPoint);
        for (const StayId stayId : book.staysMeeting(id, day, day + 1)) {
            const Stay& stay = book.get<Stay>(stayId);
            if (stay.stage != Stage::Rooting) continue;
            const Recipe& recipe = book.get<Batch>(stay.batch).recipe;
            one.low = std::max(one.low.value_or(recipe.rootZoneLow.value), recipe.rootZoneLow.value);
            one.high = std::min(one.high.value_or(recipe.rootZoneHigh.value), recipe.rootZoneHigh.value);
        }
        days.push_back(one);
    }
    return days;
}

} // namespace

PlaceClimate climateOf(const HouseBook& book, const ReadingPlace& place, Day from, Day to) {
    PlaceClimate found;
    const ReadingPlace air = airPlace(book, place);
    if (place.zone) {
        found.rootZone = readingsBetween(book, place, Channel::RootZone, from, to);
        found.expected = expectedIn(book, *place.zone, from, to);
    }
    found.air = readingsBetween(book, air, Channel::Air, from, to);
    found.deficit = deficitOf(found.air, readingsBetween(book, air, Channel::Humidity, from, to));
    return found;
}

std::optional<ReadingDays> readingDays(const HouseBook& book, const ReadingPlace& place) {
    std::optional<ReadingDays> days;
    const auto include = [&](const ReadingPlace& one, Channel channel) {
        const auto& months = book.readingsOf(one, channel);
        if (months.empty()) return;
        const Day first = months.begin()->first;
        const Day last = months.rbegin()->first;
        const auto early = readingsBetween(book, one, channel, first, climate::nextMonth(first));
        const auto late = readingsBetween(book, one, channel, last, climate::nextMonth(last));
        const Day begins = Day::fromNumber(early.front().minute / climate::minutesPerDay);
        const Day ends = Day::fromNumber(late.back().minute / climate::minutesPerDay);
        days = days ? ReadingDays{std::min(days->first, begins), std::max(days->last, ends)}
                    : ReadingDays{begins, ends};
    };
    include(place, Channel::RootZone);
    include(airPlace(book, place), Channel::Air);
    return days;
}

} // namespace warmbench::forecast
