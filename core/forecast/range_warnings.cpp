#include "core/forecast/range_warnings.h"

#include "core/climate/excursion.h"
#include "core/forecast/measured_root_zone.h"

#include <algorithm>
#include <tuple>

namespace warmbench::forecast {
namespace {

/// One stretch outside one batch's range.
struct Stretch {
    climate::Excursion excursion;
    BatchId batch;
};

std::vector<Stretch> stretchesOf(const HouseBook& book, ZoneId zone, Day from, Day to) {
    std::vector<Stretch> found;
    for (const StayId id : book.staysMeeting(zone, from, to)) {
        const Stay& stay = book.get<Stay>(id);
        const Batch& batch = book.get<Batch>(stay.batch);
        if (stay.stage != Stage::Rooting || batch.state == BatchState::Planned) continue;
        const Day first = std::max(from, stay.from);
        const Day last = std::min(to, stay.to);
        const MeasuredRootZone measured(book, zone, first, last);
        for (const climate::Excursion& one :
             climate::excursions(measured.between(first, last), batch.recipe.rootZoneLow.value.units(),
                                 batch.recipe.rootZoneHigh.value.units(), hoursThatMatter))
            found.push_back({one, batch.id});
    }
    std::sort(found.begin(), found.end(), [](const Stretch& a, const Stretch& b) {
        return std::tuple(a.excursion.below, a.excursion.from, a.excursion.to, a.batch) <
               std::tuple(b.excursion.below, b.excursion.from, b.excursion.to, b.batch);
    });
    return found;
}

void join(RangeWarning& warning, const Stretch& stretch) {
    const climate::Excursion& one = stretch.excursion;
    warning.hours += std::max(0.0, one.to - std::max(one.from, warning.to));
    warning.to = std::max(warning.to, one.to);
    warning.extreme =
        one.below ? std::min(warning.extreme, one.extreme) : std::max(warning.extreme, one.extreme);
    if (std::find(warning.batches.begin(), warning.batches.end(), stretch.batch) == warning.batches.end())
        warning.batches.push_back(stretch.batch);
}

} // namespace

std::vector<RangeWarning> rangeWarnings(const HouseBook& book, Day from, Day to) {
    std::vector<RangeWarning> warnings;
    for (const auto& [id, zone] : book.all<Zone>()) {
        if (book.readingsOf({id, std::nullopt}, Channel::RootZone).empty()) continue;
        const std::size_t before = warnings.size();
        for (const Stretch& stretch : stretchesOf(book, id, from, to)) {
            const climate::Excursion& one = stretch.excursion;
            const bool goesOn = warnings.size() > before && warnings.back().below == one.below &&
                                one.from <= warnings.back().to + hoursJoined;
            if (goesOn)
                join(warnings.back(), stretch);
            else
                warnings.push_back(
                    {id, one.below, one.from, one.to, one.hours(), one.extreme, {stretch.batch}});
        }
    }
    std::stable_sort(warnings.begin(), warnings.end(),
                     [](const RangeWarning& a, const RangeWarning& b) { return a.to > b.to; });
    return warnings;
}

} // namespace warmbench::forecast
