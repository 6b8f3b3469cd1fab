#include "core/book/query.h"
#include "core/book/rules.h"
#include "core/quantity/decimal.h"

#include <algorithm>
#include <cmath>

/// Rules of the nursery, its houses, benches, zones and mats.
namespace warmbench {
namespace {

/// A house is at most so long, in millimetres: a kilometre.
constexpr Millimetres longestSide{1'000'000};
/// A bench or zone has at most so many rows or columns.
constexpr int mostRows = 1000;

bool sensible(Celsius temperature) {
    return temperature >= Celsius{-500} && temperature <= Celsius{600};
}

bool hasReadings(const HouseBook& book, const ReadingPlace& place) {
    return !book.readingsOf(place, Channel::RootZone).empty() ||
           !book.readingsOf(place, Channel::Air).empty() ||
           !book.readingsOf(place, Channel::Humidity).empty();
}

bool overlap(const Bench& a, const Bench& b) {
    const auto right = [](const Bench& bench) { return bench.x + bench.slot * bench.cols; };
    const auto front = [](const Bench& bench) { return bench.y + bench.slot * bench.rows; };
    return a.x < right(b) && b.x < right(a) && a.y < front(b) && b.y < front(a);
}

} // namespace

Outcome checkThing(const HouseBook&, const Nursery& nursery) {
    const std::string place = kindName<Nursery>.one;
    if (nursery.id.number != 1) return Refusal{place, phrase("a book has one, number 1")};
    if (nursery.latitude < Latitude{-900} || nursery.latitude > Latitude{900})
        return Refusal{place, phrase("latitude %1 is not between -90 and 90", decimal(nursery.latitude))};
    if (std::abs(nursery.seasonShiftDays) > 90)
        return Refusal{place, phrase("seasons shifted by %1 days; expected at most 90 either way",
                                     nursery.seasonShiftDays)};
    if (nursery.surenessPermille < 500 || nursery.surenessPermille > 999)
        return Refusal{place, phrase("sureness must lie between 50 and 99.9 %")};
    for (const int cuttings : nursery.strikesByWeekday)
        if (cuttings < 0) return Refusal{place, phrase("hands for fewer than 0 cuttings a day")};
    for (const Money cost :
         {nursery.pricePerKilowattHour, nursery.scatterCost, nursery.moveCost, nursery.offIdealCost})
        if (cost < Money{0}) return Refusal{place, phrase("a cost is below 0")};
    if (nursery.lateCostPermille < 0) return Refusal{place, phrase("the cost of a late plant is below 0")};
    return std::nullopt;
}

Outcome checkThing(const HouseBook& book, const HandDay& day) {
    if (day.cuttings < 0) return Refusal{day.day.iso(), phrase("hands for fewer than 0 cuttings")};
    if (book.withKey<HandDay>(day.day).size() > 1)
        return Refusal{day.day.iso(), phrase("the hands of this day stand twice")};
    return std::nullopt;
}

Outcome checkThing(const HouseBook& book, const House& house) {
    if (house.name.empty()) return Refusal{"house", phrase("it needs a name")};
    if (book.withKey<House>(house.name).size() > 1)
        return Refusal{house.name, phrase("two houses have this name")};
    for (const Millimetres side : {house.length, house.width})
        if (side < Millimetres{500} || side > longestSide)
            return Refusal{house.name,
                           phrase("a side of %1 mm; expected half a metre to a kilometre", side.parts)};
    for (const MonthlyCelsius& year : {house.air, house.unheatedRootZone})
        for (const Celsius month : year)
            if (!sensible(month)) return Refusal{house.name, phrase("%1; expected -50 to 60 °C", month)};
    return std::nullopt;
}

Outcome checkUnused(const HouseBook& book, const House& house) {
    for (const BenchId id : book.benchesOf(house.id))
        return Refusal{house.name,
                       phrase("it still has %1 in it; remove that first", book.get<Bench>(id).name)};
    return hasReadings(book, {std::nullopt, house.id})
               ? Outcome{Refusal{house.name,
                                 phrase("readings of a logger are kept of it; remove those first")}}
               : std::nullopt;
}

Outcome checkDependents(const HouseBook& book, const House& house) {
    for (const BenchId id : book.benchesOf(house.id))
        if (auto broken = checkThing(book, book.get<Bench>(id))) return broken;
    return std::nullopt;
}

Outcome checkThing(const HouseBook& book, const Bench& bench) {
    if (bench.name.empty()) return Refusal{"bench", phrase("it needs a name")};
    const House& house = book.get<House>(bench.house);
    if (bench.rows < 1 || bench.cols < 1 || bench.rows > mostRows || bench.cols > mostRows)
        return Refusal{bench.name,
                       phrase("%1 rows and %2 columns; expected 1 to 1000 of each", bench.rows, bench.cols)};
    if (bench.slot < Millimetres{20} || bench.slot > Millimetres{2000})
        return Refusal{bench.name, phrase("a slot of %1 mm; expected 20 to 2000 mm", bench.slot.parts)};
    const bool inside = bench.x >= Millimetres{0} && bench.y >= Millimetres{0} &&
                        bench.x + bench.slot * bench.cols <= house.length &&
                        bench.y + bench.slot * bench.rows <= house.width;
    if (!inside) return Refusal{bench.name, phrase("it does not fit inside %1", house.name)};
    for (const BenchId id : book.benchesOf(bench.house)) {
        const Bench& other = book.get<Bench>(id);
        if (id == bench.id) continue;
        if (other.name == bench.name)
            return Refusal{bench.name, phrase("two benches of %1 have this name", house.name)};
        if (overlap(bench, other)) return Refusal{bench.name, phrase("it stands across %1", other.name)};
    }
    return std::nullopt;
}

Outcome checkUnused(const HouseBook& book, const Bench& bench) {
    for (const ZoneId id : book.zonesOf(bench.id))
        return Refusal{bench.name,
                       phrase("it still has zone %1; remove that first", book.get<Zone>(id).name)};
    return std::nullopt;
}

Outcome checkDependents(const HouseBook& book, const Bench& bench) {
    for (const ZoneId id : book.zonesOf(bench.id))
        if (auto broken = checkThing(book, book.get<Zone>(id))) return broken;
    return std::nullopt;
}

Outcome checkThing(const HouseBook& book, const Zone& zone) {
    if (zone.name.empty()) return Refusal{"zone", phrase("it needs a name")};
    const Bench& bench = book.get<Bench>(zone.bench);
    const std::string title = bench.name + " · " + zone.name;
    if (!zone.onBench().within(bench.rows, bench.cols)) return Refusal{title, phrase("it leaves the bench")};
    for (const ZoneId id : book.zonesOf(zone.bench)) {
        const Zone& other = book.get<Zone>(id);
        if (id == zone.id) continue;
        if (other.name == zone.name) return Refusal{title, phrase("two zones of this bench have this name")};
        if (other.onBench().overlaps(zone.onBench()))
            return Refusal{title, phrase("it lies across zone %1", other.name)};
    }
    for (const Slot slot : zone.blocked)
        if (slot.row < 0 || slot.col < 0 || slot.row >= zone.rows || slot.col >= zone.cols)
            return Refusal{title, phrase("a blocked slot lies outside it")};
    if (std::set<Slot>(zone.blocked.begin(), zone.blocked.end()).size() != zone.blocked.size())
        return Refusal{title, phrase("a blocked slot is named twice")};
    if (!zone.mat) return std::nullopt;
    const Mat& mat = *zone.mat;
    if (mat.rated <= Watts{0}) return Refusal{title, phrase("its mat has no power")};
    if (mat.loss < HeatLoss{0}) return Refusal{title, phrase("its mat's loss of heat is below 0")};
    if (mat.setPoints.empty()) return Refusal{title, phrase("its mat has no set-point")};
    for (std::size_t i = 0; i < mat.setPoints.size(); ++i) {
        if (mat.setPoints[i] < Celsius{0} || mat.setPoints[i] > Celsius{450})
            return Refusal{title, phrase("a set-point of %1; expected 0 to 45 °C", mat.setPoints[i])};
        if (i > 0 && mat.setPoints[i] <= mat.setPoints[i - 1])
            return Refusal{title, phrase("its mat's set-points do not rise")};
    }
    return std::nullopt;
}

Outcome checkUnused(const HouseBook& book, const Zone& zone) {
    for (const StayId id : book.staysIn(zone.id)) {
        const Batch* batch = book.find<Batch>(book.get<Stay>(id).batch);
        return Refusal{zone.name, phrase("%1 stands or has stood there; move it first",
                                         batch ? phrase("%1", batch->code) : phrase("a batch"))};
    }
    if (!book.matRunsOf(zone.id).empty())
        return Refusal{zone.name, phrase("its mat has runs; take them out first")};
    if (hasReadings(book, {zone.id, std::nullopt}))
        return Refusal{zone.name, phrase("readings of a logger are kept of it; remove those first")};
    return std::nullopt;
}

Outcome checkDependents(const HouseBook& book, const Zone& zone) {
    for (const StayId id : book.staysIn(zone.id))
        if (auto broken = checkThing(book, book.get<Stay>(id))) return broken;
    for (const MatRunId id : book.matRunsOf(zone.id))
        if (auto broken = checkThing(book, book.get<MatRun>(id))) return broken;
    return std::nullopt;
}

Outcome checkThing(const HouseBook& book, const MatRun& run) {
    const Zone& zone = book.get<Zone>(run.zone);
    const std::string title = zoneTitle(book, run.zone);
    if (!zone.mat) return Refusal{title, phrase("it has no mat to run")};
    if (run.to <= run.from) return Refusal{title, phrase("a run of its mat ends before it begins")};
    const auto& offered = zone.mat->setPoints;
    if (std::find(offered.begin(), offered.end(), run.setPoint) == offered.end())
        return Refusal{title, phrase("%1 is no set-point of its mat", run.setPoint)};
    if (const auto out = zone.mat->outOfOrderFrom; out && run.to > *out)
        return Refusal{title, phrase("its mat is out of order from %1 on", *out)};
    for (const MatRunId id : book.matRunsMeeting(run.zone, run.from, run.to))
        if (id != run.id)
            return Refusal{title, phrase("its mat has two set-points on %1",
                                         std::max(run.from, book.get<MatRun>(id).from))};
    return std::nullopt;
}

} // namespace warmbench
