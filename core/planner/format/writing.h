#pragma once

#include "core/exchange/json/text.h"
#include "core/planner/problem.h"

#include <string>
#include <vector>

/// How the writers of problems and answers lay out lists; for core/planner/format only.
namespace warmbench::planner {

/// `[a, b, c]`, each item as `text` gives it.
template <class Item, class Text>
std::string list(const std::vector<Item>& items, Text text) {
    std::string out = "[";
    for (const Item& item : items) out += (out.size() == 1 ? "" : ", ") + text(item);
    return out + "]";
}

/// The same with each item on a line of its own, indented by `depth` steps.
template <class Item, class Text>
std::string lines(const std::vector<Item>& items, Text text, std::size_t depth) {
    if (items.empty()) return "[]";
    const std::string lineStart = "\n" + std::string(2 * depth, ' ');
    std::string out = "[";
    for (const Item& item : items) out += (out.size() == 1 ? "" : ",") + lineStart + text(item);
    return out + " ]";
}

inline std::string rectText(const SlotRect& rect) {
    return "[" + std::to_string(rect.row) + ", " + std::to_string(rect.col) + ", " +
           std::to_string(rect.height) + ", " + std::to_string(rect.width) + "]";
}

/// A batch's id and stays, as an answer's `placed` and a problem's `previous` have them.
inline std::string placedText(const Problem& problem, const std::string& id, int strikeDay,
                              const std::vector<PlacedStay>& stays) {
    const auto stayText = [&](const PlacedStay& stay) {
        return "{ \"zone\": " + json::inQuotes(problem.zones[static_cast<std::size_t>(stay.zone)].id) +
               ", \"from\": " + std::to_string(stay.from) + ", \"to\": " + std::to_string(stay.to) +
               ", \"slots\": " + list(stay.slots, rectText) + " }";
    };
    return "{ \"id\": " + json::inQuotes(id) + ", \"strike_day\": " + std::to_string(strikeDay) +
           ", \"stays\": " + lines(stays, stayText, 3) + " }";
}

} // namespace warmbench::planner
