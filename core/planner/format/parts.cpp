#include "core/planner/format/problem_format.h"
#include "core/planner/format/reading.h"

#include "core/exchange/json/text.h"

#include <algorithm>

namespace warmbench::planner {

using json::Fields;
using json::Pointer;
using json::Value;

Refusal tooLarge(std::string place) {
    return {std::move(place), "found more than 256 MiB, expected a problem of at most that"};
}

void expectText(json::Reader& in, Value value, const Pointer& at, const std::string& expected) {
    if (value.kind() != json::Kind::String || value.string() != expected)
        in.refuse(at, "found " + json::shown(value) + ", expected " + expected);
}

void expectVersion(json::Reader& in, Value value, const Pointer& at, int version) {
    if (in.integer(value, at) != version)
        in.refuse(at, "found version " + json::shown(value) + ", expected " + std::to_string(version));
}

std::int64_t readTemperature(json::Reader& in, Value value, const Pointer& at) {
    return in.number(value, at, 1);
}

std::int64_t readMoney(json::Reader& in, Value value, const Pointer& at) {
    return in.number(value, at, 2, {.least = 0});
}

int planningDay(std::int64_t day) {
    return static_cast<int>(std::min<std::int64_t>(day, farthestDay));
}

Cover readCover(json::Reader& in, Value value, const Pointer& at) {
    std::string names;
    for (std::size_t i = 0; i < coverNames.size(); ++i) {
        if (value.kind() == json::Kind::String && value.string() == coverNames[i])
            return static_cast<Cover>(i);
        names += (i == 0 ? "" : ", ") + std::string(coverNames[i]);
    }
    in.refuse(at, "found " + json::shown(value) + ", expected one of " + names);
    return Cover::Open;
}

Duration readDuration(json::Reader& in, const Fields& fields, const Pointer& at) {
    Duration duration;
    const bool counted = fields.has("days");
    if (counted == fields.has("degree_days"))
        in.refuse(at, std::string("found ") + (counted ? "both" : "neither") +
                          " of degree_days and days, expected one of them");
    if (counted)
        duration.days =
            static_cast<int>(in.integer(fields["days"], at / "days", {.least = 1, .most = longestStay}));
    else
        duration.degreeDays = in.number(fields["degree_days"], at / "degree_days", 1, {.least = 0});
    if (!counted && !fields.has("base_c"))
        in.refuse(at / "base_c", "missing, expected a value beside degree_days");
    if (const auto base = fields.find("base_c")) duration.base = readTemperature(in, *base, at / "base_c");
    if (const auto cap = fields.find("cap_c")) duration.cap = readTemperature(in, *cap, at / "cap_c");
    if (!counted && duration.cap && *duration.cap < duration.base)
        in.refuse(at / "cap_c", "found " + json::shown(fields["cap_c"]) + ", expected at least base_c " +
                                    json::shown(fields["base_c"]));
    return duration;
}

TemperatureRange readRange(json::Reader& in, const Fields& fields, const Pointer& at) {
    const TemperatureRange range{readTemperature(in, fields["low_c"], at / "low_c"),
                                 readTemperature(in, fields["high_c"], at / "high_c")};
    if (range.low > range.high)
        in.refuse(at / "low_c",
                  json::shown(fields["low_c"]) + " is above high_c " + json::shown(fields["high_c"]));
    return range;
}

void addName(json::Reader& in, const Pointer& at, Names& names, const std::string& id, std::size_t index) {
    if (in.failed()) return;
    if (!names.try_emplace(id, static_cast<int>(index)).second)
        in.refuse(at, json::inQuotes(id) + " stands twice, expected an id of its own");
}

int readReference(json::Reader& in, Value value, const Pointer& at, const Names& names, const char* kind) {
    const std::string id = in.name(value, at);
    const auto known = names.find(id);
    if (known != names.end()) return known->second;
    in.refuse(at, std::string("unknown ") + kind + " " + json::inQuotes(id));
    return 0;
}

WideRect readRect(json::Reader& in, Value value, const Pointer& at) {
    json::Children entries = in.list(value, at, 4, 4);
    std::array<std::int64_t, 4> numbers{};
    while (const auto entry = entries.next())
        numbers[entries.index()] =
            in.integer(*entry, at / entries.index(), {.least = entries.index() < 2 ? 0 : 1});
    return {numbers[0], numbers[1], numbers[2], numbers[3]};
}

SlotRect onGrid(json::Reader& in, const Pointer& at, const WideRect& rect, const Zone& zone) {
    if (rect.row + rect.height > zone.rows || rect.col + rect.width > zone.cols) {
        in.refuse(at, "leaves the grid of " + json::inQuotes(zone.id) + ", expected within " +
                          std::to_string(zone.rows) + " x " + std::to_string(zone.cols) + " slots");
        return {};
    }
    return {static_cast<int>(rect.row), static_cast<int>(rect.col), static_cast<int>(rect.height),
            static_cast<int>(rect.width)};
}

} // namespace warmbench::planner
