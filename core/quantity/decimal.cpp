#include "core/quantity/decimal.h"

namespace warmbench {

std::string decimalText(std::int64_t parts, int places) {
    const bool negative = parts < 0;
    // The magnitude as unsigned, so that the smallest integer has one.
    std::uint64_t rest =
        negative ? 0U - static_cast<std::uint64_t>(parts) : static_cast<std::uint64_t>(parts);
    std::string fraction;
    for (int i = 0; i < places; ++i, rest /= 10) {
        const char digit = static_cast<char>('0' + rest % 10);
        if (digit != '0' || !fraction.empty()) fraction.insert(fraction.begin(), digit);
    }
    std::string text = (negative ? "-" : "") + std::to_string(rest);
    if (!fraction.empty()) text += "." + fraction;
    return text;
}

} // namespace warmbench
