#include "core/forecast/batch_warmth.h"

#include "core/book/query.h"
#include "core/forecast/measured_root_zone.h"

#include <algorithm>

namespace warmbench::forecast {
namespace {

constexpr int daysAhead = 731;

std::vector<const Stay*> rootingStays(const HouseBook& book, BatchId batch) {
    std::vector<const Stay*> stays;
    for (const StayId id : book.staysOf(batch))
        if (const Stay& stay = book.get<Stay>(id); stay.stage == Stage::Rooting) stays.push_back(&stay);
    std::sort(stays.begin(), stays.end(), [](const Stay* a, const Stay* b) { return a->from < b->from; });
    return stays;
}

/// The root zone to be expected in a zone, day by day; set-points are looked up once.
class RootZoneDays {
public:
    RootZoneDays(const HouseBook& book, ZoneId zone, Day from, Day to)
        : m_house(houseOf(book, book.get<Zone>(zone))) {
        for (const MatRunId id : book.matRunsMeeting(zone, from, to)) m_runs.push_back(&book.get<MatRun>(id));
    }
    [[nodiscard]] double on(Day day) const {
        Celsius found = onDay(m_house.unheatedRootZone, day);
        for (const MatRun* run : m_runs)
            if (run->from <= day && day < run->to) found = std::max(found, run->setPoint);
        return found.units();
    }

private:
    const House& m_house;
    std::vector<const MatRun*> m_runs;
};

} // namespace

climate::Thresholds thresholdsOf(const Recipe& recipe) {
    return {recipe.base.value.units(), std::max(recipe.base.value, recipe.rootZoneHigh.value).units()};
}

BatchWarmth::BatchWarmth(const HouseBook& book, const Batch& batch, const MeasuredDay& measured)
    : m_strikeDay(batch.strikeDay), m_by{0} {
    m_by.reserve(daysAhead + 1);
    const climate::Thresholds thresholds = thresholdsOf(batch.recipe);
    const auto add = [&](double degreeDays) { m_by.push_back(m_by.back() + degreeDays); };
    const std::vector<const Stay*> stays = rootingStays(book, batch.id);
    const Day end = m_strikeDay + daysAhead;
    if (stays.empty()) {
        const double ideal = batch.recipe.rootZoneIdeal.value.units();
        while (last() < end) add(climate::steadyDegreeDays(ideal, 24, thresholds));
        return;
    }
    for (std::size_t i = 0; i < stays.size(); ++i) {
        const ZoneId zone = stays[i]->zone;
        const Day until = i + 1 < stays.size() ? std::min(end, stays[i + 1]->from) : end;
        const RootZoneDays days(book, zone, last(), until);
        const MeasuredRootZone kept =
            measured ? MeasuredRootZone(zone, {}) : MeasuredRootZone(book, zone, last(), until);
        while (last() < until) {
            const auto found =
                measured ? measured(zone, last(), thresholds) : kept.on(zone, last(), thresholds);
            if (found) ++m_measuredDays;
            add(found ? *found : climate::steadyDegreeDays(days.on(last()), 24, thresholds));
        }
    }
}

double BatchWarmth::by(Day day) const {
    if (day <= m_strikeDay) return 0;
    return m_by[static_cast<std::size_t>(std::min(day, last()) - m_strikeDay)];
}

std::optional<Day> BatchWarmth::dayOf(double degreeDays) const {
    const auto found = std::lower_bound(m_by.begin(), m_by.end(), degreeDays);
    if (found == m_by.end()) return std::nullopt;
    return m_strikeDay + static_cast<int>(found - m_by.begin());
}

} // namespace warmbench::forecast
