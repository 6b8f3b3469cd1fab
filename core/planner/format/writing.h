#pragma once

#include "core/house/slot.h"

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

} // namespace warmbench::planner
