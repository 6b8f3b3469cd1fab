#include "core/book/starting_figures.h"

#include <algorithm>
#include <cmath>

namespace warmbench {
namespace {

// Common practice, no source: starting figures, to be replaced by her own.
constexpr Millimetres aisle{700};
constexpr Millimetres fromWall{300};
constexpr int widestBench = 8;
constexpr int longestZone = 16;
constexpr double wattsPerSquareMetre = 130;
constexpr HeatLoss usualLoss{650};

MonthlyCelsius months(std::initializer_list<int> degrees) {
    MonthlyCelsius year{};
    std::transform(degrees.begin(), degrees.end(), year.begin(),
                   [](int one) { return Celsius{std::int64_t{one} * 10}; });
    return year;
}

template <class Things>
std::string numbered(const std::string& what, const Things& things) {
    return what + " " + std::to_string(things.size() + 1);
}

} // namespace

House firstHouse(const HouseBook& book) {
    return {{},
            numbered("House", book.all<House>()),
            HouseKind::Glass,
            Millimetres{12'000},
            Millimetres{6'000},
            months({8, 8, 10, 13, 16, 19, 21, 21, 18, 14, 10, 8}),
            months({7, 7, 9, 12, 15, 18, 20, 20, 17, 13, 9, 7})};
}

Bench firstBench(const HouseBook& book, HouseId house) {
    const House& room = book.get<House>(house);
    Bench bench;
    bench.house = house;
    bench.name = numbered("Bench", book.benchesOf(house));
    bench.x = fromWall;
    bench.y = fromWall;
    for (const BenchId id : book.benchesOf(house)) {
        const Bench& other = book.get<Bench>(id);
        bench.y = std::max(bench.y, other.y + other.slot * other.rows + aisle);
    }
    const auto slotsIn = [&](Millimetres side, Millimetres start) {
        return static_cast<int>((side - start - fromWall).parts / bench.slot.parts);
    };
    bench.rows = std::clamp(slotsIn(room.width, bench.y), 1, widestBench);
    bench.cols = std::clamp(slotsIn(room.length, bench.x), 1, 1000);
    return bench;
}

Zone firstZone(const HouseBook& book, BenchId id) {
    const Bench& bench = book.get<Bench>(id);
    Zone zone;
    zone.bench = id;
    const auto count = static_cast<int>(book.zonesOf(id).size());
    zone.name =
        count < 26 ? std::string(1, static_cast<char>('A' + count)) : numbered("Zone", book.zonesOf(id));
    for (const ZoneId other : book.zonesOf(id)) {
        const Zone& one = book.get<Zone>(other);
        zone.col = std::max(zone.col, one.col + one.cols);
    }
    zone.rows = bench.rows;
    zone.cols = std::clamp(bench.cols - zone.col, 1, longestZone);
    return zone;
}

Mat firstMat(const HouseBook& book, const Zone& zone) {
    std::size_t mats = 0;
    for (const auto& [id, one] : book.all<Zone>()) mats += one.mat ? 1 : 0;
    const double side = static_cast<double>(book.get<Bench>(zone.bench).slot.parts) / 1000;
    const double area = side * side * zone.rows * zone.cols;
    return {"Mat " + std::to_string(mats + 1),
            Watts::fromUnits(std::round(area * wattsPerSquareMetre)),
            usualLoss,
            {Celsius{150}, Celsius{180}, Celsius{200}, Celsius{220}}};
}

} // namespace warmbench
