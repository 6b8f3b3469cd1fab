#include "core/forecast/batch_curve.h"

#include <algorithm>
#include <map>

namespace warmbench::forecast {
namespace {

constexpr double curveLevel = 0.9;
constexpr int daysAfter = 7;
/// A curve looks no further ahead than so many days from the day of the forecast.
constexpr int furthest = 365;
/// More points than a panel has columns show nothing more.
constexpr int mostPoints = 120;

} // namespace

BatchCurve batchCurve(const HouseBook& book, const BookForecast& forecast, BatchId id) {
    BatchCurve curve;
    curve.outlook = forecast.batches().at(id);
    const BatchForecast& found = *forecast.find(id);
    const Batch& batch = book.get<Batch>(id);
    Day end = std::max(forecast.day(), batch.strikeDay + 1);
    for (const std::optional<Day>& one :
         {curve.outlook.likelyReady, curve.outlook.sureReady, curve.outlook.assumedReady})
        if (one) end = std::max(end, *one);
    end = std::min(end + daysAfter, forecast.day() + furthest);
    const int step = std::max(1, (end - batch.strikeDay) / mostPoints);
    for (Day day = batch.strikeDay; day <= end; day = day + step)
        curve.days.push_back({day, found.rootedOn(day, curveLevel)});
    std::map<Day, BatchCurve::Checked> byDay;
    for (const RootCheckId checkId : book.checksOf(id)) {
        const RootCheck& check = book.get<RootCheck>(checkId);
        if (check.day > forecast.day()) continue;
        BatchCurve::Checked& sum = byDay[check.day];
        sum.day = check.day;
        sum.rooted += check.rooted;
        sum.alive += check.examined - check.dead;
    }
    for (const auto& [day, sum] : byDay) curve.checks.push_back(sum);
    curve.measuredDays = found.warmth().measuredDays();
    curve.daysSoFar = std::max(0, forecast.day() - batch.strikeDay);
    curve.degreeDays = found.warmth().by(forecast.day());
    return curve;
}

} // namespace warmbench::forecast
