#include "core/planner/format/reading.h"

#include "core/exchange/json/text.h"

#include <algorithm>

namespace warmbench::planner {
namespace {

/// Whether something held can stay in its zone with the mat at one set-point (-1: off).
bool suits(const Held& held, const Zone& zone, int setPoint) {
    const auto length = stayLength(held.duration, zone, setPoint, 0);
    for (int day = 0; length && day < *length; ++day) {
        const std::int64_t warmth = rootZone(zone, setPoint, day);
        if (warmth < held.low || warmth > held.high) return false;
    }
    return length.has_value();
}

bool suitsSomehow(const Held& held, const Zone& zone) {
    for (int setPoint = -1; setPoint < static_cast<int>(zone.setPoints.size()); ++setPoint)
        if (suits(held, zone, setPoint)) return true;
    return false;
}

std::string clashText(const Reading& reading, const SlotOwners::Clash& clash, const Held& held) {
    const std::string place = " " + std::to_string(clash.slot.row) + "," + std::to_string(clash.slot.col);
    if (!clash.owner) return "covers the blocked slot" + place;
    const auto owner = static_cast<std::size_t>(*clash.owner);
    const std::string& id = owner < reading.problem.held.size() ? reading.problem.held[owner].id : held.id;
    return "overlaps " + json::inQuotes(id) + " at" + place + ", expected a free slot";
}

} // namespace

void readHeld(Reading& reading, json::Value value, const json::Pointer& at) {
    json::Reader& in = reading.in;
    SlotOwners taken;
    json::Children entries = in.list(value, at);
    while (const auto entry = entries.next()) {
        const json::Pointer here = at / entries.index();
        const json::Fields fields = in.object(*entry, here, {"id", "zone", "slots", "low_c", "high_c"},
                                              {"base_c", "cap_c", "degree_days", "days"});
        Held held;
        held.duration = readDuration(in, fields, here);
        held.id = in.name(fields["id"], here / "id");
        addName(in, here / "id", reading.occupants, held.id, entries.index());
        held.zone = readReference(in, fields["zone"], here / "zone", reading.zones, "zone");
        const TemperatureRange range = readRange(in, fields, here);
        held.low = range.low;
        held.high = range.high;
        const json::Pointer slots = here / "slots";
        json::Children rects = in.list(fields["slots"], slots, 1);
        if (in.failed()) return;
        const Zone& zone = reading.zone(held.zone);
        while (const auto rect = rects.next()) {
            const json::Pointer place = slots / rects.index();
            const SlotRect slot = onGrid(in, place, readRect(in, *rect, place), zone);
            if (in.failed()) return;
            const auto clash = taken.take(zone, static_cast<std::size_t>(held.zone), slot,
                                          static_cast<int>(entries.index()), 0);
            if (clash) in.refuse(place, clashText(reading, *clash, held));
            held.slots.push_back(slot);
        }
        reading.problem.held.push_back(std::move(held));
    }
}

void checkHeldSuits(Reading& reading, const json::Pointer& held) {
    if (reading.in.failed()) return;
    for (std::size_t i = 0; i < reading.problem.held.size(); ++i) {
        const Zone& zone = reading.zone(reading.problem.held[i].zone);
        if (!suitsSomehow(reading.problem.held[i], zone))
            reading.in.refuse(held / i, "no state of zone " + json::inQuotes(zone.id) +
                                            " suits it, expected one that keeps it between low_c and high_c "
                                            "for at most " +
                                            std::to_string(longestStay) + " days");
    }
}

} // namespace warmbench::planner
