#include "core/crop/library/taxon_name.h"

#include <array>
#include <utility>

namespace warmbench {
namespace {

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(' ');
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

void replaceAll(std::string& text, std::string_view what, std::string_view with) {
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + with.size()))
        text.replace(at, what.size(), with);
}

} // namespace

std::string nameKey(std::string_view name) {
    using Spelling = std::pair<std::string_view, std::string_view>;
    constexpr std::array<Spelling, 3> spellings{Spelling{"×", " x "}, Spelling{"‘", "'"}, Spelling{"’", "'"}};
    std::string text{name};
    for (const auto& [printed, plain] : spellings) replaceAll(text, printed, plain);
    std::string key;
    for (const std::string& word : splitText(text, ' ')) key += (key.empty() ? "" : " ") + word;
    for (char& letter : key)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return key;
}

std::string speciesKey(std::string_view name) {
    const std::string key = nameKey(name);
    const std::string species{trimmed(std::string_view{key}.substr(0, key.find_first_of("'(")))};
    return species.find(' ') == std::string::npos ? std::string{} : species;
}

std::string genusKey(std::string_view name) {
    std::string key = nameKey(name);
    if (key.starts_with("x ")) key.erase(0, 2);
    return key.substr(0, key.find(' '));
}

std::vector<std::string> splitText(std::string_view text, char separator) {
    std::vector<std::string> parts;
    while (!text.empty()) {
        const std::size_t end = text.find(separator);
        if (const std::string_view part = trimmed(text.substr(0, end)); !part.empty())
            parts.emplace_back(part);
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
    }
    return parts;
}

} // namespace warmbench
