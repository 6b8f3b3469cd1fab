#include "core/planner/format/problem_format.h"
#include "core/planner/format/reading.h"

#include <algorithm>

namespace warmbench::planner {
namespace {

using json::Children;
using json::Fields;
using json::Pointer;
using json::Value;

bool fitsSomeZone(const std::vector<Zone>& zones, std::int64_t height, std::int64_t width, bool turn) {
    return std::any_of(zones.begin(), zones.end(), [&](const Zone& zone) {
        return (height <= zone.rows && width <= zone.cols) ||
               (turn && width <= zone.rows && height <= zone.cols);
    });
}

void readFootprint(Reading& reading, const Fields& fields, const Pointer& at, Batch& batch) {
    json::Reader& in = reading.in;
    const Pointer here = at / "footprint";
    Children sides = in.list(fields["footprint"], here, 2, 2);
    std::array<std::int64_t, 2> side{};
    while (const auto number = sides.next())
        side[sides.index()] = in.integer(*number, here / sides.index(), {.least = 1});
    if (const auto turn = fields.find("turn")) batch.turn = in.boolean(*turn, at / "turn");
    if (in.failed()) return;
    if (!fitsSomeZone(reading.problem.zones, side[0], side[1], batch.turn)) {
        in.refuse(here, std::to_string(side[0]) + " x " + std::to_string(side[1]) +
                            " slots fit no zone, expected a footprint within one of them");
        return;
    }
    batch.footprint = {static_cast<int>(side[0]), static_cast<int>(side[1])};
}

StayRule readStay(json::Reader& in, Value value, const Pointer& at) {
    const Fields fields =
        in.object(value, at, {"covers", "low_c", "ideal_c", "high_c", "off_ideal_per_degree_day"},
                  {"base_c", "cap_c", "degree_days", "days"});
    StayRule stay;
    stay.duration = readDuration(in, fields, at);
    const Pointer covers = at / "covers";
    Children names = in.list(fields["covers"], covers, 1);
    while (const auto name = names.next()) {
        const Cover cover = readCover(in, *name, covers / names.index());
        stay.covers = static_cast<std::uint8_t>(stay.covers | 1 << static_cast<int>(cover));
    }
    const TemperatureRange range = readRange(in, fields, at);
    stay.low = range.low;
    stay.high = range.high;
    stay.ideal = readTemperature(in, fields["ideal_c"], at / "ideal_c");
    stay.offIdeal = readMoney(in, fields["off_ideal_per_degree_day"], at / "off_ideal_per_degree_day");
    return stay;
}

void readStrike(json::Reader& in, Value value, const Pointer& at, Batch& batch) {
    Children days = in.list(value, at, 2, 2);
    const std::int64_t first = in.integer(days.next().value_or(Value{}), at / 0, {.least = 0});
    const std::int64_t last = in.integer(days.next().value_or(Value{}), at / 1, {.least = 0});
    if (first > last)
        in.refuse(at, "first day " + std::to_string(first) + " is after last day " + std::to_string(last));
    batch.strikeFirst = planningDay(first);
    batch.strikeLast = planningDay(last);
}

Batch readBatch(Reading& reading, Value value, const Pointer& at, std::size_t index) {
    json::Reader& in = reading.in;
    const Fields fields = in.object(value, at,
                                    {"id", "containers", "footprint", "cuttings", "strike", "due", "value",
                                     "late_per_day", "move_cost", "stays"},
                                    {"turn", "stock", "pin"});
    Batch batch;
    batch.id = in.name(fields["id"], at / "id");
    addName(in, at / "id", reading.occupants, batch.id, reading.problem.held.size() + index);
    const std::int64_t containers = in.integer(fields["containers"], at / "containers", {.least = 1});
    // More than all slots of the house cannot be placed, however many they are.
    batch.containers = static_cast<int>(std::min(containers, mostSlots + 1));
    readFootprint(reading, fields, at, batch);
    batch.cuttings = in.integer(fields["cuttings"], at / "cuttings", {.least = 0});
    const auto stock = fields.find("stock");
    if (stock && stock->kind() != json::Kind::Null)
        batch.stock = readReference(in, *stock, at / "stock", reading.stocks, "stock");
    readStrike(in, fields["strike"], at / "strike", batch);
    if (fields["due"].kind() != json::Kind::Null) batch.due = in.integer(fields["due"], at / "due");
    batch.value = readMoney(in, fields["value"], at / "value");
    batch.latePerDay = readMoney(in, fields["late_per_day"], at / "late_per_day");
    batch.moveCost = readMoney(in, fields["move_cost"], at / "move_cost");
    const Pointer stays = at / "stays";
    Children rules = in.list(fields["stays"], stays, 1);
    while (const auto rule = rules.next()) {
        batch.stays.push_back(readStay(in, *rule, stays / rules.index()));
        if (in.failed()) return batch;
    }
    if (const auto pin = fields.find("pin"))
        batch.pin = readPin(reading, *pin, at / "pin", batch, containers);
    return batch;
}

} // namespace

void readBatches(Reading& reading, Value value, const Pointer& at) {
    Children entries = reading.in.list(value, at);
    while (const auto entry = entries.next()) {
        Batch batch = readBatch(reading, *entry, at / entries.index(), entries.index());
        if (reading.in.failed()) return;
        reading.batches.try_emplace(batch.id, static_cast<int>(entries.index()));
        reading.problem.batches.push_back(std::move(batch));
    }
}

} // namespace warmbench::planner
