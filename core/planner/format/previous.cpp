#include "core/planner/format/problem_format.h"
#include "core/planner/format/reading.h"

#include "core/exchange/json/text.h"

namespace warmbench::planner {
namespace {

using json::Children;
using json::Fields;
using json::Pointer;
using json::Value;

/// Days may lie before day 0: the plan may have been made for an earlier start.
constexpr json::Bounds anyDay{.least = -farthestDay, .most = farthestDay};

bool isOnGrid(const WideRect& rect, const Zone& zone) {
    return rect.row + rect.height <= zone.rows && rect.col + rect.width <= zone.cols;
}

/// One stay; nothing where its zone is gone, or smaller now.
std::optional<PlacedStay> readPreviousStay(Reading& reading, Value value, const Pointer& at) {
    json::Reader& in = reading.in;
    const Fields fields = in.object(value, at, {"zone", "from", "to", "slots"});
    PlacedStay stay;
    const auto zone = reading.zones.find(in.name(fields["zone"], at / "zone"));
    stay.from = static_cast<int>(in.integer(fields["from"], at / "from", anyDay));
    stay.to = static_cast<int>(in.integer(fields["to"], at / "to", anyDay));
    if (stay.to <= stay.from)
        in.refuse(at / "to", "found " + json::shown(fields["to"]) + ", expected a day after from");
    bool stands = zone != reading.zones.end();
    if (stands) stay.zone = zone->second;
    const Pointer slots = at / "slots";
    Children rects = in.list(fields["slots"], slots);
    while (const auto rect = rects.next()) {
        const WideRect wide = readRect(in, *rect, slots / rects.index());
        if (in.failed()) return std::nullopt;
        stands = stands && isOnGrid(wide, reading.zone(stay.zone));
        if (stands)
            stay.slots.push_back({static_cast<int>(wide.row), static_cast<int>(wide.col),
                                  static_cast<int>(wide.height), static_cast<int>(wide.width)});
    }
    if (!stands) return std::nullopt;
    return stay;
}

void readPreviousBatch(Reading& reading, Value value, const Pointer& at, Names& listed, std::size_t index) {
    json::Reader& in = reading.in;
    const Fields fields = in.object(value, at, {"id", "strike_day", "stays"});
    const std::string id = in.name(fields["id"], at / "id");
    addName(in, at / "id", listed, id, index);
    const std::int64_t strikeDay = in.integer(fields["strike_day"], at / "strike_day", anyDay);
    std::vector<PlacedStay> stays;
    bool stands = true;
    Children entries = in.list(fields["stays"], at / "stays");
    while (const auto entry = entries.next()) {
        auto stay = readPreviousStay(reading, *entry, at / "stays" / entries.index());
        if (in.failed()) return;
        stands = stands && stay;
        if (stands) stays.push_back(std::move(*stay));
    }
    if (!stands) stays.clear();
    if (!stays.empty() && strikeDay != stays.front().from)
        in.refuse(at / "strike_day", "found " + json::shown(fields["strike_day"]) +
                                         ", expected the day on which its first stay begins, " +
                                         std::to_string(stays.front().from));
    const auto batch = reading.batches.find(id);
    if (in.failed() || batch == reading.batches.end()) return;
    reading.problem.batches[static_cast<std::size_t>(batch->second)].previous = std::move(stays);
}

} // namespace

void readPrevious(Reading& reading, Value value, const Pointer& at) {
    Names listed;
    Children entries = reading.in.list(value, at);
    while (const auto entry = entries.next()) {
        readPreviousBatch(reading, *entry, at / entries.index(), listed, entries.index());
        if (reading.in.failed()) return;
    }
}

} // namespace warmbench::planner
