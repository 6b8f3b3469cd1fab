#pragma once

#include "core/forecast/book_forecast.h"

namespace warmbench::ui {

/// The forecast of the book that is open, on one day: computed when a place first asks for it, then kept up
/// to date change by change.
class ForecastKeeper {
public:
    const forecast::BookForecast& on(const HouseBook& book, Day day);
    /// Takes over a change that the book has made.
    void update(const HouseBook& book, const Change& change);
    /// For another book.
    void forget() { m_forecast.reset(); }

private:
    std::optional<forecast::BookForecast> m_forecast;
};

} // namespace warmbench::ui
