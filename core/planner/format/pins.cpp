#include "core/planner/format/reading.h"

#include "core/exchange/json/text.h"

#include <algorithm>
#include <map>

namespace warmbench::planner {
namespace {

using json::Children;
using json::Fields;
using json::Pointer;
using json::Value;

/// Cuttings that can be struck on `day`; nothing where labour is not limited.
std::optional<std::int64_t> capacity(const Problem& problem, int day) {
    if (problem.strikeCapacity.empty()) return std::nullopt;
    return problem.strikeCapacity[static_cast<std::size_t>(day) % problem.strikeCapacity.size()];
}

int readPinnedDay(Reading& reading, Value value, const Pointer& at, const Batch& batch) {
    json::Reader& in = reading.in;
    const int day = planningDay(in.integer(value, at, {.least = 0}));
    if (day < batch.strikeFirst || day > batch.strikeLast || day >= reading.problem.days)
        in.refuse(at, "found day " + json::shown(value) + ", expected one of strike " +
                          std::to_string(batch.strikeFirst) + ".." + std::to_string(batch.strikeLast) +
                          " and below " + std::to_string(reading.problem.days));
    const auto most = capacity(reading.problem, day);
    if (most && *most < batch.cuttings)
        in.refuse(at, std::to_string(batch.cuttings) + " cuttings are above strike_capacity of day " +
                          std::to_string(day) + ", " + std::to_string(*most));
    return day;
}

int readPinnedZone(Reading& reading, Value value, const Pointer& at, const Batch& batch) {
    json::Reader& in = reading.in;
    const int index = readReference(in, value, at, reading.zones, "zone");
    if (in.failed()) return index;
    const Zone& zone = reading.zone(index);
    if (!batch.stays.front().accepts(zone.cover))
        in.refuse(at, std::string("cover ") + coverNames[static_cast<std::size_t>(zone.cover)] + " of " +
                          json::inQuotes(zone.id) + " is not in covers of the first stay");
    return index;
}

bool isFootprint(const Batch& batch, const WideRect& rect) {
    const auto [height, width] = batch.footprint;
    return (rect.height == height && rect.width == width) ||
           (batch.turn && rect.height == width && rect.width == height);
}

std::string clashText(const SlotOwners::Clash& clash) {
    const std::string place = " " + std::to_string(clash.slot.row) + "," + std::to_string(clash.slot.col);
    if (!clash.owner) return "covers the blocked slot" + place;
    return "overlaps another pinned slot of the batch at" + place;
}

std::vector<SlotRect> readPinnedSlots(Reading& reading, Value value, const Pointer& at, const Batch& batch,
                                      int zoneIndex, std::int64_t containers) {
    json::Reader& in = reading.in;
    std::vector<SlotRect> slots;
    const Zone& zone = reading.zone(zoneIndex);
    const auto count = static_cast<std::size_t>(containers);
    const int owner = static_cast<int>(reading.problem.batches.size());
    Children rects = in.list(value, at, count, count);
    while (const auto entry = rects.next()) {
        const Pointer here = at / rects.index();
        const WideRect rect = readRect(in, *entry, here);
        if (!isFootprint(batch, rect)) in.refuse(here, "is no footprint of this batch");
        const SlotRect slot = onGrid(in, here, rect, zone);
        if (in.failed()) return slots;
        if (const auto clash =
                reading.pinned.take(zone, static_cast<std::size_t>(zoneIndex), slot, owner, owner))
            in.refuse(here, clashText(*clash));
        slots.push_back(slot);
    }
    return slots;
}

/// Batches whose pins stand in one zone from one day on, by index.
using PinGroups = std::map<std::pair<int, int>, std::vector<std::size_t>>;

PinGroups pinGroups(const std::vector<Batch>& batches) {
    PinGroups groups;
    for (std::size_t i = 0; i < batches.size(); ++i) {
        const auto& pin = batches[i].pin;
        if (pin && pin->strikeDay && !pin->slots.empty()) groups[{*pin->zone, *pin->strikeDay}].push_back(i);
    }
    return groups;
}

struct PinClash {
    std::size_t batch = 0;
    std::size_t other = 0; ///< the earlier one
};

/// The first batch whose pinned slots an earlier pin of the same day covers too.
std::optional<PinClash> firstPinClash(const Reading& reading) {
    std::optional<PinClash> first;
    SlotOwners taken;
    std::vector<std::size_t> order; // batch of each owner
    for (const auto& [zoneAndDay, members] : pinGroups(reading.problem.batches)) {
        const int groupStart = static_cast<int>(order.size());
        const int zoneIndex = zoneAndDay.first;
        for (const std::size_t member : members) {
            order.push_back(member);
            const int owner = static_cast<int>(order.size()) - 1;
            for (const SlotRect& slot : reading.problem.batches[member].pin->slots) {
                const auto clash = taken.take(reading.zone(zoneIndex), static_cast<std::size_t>(zoneIndex),
                                              slot, owner, groupStart);
                if (clash && (!first || member < first->batch))
                    first = {member, order[static_cast<std::size_t>(*clash->owner)]};
            }
            if (first && first->batch == member) break;
        }
    }
    return first;
}

} // namespace

Pin readPin(Reading& reading, Value value, const Pointer& at, const Batch& batch, std::int64_t containers) {
    json::Reader& in = reading.in;
    const Fields fields = in.object(value, at, {}, {"strike_day", "zone", "slots"});
    Pin pin;
    if (const auto day = fields.find("strike_day"))
        pin.strikeDay = readPinnedDay(reading, *day, at / "strike_day", batch);
    if (const auto zone = fields.find("zone")) pin.zone = readPinnedZone(reading, *zone, at / "zone", batch);
    const auto slots = fields.find("slots");
    if (!slots || in.failed()) return pin;
    if (pin.zone)
        pin.slots = readPinnedSlots(reading, *slots, at / "slots", batch, *pin.zone, containers);
    else
        in.refuse(at / "slots", "found slots alone, expected a zone beside them");
    return pin;
}

void checkPinsTogether(Reading& reading, const Pointer& batches) {
    json::Reader& in = reading.in;
    if (in.failed()) return;
    const Problem& problem = reading.problem;
    if (const auto clash = firstPinClash(reading))
        in.refuse(batches / clash->batch / "pin",
                  "same slots and day as the pin of " + json::inQuotes(problem.batches[clash->other].id));
    std::unordered_map<int, std::int64_t> struck;
    for (std::size_t i = 0; i < problem.batches.size(); ++i) {
        const auto& pin = problem.batches[i].pin;
        if (!pin || !pin->strikeDay) continue;
        const std::int64_t needed = struck[*pin->strikeDay] += problem.batches[i].cuttings;
        const auto most = capacity(problem, *pin->strikeDay);
        if (most && needed > *most)
            in.refuse(batches / i / "pin" / "strike_day",
                      "the pins of day " + std::to_string(*pin->strikeDay) + " need " +
                          std::to_string(needed) + " cuttings, strike_capacity is " + std::to_string(*most));
    }
}

} // namespace warmbench::planner
