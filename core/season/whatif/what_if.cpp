#include "core/season/whatif/what_if.h"

#include "core/book/query.h"
#include "core/season/report/season_report.h"

#include <algorithm>

namespace warmbench::season {
namespace {

/// Heat lost by a bench over a mat, where none is known: a start, common practice, no source.
constexpr HeatLoss usualLoss{650};

MonthlyCelsius moved(MonthlyCelsius year, Celsius by) {
    for (Celsius& month : year) month += by;
    return year;
}

Zone withMat(Zone zone, const OtherMat& other) {
    if (!zone.mat) zone.mat = Mat{zone.name, other.rated, usualLoss, {}};
    zone.mat->rated = std::max(zone.mat->rated, other.rated);
    zone.mat->outOfOrderFrom.reset();
    std::vector<Celsius>& points = zone.mat->setPoints;
    if (std::find(points.begin(), points.end(), other.setPoint) == points.end())
        points.insert(std::upper_bound(points.begin(), points.end(), other.setPoint), other.setPoint);
    return zone;
}

void countSlots(SeasonFigures& figures, const HouseBook& book, Day from, Day to) {
    for (Day day = from; day < to; day = day + 1) {
        int taken = 0;
        for (const auto& [id, zone] : book.all<Zone>()) taken += slotsTaken(book, id, day);
        figures.slotDays += taken;
        figures.fullestDay = std::max(figures.fullestDay, taken);
    }
    for (const auto& [id, zone] : book.all<Zone>()) figures.slots += zone.usableSlots();
}

} // namespace

std::vector<Command> commandsOf(const HouseBook& book, const Variation& variation) {
    std::vector<Command> commands;
    if (variation.handsPercent != 100 || variation.surenessPermille) {
        Nursery nursery = book.nursery();
        for (int& cuttings : nursery.strikesByWeekday)
            cuttings = static_cast<int>(std::int64_t{cuttings} * variation.handsPercent / 100);
        nursery.surenessPermille = variation.surenessPermille.value_or(nursery.surenessPermille);
        commands.push_back(Command{Put<Nursery>{nursery}});
    }
    if (variation.warmer != Celsius{})
        for (const auto& [id, house] : book.all<House>()) {
            House other = house;
            other.air = moved(house.air, variation.warmer);
            other.unheatedRootZone = moved(house.unheatedRootZone, variation.warmer);
            commands.push_back(Command{Put<House>{other}});
        }
    if (variation.mat)
        if (const Zone* zone = book.find<Zone>(variation.mat->zone))
            commands.push_back(Command{Put<Zone>{withMat(*zone, *variation.mat)}});
    return commands;
}

Result<HouseBook> varied(HouseBook book, const Variation& variation) {
    const std::vector<Command> commands = commandsOf(book, variation);
    if (commands.empty()) return book;
    if (auto change = book.perform(Command{Group{phrase("Try something").text(), commands}}); !change)
        return change.refusal();
    return book;
}

Command keepCommand(const HouseBook& book, const Variation& variation, const Proposal& plan) {
    Group group{phrase("Keep what was tried, with its plan").text(), commandsOf(book, variation)};
    group.commands.push_back(plan.command());
    return Command{group};
}

SeasonFigures figuresOf(const HouseBook& planned, const RecipeLibrary& library, const PlanRequest& request,
                        const Proposal& plan) {
    SeasonFigures figures;
    const Day to = request.from + (request.days + daysAfter);
    for (int i = 0; i < request.days; ++i)
        for (const BatchId id : planned.batchesStruckOn(request.from + i)) {
            ++figures.batches;
            figures.cuttings += planned.get<Batch>(id).cuttings();
        }
    for (const NotPlaced& one : plan.notPlaced) figures.left += one.cuttings;
    for (const TargetCoverage& coverage :
         coverageOf(planned, library, request, forecastFor(planned, request))) {
        ++figures.targets;
        figures.plants += coverage.expected;
        figures.lateDays += coverage.lateDays;
        const bool relied = coverage.state == CoverageState::Met || coverage.need.state == NeedState::Covered;
        figures.covered += relied ? 1 : 0;
    }
    figures.kilowattHours = heatShares(planned, {request.from, to, to}).all.kilowattHours;
    figures.heat = Money::fromUnits(figures.kilowattHours * planned.nursery().pricePerKilowattHour.units());
    countSlots(figures, planned, request.from, to);
    return figures;
}

} // namespace warmbench::season
