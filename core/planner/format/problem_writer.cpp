#include "core/planner/format/problem_format.h"

#include "core/exchange/json/text.h"
#include "core/planner/format/writing.h"
#include "core/quantity/decimal.h"

#include <algorithm>

namespace warmbench::planner {
namespace {

using json::inQuotes;

std::string celsius(std::int64_t tenths) {
    return decimalText(tenths, 1);
}

std::string money(std::int64_t hundredths) {
    return decimalText(hundredths, 2);
}

std::string wholeNumber(std::int64_t number) {
    return std::to_string(number);
}

/// One field that follows others.
std::string field(const char* key, const std::string& value) {
    return std::string(", \"") + key + "\": " + value;
}

std::vector<std::string> blockedSlots(const Zone& zone) {
    std::vector<std::string> slots;
    for (int row = 0; row < zone.rows; ++row)
        for (int col = 0; col < zone.cols; ++col)
            if (zone.blocked[static_cast<std::size_t>(row) * static_cast<std::size_t>(zone.cols) +
                             static_cast<std::size_t>(col)])
                slots.push_back("[" + std::to_string(row) + ", " + std::to_string(col) + "]");
    return slots;
}

std::string zoneText(const Zone& zone) {
    std::string text = "{ \"id\": " + inQuotes(zone.id) + field("rows", std::to_string(zone.rows)) +
                       field("cols", std::to_string(zone.cols));
    const auto asIs = [](const std::string& item) { return item; };
    if (const auto blocked = blockedSlots(zone); !blocked.empty())
        text += field("blocked", list(blocked, asIs));
    text += field("cover", inQuotes(coverNames[static_cast<std::size_t>(zone.cover)])) +
            field("floor_c", list(zone.floor, celsius));
    if (zone.hasMat)
        text += field("mat",
                      "{ \"set_points_c\": " +
                          list(zone.setPoints, [](const SetPoint& p) { return celsius(p.tenths); }) +
                          field("cost_per_day",
                                list(zone.setPoints, [](const SetPoint& p) { return money(p.costPerDay); })) +
                          " }");
    return text + " }";
}

std::string stockText(const Stock& stock) {
    const auto step = [](const StockStep& each) {
        return "[" + std::to_string(each.day) + ", " + std::to_string(each.total) + "]";
    };
    return "{ \"id\": " + inQuotes(stock.id) + field("cuttings", list(stock.steps, step)) + " }";
}

std::string durationText(const Duration& duration) {
    if (duration.days) return field("days", std::to_string(*duration.days));
    return field("base_c", celsius(duration.base)) +
           (duration.cap ? field("cap_c", celsius(*duration.cap)) : "") +
           field("degree_days", celsius(duration.degreeDays));
}

std::string heldText(const Problem& problem, const Held& held) {
    return "{ \"id\": " + inQuotes(held.id) +
           field("zone", inQuotes(problem.zones[static_cast<std::size_t>(held.zone)].id)) +
           field("slots", list(held.slots, rectText)) + field("low_c", celsius(held.low)) +
           field("high_c", celsius(held.high)) + durationText(held.duration) + " }";
}

std::string stayText(const StayRule& stay) {
    std::vector<std::string> covers;
    for (std::size_t i = 0; i < coverNames.size(); ++i)
        if (stay.accepts(static_cast<Cover>(i))) covers.push_back(inQuotes(coverNames[i]));
    const auto asIs = [](const std::string& item) { return item; };
    return "{ \"covers\": " + list(covers, asIs) + field("low_c", celsius(stay.low)) +
           field("ideal_c", celsius(stay.ideal)) + field("high_c", celsius(stay.high)) +
           field("off_ideal_per_degree_day", money(stay.offIdeal)) + durationText(stay.duration) + " }";
}

std::string pinText(const Problem& problem, const Pin& pin) {
    std::string text;
    if (pin.strikeDay) text += field("strike_day", std::to_string(*pin.strikeDay));
    if (pin.zone) text += field("zone", inQuotes(problem.zones[static_cast<std::size_t>(*pin.zone)].id));
    if (!pin.slots.empty()) text += field("slots", list(pin.slots, rectText));
    return text.empty() ? "{}" : "{ " + text.substr(2) + " }"; // without the first comma
}

std::string previousText(const Problem& problem) {
    std::vector<const Batch*> placed;
    for (const Batch& batch : problem.batches)
        if (batch.previous) placed.push_back(&batch);
    const auto text = [&](const Batch* batch) {
        const std::vector<PlacedStay>& stays = *batch->previous;
        return placedText(problem, batch->id, stays.empty() ? 0 : stays.front().from, stays);
    };
    return ",\n  \"previous\": " + lines(placed, text, 2) +
           ",\n  \"change_cost\": " + money(problem.changeCost);
}

std::string batchText(const Problem& problem, const Batch& batch) {
    return "{ \"id\": " + inQuotes(batch.id) + field("containers", std::to_string(batch.containers)) +
           field("footprint", "[" + std::to_string(batch.footprint.height) + ", " +
                                  std::to_string(batch.footprint.width) + "]") +
           field("turn", batch.turn ? "true" : "false") + field("cuttings", std::to_string(batch.cuttings)) +
           (batch.stock ? field("stock", inQuotes(problem.stocks[static_cast<std::size_t>(*batch.stock)].id))
                        : "") +
           field("strike",
                 "[" + std::to_string(batch.strikeFirst) + ", " + std::to_string(batch.strikeLast) + "]") +
           field("due", batch.due ? std::to_string(*batch.due) : "null") +
           field("value", money(batch.value)) + field("late_per_day", money(batch.latePerDay)) +
           field("move_cost", money(batch.moveCost)) + field("stays", lines(batch.stays, stayText, 3)) +
           (batch.pin ? field("pin", pinText(problem, *batch.pin)) : "") + " }";
}

} // namespace

std::string problemText(const Problem& problem) {
    const auto held = [&](const Held& each) { return heldText(problem, each); };
    const auto batch = [&](const Batch& each) { return batchText(problem, each); };
    std::string text = "{\n"
                       "  \"format\": \"warmbench-planning-problem\", \"version\": " +
                       std::to_string(problem.version) +
                       ",\n"
                       "  \"start\": " +
                       inQuotes(problem.start) + ", \"days\": " + std::to_string(problem.days) +
                       ",\n  \"zones\": " + lines(problem.zones, zoneText, 2) +
                       ",\n  \"stocks\": " + lines(problem.stocks, stockText, 2);
    if (!problem.strikeCapacity.empty())
        text += ",\n  \"strike_capacity\": " + list(problem.strikeCapacity, wholeNumber);
    return text + ",\n  \"held\": " + lines(problem.held, held, 2) +
           ",\n  \"batches\": " + lines(problem.batches, batch, 2) +
           ",\n  \"scatter_cost\": " + money(problem.scatterCost) +
           (problem.version == 2 ? previousText(problem) : "") + "\n}\n";
}

} // namespace warmbench::planner
