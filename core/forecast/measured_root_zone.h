#pragma once

#include "core/forecast/batch_warmth.h"

namespace warmbench::forecast {

/// What a logger in one zone measured.
class MeasuredRootZone {
public:
    /// Readings in order, their hours since 1970-01-01 00:00 of the place's winter time.
    MeasuredRootZone(ZoneId zone, std::vector<climate::Reading> readings)
        : m_zone(zone), m_readings(std::move(readings)) {}

    /// What the book keeps of a zone's root zone, enough for the days from <= day < to.
    MeasuredRootZone(const HouseBook& book, ZoneId zone, Day from, Day to);

    /// Degree-days of a day in the zone; nothing for another zone, and for a day that has a gap of more than
    /// climate::longestStep or is not covered from end to end.
    [[nodiscard]] std::optional<double> on(ZoneId zone, Day day, const climate::Thresholds& thresholds) const;
    /// The readings of the days from <= day < to.
    [[nodiscard]] std::span<const climate::Reading> between(Day from, Day to) const;
    [[nodiscard]] ZoneId zone() const { return m_zone; }

private:
    ZoneId m_zone;
    std::vector<climate::Reading> m_readings;
};

} // namespace warmbench::forecast
