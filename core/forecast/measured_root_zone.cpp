#include "core/forecast/measured_root_zone.h"

#include "core/book/readings.h"

#include <algorithm>

namespace warmbench::forecast {
namespace {

double hourOf(Day day) {
    return 24.0 * day.number();
}

bool before(const climate::Reading& reading, double hour) {
    return reading.hour < hour;
}

/// The reading on the straight line between two others.
climate::Reading at(double hour, const climate::Reading& a, const climate::Reading& b) {
    const double part = (hour - a.hour) / (b.hour - a.hour);
    return {hour, a.celsius + part * (b.celsius - a.celsius)};
}

} // namespace

MeasuredRootZone::MeasuredRootZone(const HouseBook& book, ZoneId zone, Day from, Day to) : m_zone(zone) {
    constexpr double minutesPerHour = 60;
    // A reading before and one after belong to the lines across both midnights.
    const auto kept = readingsBetween(book, {zone, std::nullopt}, Channel::RootZone, from - 1, to + 1);
    m_readings.reserve(kept.size());
    for (const climate::MinuteReading& one : kept)
        m_readings.push_back({one.minute / minutesPerHour, one.units()});
}

std::span<const climate::Reading> MeasuredRootZone::between(Day from, Day to) const {
    const auto first = std::lower_bound(m_readings.begin(), m_readings.end(), hourOf(from), before);
    const auto end = std::lower_bound(first, m_readings.end(), hourOf(to), before);
    return {first, end};
}

std::optional<double> MeasuredRootZone::on(ZoneId zone, Day day,
                                           const climate::Thresholds& thresholds) const {
    if (zone != m_zone) return std::nullopt;
    const double begins = hourOf(day);
    const double ends = begins + 24;
    auto reading = std::lower_bound(m_readings.begin(), m_readings.end(), begins, before);
    std::vector<climate::Reading> ofDay;
    if (reading != m_readings.end() && reading->hour > begins && reading != m_readings.begin()) {
        if (reading->hour - (reading - 1)->hour > climate::longestStep) return std::nullopt;
        ofDay.push_back(at(begins, *(reading - 1), *reading));
    }
    for (; reading != m_readings.end() && reading->hour <= ends; ++reading) ofDay.push_back(*reading);
    if (ofDay.empty() || ofDay.front().hour != begins) return std::nullopt;
    if (ofDay.back().hour < ends) {
        if (reading == m_readings.end() || reading->hour - ofDay.back().hour > climate::longestStep)
            return std::nullopt;
        ofDay.push_back(at(ends, ofDay.back(), *reading));
    }
    const climate::ThermalTime time = climate::thermalTime(ofDay, thresholds);
    if (!time.gaps.empty()) return std::nullopt;
    return time.measured;
}

} // namespace warmbench::forecast
