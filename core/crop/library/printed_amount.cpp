#include "core/crop/library/printed_amount.h"

#include "core/crop/library/sheet.h"
#include "core/crop/library/taxon_name.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace warmbench {
namespace {

/// A whole number from 1 to 100, with or without a per cent sign.
std::optional<int> partsIn(std::string_view word) {
    if (word.ends_with('%')) word.remove_suffix(1);
    const auto value = numberIn(word);
    if (!value || *value < 1 || *value > 100 || std::floor(*value) != *value) return std::nullopt;
    return static_cast<int>(*value);
}

/// `coir 1`, `2 perlite`, `75% sand`, or one word alone, which is one part.
std::optional<MediumComponent> componentIn(std::string_view text, bool alone) {
    const std::size_t first = text.find(' ');
    const std::size_t last = text.rfind(' ');
    if (first == std::string_view::npos) {
        if (!alone) return std::nullopt;
        return MediumComponent{std::string{text}, 1};
    }
    if (const auto parts = partsIn(text.substr(last + 1)))
        return MediumComponent{std::string{text.substr(0, last)}, *parts};
    if (const auto parts = partsIn(text.substr(0, first)))
        return MediumComponent{std::string{text.substr(first + 1)}, *parts};
    return std::nullopt;
}

/// `sand:peat` with `1:2`.
std::optional<std::vector<MediumComponent>> componentsWith(std::string_view names, std::string_view ratio) {
    const std::vector<std::string> components = splitText(names, ':');
    const std::vector<std::string> numbers = splitText(ratio, ':');
    if (components.size() != numbers.size()) return std::nullopt;
    std::vector<MediumComponent> medium;
    for (std::size_t i = 0; i < components.size(); ++i) {
        const auto parts = partsIn(numbers[i]);
        if (!parts) return std::nullopt;
        medium.push_back({components[i], *parts});
    }
    return medium;
}

std::vector<MediumComponent> inLowestTerms(std::vector<MediumComponent> medium) {
    int divisor = 0;
    for (const MediumComponent& component : medium) divisor = std::gcd(divisor, component.parts);
    for (MediumComponent& component : medium) component.parts /= divisor;
    return medium;
}

} // namespace

std::optional<std::vector<MediumComponent>> mediumIn(std::string_view text) {
    constexpr std::array<std::string_view, 5> open{",", "/", "+", "(", " or "};
    for (const std::string_view sign : open)
        if (text.find(sign) != std::string_view::npos) return std::nullopt;

    const std::size_t last = text.rfind(' ');
    if (last != std::string_view::npos && text.find(':', last) != std::string_view::npos) {
        auto medium = componentsWith(text.substr(0, last), text.substr(last + 1));
        if (!medium) return std::nullopt;
        return inLowestTerms(*std::move(medium));
    }
    const std::vector<std::string> parts = splitText(text, ':');
    std::vector<MediumComponent> medium;
    for (const std::string& part : parts) {
        auto component = componentIn(part, parts.size() == 1);
        if (!component) return std::nullopt;
        medium.push_back(*std::move(component));
    }
    if (medium.empty()) return std::nullopt;
    return inLowestTerms(std::move(medium));
}

std::optional<IntRange> takeIn(std::string_view text) {
    const std::size_t dash = text.find('-');
    const auto low = numberIn(text.substr(0, dash));
    const auto high = dash == std::string_view::npos ? low : numberIn(text.substr(dash + 1));
    if (!low || !high || *low < 0 || *high > 100 || *low > *high) return std::nullopt;
    return IntRange{static_cast<int>(std::lround(*low)), static_cast<int>(std::lround(*high))};
}

} // namespace warmbench
