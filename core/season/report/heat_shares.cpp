#include "core/book/query.h"
#include "core/climate/heat.h"
#include "core/season/report/season_report.h"

#include <algorithm>

namespace warmbench::season {
namespace {

/// Energy of a zone's mat at a set-point in a day, kWh, with its house's air of that day.
double energyOn(const HouseBook& book, const Zone& zone, Celsius setPoint, Day day) {
    const double side = static_cast<double>(book.get<Bench>(zone.bench).slot.parts) / 1000.0;
    const double area = side * side * zone.rows * zone.cols;
    const climate::Mat mat{area, zone.mat->rated.units() / area, zone.mat->loss.units()};
    const Celsius air = onDay(houseOf(book, zone).air, day);
    return climate::matEnergy(climate::matLoad(mat, setPoint.units(), air.units()), 24);
}

/// Slots that each batch takes in a zone on a day.
std::map<BatchId, int> slotsOn(const HouseBook& book, ZoneId zone, Day day) {
    std::map<BatchId, int> slots;
    for (const StayId id : book.staysMeeting(zone, day, day + 1)) {
        const Stay& stay = book.get<Stay>(id);
        if (book.get<Batch>(stay.batch).state == BatchState::Planned) continue;
        for (const Place& place : stay.places) slots[stay.batch] += place.slots.height * place.slots.width;
    }
    return slots;
}

} // namespace

HeatShares heatShares(const HouseBook& book, const ReportSpan& span) {
    HeatShares shares;
    for (const auto& [id, run] : book.all<MatRun>()) {
        const Zone& zone = book.get<Zone>(run.zone);
        if (!zone.mat) continue;
        for (Day day = run.from; day < run.to && day <= span.seen; day = day + 1) {
            const double energy = energyOn(book, zone, run.setPoint, day);
            const bool inSpan = day >= span.from && day < span.to;
            if (inSpan) shares.all.kilowattHours += energy;
            const std::map<BatchId, int> slots = slotsOn(book, zone.id, day);
            int all = 0;
            for (const auto& [batch, count] : slots) all += count;
            for (const auto& [batch, count] : slots) shares.byBatch[batch] += energy * count / all;
            if (!slots.empty() || !inSpan || energy <= 0) continue;
            shares.all.idle += energy;
            shares.all.idleByZone[zone.id] += energy;
        }
    }
    return shares;
}

} // namespace warmbench::season
