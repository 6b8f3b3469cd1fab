#include "core/book/starting_figures.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace warmbench {
namespace {

// Common practice, no source: starting figures, to be replaced by her own.
constexpr Millimetres aisle{700};
constexpr Millimetres fromWall{300};
constexpr int widestBench = 8;
constexpr int longestZone = 16;
constexpr int mostSlots = 1000; // along a bench
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

/// How much is left free beside a bench.
struct Gap {
    Millimetres wall, bench;
};

/// The largest bench that fits between the walls and the other benches of its house, of several the one
/// nearest to the back left corner. Wherever a largest one stands, it can be pushed back and left until it
/// meets a wall or another bench's gap, so that no other corners need to be tried; from each it grows a row
/// at a time and gets as many columns as that leaves.
std::optional<Bench> largestBench(const HouseBook& book, Bench bench, Gap gap) {
    const House& room = book.get<House>(bench.house);
    struct Taken {
        Millimetres left, back, right, front;
    };
    std::vector<Taken> others;
    std::vector<Millimetres> lefts{gap.wall};
    std::vector<Millimetres> backs{gap.wall};
    for (const BenchId id : book.benchesOf(bench.house)) {
        const Bench& other = book.get<Bench>(id);
        others.push_back({other.x - gap.bench, other.y - gap.bench,
                          other.x + other.slot * other.cols + gap.bench,
                          other.y + other.slot * other.rows + gap.bench});
        lefts.push_back(others.back().right);
        backs.push_back(others.back().front);
    }
    std::sort(lefts.begin(), lefts.end());
    std::sort(backs.begin(), backs.end());
    const auto slotsIn = [&](Millimetres side) {
        return side < Millimetres{0} ? 0 : static_cast<int>(side.parts / bench.slot.parts);
    };
    const auto columns = [&](Millimetres x, Millimetres y, int rows) {
        Millimetres right = room.length - gap.wall;
        for (const Taken& one : others) {
            if (one.front <= y || y + bench.slot * rows <= one.back || one.right <= x) continue;
            right = std::min(right, one.left);
        }
        return std::min(slotsIn(right - x), mostSlots);
    };
    std::optional<Bench> largest;
    for (const Millimetres y : backs)
        for (const Millimetres x : lefts)
            for (int rows = 1; rows <= std::min(widestBench, slotsIn(room.width - gap.wall - y)); ++rows) {
                const int cols = columns(x, y, rows);
                if (cols < 1 || (largest && rows * cols <= largest->rows * largest->cols)) continue;
                bench.x = x;
                bench.y = y;
                bench.rows = rows;
                bench.cols = cols;
                largest = bench;
            }
    return largest;
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

Bench unplacedBench(const HouseBook& book, HouseId house) {
    Bench bench;
    bench.house = house;
    const auto taken = [&](const std::string& name) {
        return std::any_of(book.benchesOf(house).begin(), book.benchesOf(house).end(),
                           [&](BenchId id) { return book.get<Bench>(id).name == name; });
    };
    std::size_t number = book.benchesOf(house).size() + 1;
    do bench.name = "Bench " + std::to_string(number++);
    while (taken(bench.name));
    return bench;
}

std::optional<Bench> firstBench(const HouseBook& book, HouseId house) {
    const Bench like = unplacedBench(book, house);
    if (auto apart = largestBench(book, like, {fromWall, aisle})) return apart;
    return largestBench(book, like, {Millimetres{0}, Millimetres{0}});
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
