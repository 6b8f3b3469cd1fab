#pragma once

#include "core/book/house_book.h"
#include "core/climate/thermal_time.h"

#include <functional>
#include <optional>
#include <vector>

namespace warmbench::forecast {

/// Degree-days of one day in a zone as its logger has it; nothing where it has too little of that day. Where
/// none is given, what the book keeps of its loggers is asked.
using MeasuredDay = std::function<std::optional<double>(ZoneId, Day, const climate::Thresholds&)>;

/// What a recipe counts as warmth: above its base, up to its highest root zone.
[[nodiscard]] climate::Thresholds thresholdsOf(const Recipe& recipe);

/// The thermal time that passes for a batch where it roots, as though it stayed there until it is ready: as
/// measured on days that its logger has from end to end, else by the set-point of its mat or the unheated
/// root zone, whichever is warmer. Between rooting stays it is where it was last; without any it stands at
/// its recipe's ideal.
class BatchWarmth {
public:
    BatchWarmth(const HouseBook& book, const Batch& batch, const MeasuredDay& measured = {});

    /// Degree-days from the strike day to the beginning of `day`; 0 before, and no more than by `last()`.
    [[nodiscard]] double by(Day day) const;
    /// The first day by whose beginning so many degree-days have passed; nothing where that is after
    /// `last()`.
    [[nodiscard]] std::optional<Day> dayOf(double degreeDays) const;
    /// As far as is looked ahead: two years after striking.
    [[nodiscard]] Day last() const { return m_strikeDay + static_cast<int>(m_by.size() - 1); }
    /// Days whose thermal time was measured.
    [[nodiscard]] int measuredDays() const { return m_measuredDays; }

private:
    Day m_strikeDay;
    std::vector<double> m_by; ///< by the beginning of each day from the strike day on
    int m_measuredDays = 0;
};

} // namespace warmbench::forecast
