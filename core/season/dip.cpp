#include "core/season/dip.h"

#include <regex>
#include <string>

namespace warmbench::season {

std::optional<DipStrength> dipStrength(std::string_view hormone) {
    static const std::regex strength(R"((\d{1,6})(?:\s*(?:-|to|–)\s*(\d{1,6}))?\s*(?:ppm|mg/[lL])\b)");
    // No dip, or strengths that are no one range.
    static const std::regex other(R"(powder|talc|\bgel\b|\d\s*(?:g/|%|[mu]M))", std::regex::icase);
    const std::string words(hormone);
    std::smatch found;
    if (std::regex_search(words, other) || !std::regex_search(words, found, strength)) return std::nullopt;
    if (std::regex_search(found.suffix().first, words.end(), strength)) return std::nullopt;
    DipStrength dip;
    dip.lowPpm = std::stoi(found[1].str());
    dip.highPpm = found[2].matched ? std::stoi(found[2].str()) : dip.lowPpm;
    if (dip.lowPpm < 1 || dip.highPpm < dip.lowPpm || dip.highPpm > concentratePpm) return std::nullopt;
    return dip;
}

double concentrateMillilitres(int dipPpm, int fromPpm) {
    return 100.0 * dipPpm / fromPpm;
}

} // namespace warmbench::season
