#include "core/quantity/number.h"

#include <array>
#include <charconv>
#include <cmath>

namespace warmbench {

std::optional<double> numberFromText(std::string_view text) {
    if (!text.empty() && text.front() == '+') {
        text.remove_prefix(1);
        if (!text.empty() && text.front() == '-') return std::nullopt;
    }
    double value = 0;
    const char* end = text.data() + text.size();
    const auto [stopped, error] = std::from_chars(text.data(), end, value);
    if (error != std::errc{} || stopped != end || !std::isfinite(value)) return std::nullopt;
    return value;
}

std::optional<std::int64_t> wholeNumberFromText(std::string_view text) {
    constexpr double largest = 9007199254740992.0; // 2^53: every whole number up to here is a double
    const auto value = numberFromText(text);
    if (!value || *value != std::trunc(*value) || std::abs(*value) > largest) return std::nullopt;
    return static_cast<std::int64_t>(*value);
}

std::string numberText(double value) {
    std::array<char, 40> text{};
    const double size = std::abs(value);
    const bool plain = size == 0 || (size >= 1e-5 && size < 1e16); // written out, not as 1e+06
    char* const end = text.data() + text.size();
    const auto written = plain ? std::to_chars(text.data(), end, value, std::chars_format::fixed)
                               : std::to_chars(text.data(), end, value);
    return {text.data(), written.ptr};
}

} // namespace warmbench
