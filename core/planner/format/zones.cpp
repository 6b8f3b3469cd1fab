#include "core/planner/format/problem_format.h"
#include "core/planner/format/reading.h"

#include "core/exchange/json/text.h"

#include <algorithm>

namespace warmbench::planner {
namespace {

using json::Children;
using json::Fields;
using json::Pointer;
using json::Value;

void readBlocked(json::Reader& in, Value value, const Pointer& at, Zone& zone) {
    Children slots = in.list(value, at);
    while (const auto entry = slots.next()) {
        const Pointer here = at / slots.index();
        Children numbers = in.list(*entry, here, 2, 2);
        std::array<std::int64_t, 2> slot{};
        while (const auto number = numbers.next())
            slot[numbers.index()] =
                in.integer(*number, here / numbers.index(),
                           {.least = 0, .most = (numbers.index() == 0 ? zone.rows : zone.cols) - 1});
        if (in.failed()) return;
        zone.blocked[static_cast<std::size_t>(slot[0] * zone.cols + slot[1])] = 1;
    }
}

void readFloor(json::Reader& in, Value value, const Pointer& at, int days, Zone& zone) {
    if (value.kind() != json::Kind::List) {
        zone.floor.push_back(readTemperature(in, value, at));
        return;
    }
    Children temperatures = in.list(value, at, 1);
    while (const auto temperature = temperatures.next()) {
        zone.floor.push_back(readTemperature(in, *temperature, at / temperatures.index()));
        if (in.failed()) return;
    }
    if (zone.floor.size() > static_cast<std::size_t>(days))
        in.refuse(at, "found " + std::to_string(zone.floor.size()) +
                          " temperatures, expected at most one for each of " + std::to_string(days) +
                          " days");
}

void readMat(json::Reader& in, Value value, const Pointer& at, Zone& zone) {
    const Fields fields = in.object(value, at, {"set_points_c", "cost_per_day"});
    const Pointer points = at / "set_points_c";
    std::unordered_map<std::int64_t, std::size_t> known;
    Children temperatures = in.list(fields["set_points_c"], points, 1);
    std::optional<std::size_t> twice;
    while (const auto temperature = temperatures.next()) {
        const std::int64_t tenths = readTemperature(in, *temperature, points / temperatures.index());
        if (in.failed()) return;
        if (!known.try_emplace(tenths, temperatures.index()).second && !twice) twice = temperatures.index();
        zone.setPoints.push_back({tenths, 0});
    }
    if (twice) in.refuse(points / *twice, "stands twice, expected each set-point once");
    const std::size_t count = zone.setPoints.size();
    Children costs = in.list(fields["cost_per_day"], at / "cost_per_day", count, count);
    while (const auto cost = costs.next())
        zone.setPoints[costs.index()].costPerDay = readMoney(in, *cost, at / "cost_per_day" / costs.index());
}

/// Rows and columns, and the grid that they span. `slotsLeft` is what all zones may still take.
void readGrid(json::Reader& in, const Fields& fields, const Pointer& at, std::int64_t& slotsLeft,
              Zone& zone) {
    const std::int64_t rows = in.integer(fields["rows"], at / "rows", {.least = 1});
    const std::int64_t cols = in.integer(fields["cols"], at / "cols", {.least = 1});
    if (in.failed()) return;
    if (rows > slotsLeft / cols) {
        in.refuse(at, "found " + std::to_string(rows) + " x " + std::to_string(cols) +
                          " slots, expected at most " + std::to_string(mostSlots) + " in all zones");
        return;
    }
    slotsLeft -= rows * cols;
    zone.rows = static_cast<int>(rows);
    zone.cols = static_cast<int>(cols);
    zone.blocked.assign(static_cast<std::size_t>(rows * cols), 0);
}

} // namespace

void readZones(Reading& reading, Value value, const Pointer& at) {
    json::Reader& in = reading.in;
    std::int64_t slotsLeft = mostSlots;
    Children zones = in.list(value, at);
    while (const auto entry = zones.next()) {
        const Pointer here = at / zones.index();
        const Fields fields =
            in.object(*entry, here, {"id", "rows", "cols", "cover", "floor_c"}, {"blocked", "mat"});
        Zone zone;
        zone.id = in.name(fields["id"], here / "id");
        readGrid(in, fields, here, slotsLeft, zone);
        addName(in, here / "id", reading.zones, zone.id, zones.index());
        if (const auto blocked = fields.find("blocked")) readBlocked(in, *blocked, here / "blocked", zone);
        zone.cover = readCover(in, fields["cover"], here / "cover");
        readFloor(in, fields["floor_c"], here / "floor_c", reading.problem.days, zone);
        zone.hasMat = fields.has("mat");
        if (zone.hasMat) readMat(in, fields["mat"], here / "mat", zone);
        if (in.failed()) return;
        reading.problem.zones.push_back(std::move(zone));
    }
}

void readStocks(Reading& reading, Value value, const Pointer& at) {
    json::Reader& in = reading.in;
    Children stocks = in.list(value, at);
    while (const auto entry = stocks.next()) {
        const Pointer here = at / stocks.index();
        const Fields fields = in.object(*entry, here, {"id", "cuttings"});
        Stock stock;
        stock.id = in.name(fields["id"], here / "id");
        addName(in, here / "id", reading.stocks, stock.id, stocks.index());
        std::optional<std::int64_t> dayBefore;
        std::int64_t totalBefore = 0;
        const Pointer cuttings = here / "cuttings";
        Children steps = in.list(fields["cuttings"], cuttings);
        while (const auto pair = steps.next()) {
            const Pointer step = cuttings / steps.index();
            Children numbers = in.list(*pair, step, 2, 2);
            const std::int64_t day = in.integer(numbers.next().value_or(Value{}), step / 0, {.least = 0});
            const std::int64_t total = in.integer(numbers.next().value_or(Value{}), step / 1, {.least = 0});
            if (dayBefore && day <= *dayBefore)
                in.refuse(step / 0, "found day " + std::to_string(day) + ", expected one after day " +
                                        std::to_string(*dayBefore));
            if (total < totalBefore)
                in.refuse(step / 1, "found " + std::to_string(total) +
                                        ", expected at least the total before, " +
                                        std::to_string(totalBefore));
            if (in.failed()) return;
            // Nothing is struck on farthestDay or later.
            if (day < farthestDay) stock.steps.push_back({static_cast<int>(day), total});
            dayBefore = day;
            totalBefore = total;
        }
        reading.problem.stocks.push_back(std::move(stock));
    }
}

} // namespace warmbench::planner
