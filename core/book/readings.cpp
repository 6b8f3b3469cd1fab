#include "core/book/readings.h"

#include <algorithm>
#include <span>
#include <string>

namespace warmbench {
namespace {

using climate::MinuteReading;

std::int64_t minuteAt(Day day) {
    return std::int64_t{day.number()} * climate::minutesPerDay;
}

bool beforeMinute(const MinuteReading& reading, std::int64_t minute) {
    return reading.minute < minute;
}

/// The readings of a month that the book vouches for.
std::vector<MinuteReading> unpacked(const ReadingMonth& month) {
    std::vector<MinuteReading> readings;
    climate::unpack(month.packed, month.month, readings);
    return readings;
}

/// The readings at the front that lie in one month with the first.
std::span<const MinuteReading> firstMonth(std::span<const MinuteReading> readings) {
    const std::int64_t end = minuteAt(climate::nextMonth(climate::monthOf(readings.front().minute)));
    const auto last = std::lower_bound(readings.begin(), readings.end(), end, beforeMinute);
    return readings.first(static_cast<std::size_t>(last - readings.begin()));
}

} // namespace

std::vector<MinuteReading> readingsBetween(const HouseBook& book, const ReadingPlace& place, Channel channel,
                                           Day from, Day to) {
    std::vector<MinuteReading> readings;
    if (to <= from) return readings;
    const auto& months = book.readingsOf(place, channel);
    const Day first = from - (static_cast<int>(from.dayOfMonth()) - 1);
    for (auto month = months.lower_bound(first); month != months.end() && month->first < to; ++month)
        climate::unpack(book.get<ReadingMonth>(month->second).packed, month->first, readings);
    const auto end = std::lower_bound(readings.begin(), readings.end(), minuteAt(to), beforeMinute);
    readings.erase(end, readings.end());
    const auto begin = std::lower_bound(readings.begin(), readings.end(), minuteAt(from), beforeMinute);
    readings.erase(readings.begin(), begin);
    return readings;
}

std::optional<Celsius> RootZoneLogs::on(const HouseBook& book, ZoneId zone, Day day) {
    const ReadingPlace place{zone, std::nullopt};
    if (book.readingsOf(place, Channel::RootZone).empty()) return std::nullopt;
    Log& log = m_logs[zone];
    if (!(log.from <= day - 2 && day < log.to)) {
        log.from = day - (static_cast<int>(day.dayOfMonth()) + 1);
        log.to = climate::nextMonth(day);
        log.readings = readingsBetween(book, place, Channel::RootZone, log.from, log.to);
    }
    const auto end =
        std::lower_bound(log.readings.begin(), log.readings.end(), minuteAt(day + 1), beforeMinute);
    if (end == log.readings.begin() || std::prev(end)->minute < minuteAt(day - 1)) return std::nullopt;
    // A reading just a day before the last is of the day before.
    const std::int64_t after = std::int64_t{std::prev(end)->minute} - climate::minutesPerDay + 1;
    const auto first = std::lower_bound(log.readings.begin(), end, after, beforeMinute);
    double sum = 0;
    for (auto reading = first; reading != end; ++reading) sum += reading->units();
    return Celsius::fromUnits(sum / static_cast<double>(end - first));
}

std::optional<Celsius> measuredRootZone(const HouseBook& book, ZoneId zone, Day day) {
    return RootZoneLogs().on(book, zone, day);
}

std::vector<ReadingPlace> placesWithReadings(const HouseBook& book) {
    std::vector<ReadingPlace> places;
    const auto add = [&](const ReadingPlace& place) {
        for (const Channel channel : {Channel::RootZone, Channel::Air, Channel::Humidity})
            if (!book.readingsOf(place, channel).empty()) return places.push_back(place);
    };
    for (const auto& [id, zone] : book.all<Zone>()) add({id, std::nullopt});
    for (const auto& [id, house] : book.all<House>()) add({std::nullopt, id});
    return places;
}

ReadingsToKeep toKeep(const HouseBook& book, const ReadingPlace& place, const ChannelReadings& readings) {
    ReadingsToKeep found;
    if (readings.readings.empty()) return found;
    const Day from = Day::fromNumber(0) + readings.readings.front().minute / climate::minutesPerDay;
    const Day to = Day::fromNumber(0) + (readings.readings.back().minute / climate::minutesPerDay + 1);
    const auto kept = readingsBetween(book, place, readings.channel, from, to);
    auto one = kept.begin();
    for (const MinuteReading& reading : readings.readings) {
        while (one != kept.end() && one->minute < reading.minute) ++one;
        if (one == kept.end() || one->minute != reading.minute)
            ++found.fresh;
        else
            ++(one->value == reading.value ? found.same : found.another);
    }
    return found;
}

Result<std::vector<ReadingMonth>> withReadings(const std::map<Day, ReadingMonth>& months,
                                               const ReadingPlace& place, const ChannelReadings& readings) {
    const auto late = std::adjacent_find(readings.readings.begin(), readings.readings.end(),
                                         [](const auto& a, const auto& b) { return a.minute >= b.minute; });
    if (late != readings.readings.end()) return Refusal{"readings", phrase("they are not in order of time")};
    std::vector<ReadingMonth> changed;
    for (std::span<const MinuteReading> left(readings.readings); !left.empty();) {
        const auto part = firstMonth(left);
        left = left.subspan(part.size());
        ReadingMonth month{{}, place.zone, place.house, readings.channel, climate::monthOf(part[0].minute),
                           {}};
        const auto before = months.find(month.month);
        if (before != months.end()) {
            month.id = before->second.id;
            month.packed = climate::pack(climate::merged(unpacked(before->second), part), month.month);
        } else {
            month.packed = climate::pack(part, month.month);
        }
        changed.push_back(std::move(month));
    }
    return changed;
}

ReadingMonth withoutDays(const ReadingMonth& month, Day from, Day to) {
    auto readings = unpacked(month);
    const auto first = std::lower_bound(readings.begin(), readings.end(), minuteAt(from), beforeMinute);
    const auto end = std::lower_bound(first, readings.end(), minuteAt(to), beforeMinute);
    readings.erase(first, end);
    ReadingMonth after = month;
    after.packed = climate::pack(readings, month.month);
    return after;
}

} // namespace warmbench
