#include "core/book/container_numbers.h"

#include <algorithm>
#include <charconv>
#include <optional>
#include <set>

namespace warmbench {
namespace {

constexpr int highestNumber = 100'000;

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::optional<int> readNumber(std::string_view text) {
    text = trimmed(text);
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size() || number < 1 || number > highestNumber)
        return std::nullopt;
    return number;
}

} // namespace

std::string containerNumbers(std::vector<int> numbers) {
    std::sort(numbers.begin(), numbers.end());
    numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
    std::string text;
    for (std::size_t i = 0; i < numbers.size();) {
        std::size_t end = i;
        while (end + 1 < numbers.size() && numbers[end + 1] == numbers[end] + 1) ++end;
        if (!text.empty()) text += ", ";
        text += std::to_string(numbers[i]);
        if (end > i) text += (end == i + 1 ? ", " : "-") + std::to_string(numbers[end]);
        i = end + 1;
    }
    return text;
}

Result<std::vector<int>> readContainerNumbers(std::string_view text) {
    std::set<int> numbers;
    while (true) {
        const auto comma = std::min(text.find(','), text.size());
        const std::string_view part = trimmed(text.substr(0, comma));
        const auto dash = part.find('-');
        const auto first = readNumber(part.substr(0, std::min(dash, part.size())));
        const auto last = dash == std::string_view::npos ? first : readNumber(part.substr(dash + 1));
        if (!first || !last || *last < *first)
            return Refusal{"containers", part.empty() ? phrase("no number was found; expected such as 1-4, 7")
                                                      : phrase("'%1'; expected such as 1-4, 7", part)};
        for (int number = *first; number <= *last; ++number) numbers.insert(number);
        if (comma == text.size()) break;
        text.remove_prefix(comma + 1);
    }
    return std::vector<int>(numbers.begin(), numbers.end());
}

} // namespace warmbench
