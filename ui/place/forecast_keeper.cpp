#include "ui/place/forecast_keeper.h"

namespace warmbench::ui {

const forecast::BookForecast& ForecastKeeper::on(const HouseBook& book, Day day) {
    const bool holds = m_forecast && m_forecast->day() == day &&
                       m_forecast->sureness() == book.nursery().surenessPermille / 1000.0;
    if (!holds) m_forecast.emplace(book, day);
    return *m_forecast;
}

void ForecastKeeper::update(const HouseBook& book, const Change& change) {
    if (m_forecast) m_forecast->update(book, change);
}

} // namespace warmbench::ui
