#include "core/planner/reasons/words.h"

#include "core/quantity/phrase.h"

#include <array>
#include <cstdlib>
#include <vector>

namespace warmbench::planner {

namespace {

std::string decimal(std::int64_t tenths) {
    std::string text = tenths < 0 ? "-" : "";
    text += std::to_string(std::abs(tenths) / 10);
    if (tenths % 10 != 0) text += "." + std::to_string(std::abs(tenths) % 10);
    return text;
}

/// What `counted` and `coverNamesOf` are called with, marked for those who translate.
[[maybe_unused]] constexpr std::array piecesOfWords{
    pattern("1 container"), pattern("%1 containers"), pattern("1 cutting"), pattern("%1 cuttings"),
    pattern("1 slot"),      pattern("%1 slots"),      pattern("1 day"),     pattern("%1 days"),
    pattern("open"),        pattern("bag"),           pattern("tent"),      pattern("mist"),
    pattern("fog"),         pattern("%1 or %2")};

} // namespace

std::string counted(std::int64_t count, const std::string& noun) {
    return std::to_string(count) + " " + noun + (count == 1 ? "" : "s");
}

std::string warmth(std::int64_t low, std::int64_t high) {
    return low == high ? decimal(low) + " °C" : phrase("%1 to %2 °C", decimal(low), decimal(high)).text();
}

std::string dayRange(int first, int last) {
    return first >= last ? phrase("day %1", first).text() : phrase("days %1 to %2", first, last).text();
}

std::string money(std::int64_t thousandths) {
    // Up to the next hundredth, so that nothing looks cheaper than it is.
    const std::int64_t hundredths = (thousandths + 9) / 10;
    const std::string cents = std::to_string(100 + hundredths % 100);
    return std::to_string(hundredths / 100) + "." + cents.substr(1);
}

std::string coverNamesOf(const StayRule& rule) {
    std::vector<std::string> names;
    for (std::size_t cover = 0; cover < coverNames.size(); ++cover)
        if (rule.accepts(static_cast<Cover>(cover))) names.emplace_back(coverNames[cover]);
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0) text += i + 1 == names.size() ? " or " : ", ";
        text += names[i];
    }
    return text;
}

} // namespace warmbench::planner
