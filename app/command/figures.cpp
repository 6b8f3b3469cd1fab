#include "app/command/figures.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <iostream>

namespace warmbench::app {

void Figures::add(const std::string& key, nlohmann::ordered_json value, std::string label, std::string text) {
    m_json[key] = std::move(value);
    m_lines.emplace_back(std::move(label), std::move(text));
}

void Figures::print(bool json) const {
    if (json) {
        printJson(m_json);
        return;
    }
    std::size_t width = 0;
    for (const auto& line : m_lines) width = std::max(width, line.first.size());
    for (const auto& [label, text] : m_lines)
        std::cout << label << std::string(width + 2 - label.size(), ' ') << text << '\n';
}

void printJson(const nlohmann::ordered_json& json) {
    std::cout << json.dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace) << '\n';
}

std::string fixedText(double value, int decimals) {
    std::array<char, 400> text{};
    const auto written =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed, decimals);
    const std::string found{text.data(), written.ptr};
    // What rounds to zero has no sign.
    const bool negativeZero = found.starts_with('-') && found.find_first_not_of("-0.") == std::string::npos;
    return negativeZero ? found.substr(1) : found;
}

std::string percentText(double share) {
    return fixedText(100 * share, 1) + " %";
}

} // namespace warmbench::app
