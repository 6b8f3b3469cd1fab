#pragma once

#include "core/quantity/day.h"
#include "core/quantity/quantity.h"

#include <cstdint>
#include <iosfwd>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace warmbench {

/// A sentence, or part of one, that a person is to read: a pattern in English, with `%1`, `%2`, ... where its
/// arguments go. The command line prints it as it is; the window says it in its language, with days, numbers
/// and temperatures as written there. A pattern is found by resources/translation/renew.py where `phrase`
/// or `pattern` is called with it.
class Phrase {
public:
    /// What goes into a place: words that are the same in every language, such as a name; a number; a day; a
    /// temperature; or phrases, parted by commas.
    using Argument = std::variant<std::string, std::int64_t, Day, Celsius, std::vector<Phrase>>;

    Phrase() = default;
    /// Words with nothing to be filled in.
    Phrase(std::string words) : m_pattern(std::move(words)) {}
    Phrase(const char* words) : m_pattern(words) {}
    Phrase(std::string pattern, std::vector<Argument> arguments)
        : m_pattern(std::move(pattern)), m_arguments(std::move(arguments)) {}

    [[nodiscard]] const std::string& pattern() const { return m_pattern; }
    [[nodiscard]] const std::vector<Argument>& arguments() const { return m_arguments; }
    [[nodiscard]] bool empty() const { return m_pattern.empty(); }
    /// In English: days as `2027-02-28`, temperatures as `18.5 °C`.
    [[nodiscard]] std::string text() const;

    friend bool operator==(const Phrase& a, const Phrase& b) { return a.text() == b.text(); }
    friend std::ostream& operator<<(std::ostream& out, const Phrase& phrase);

private:
    std::string m_pattern;
    std::vector<Argument> m_arguments;
};

/// A pattern with its places filled by `%1`, `%2`, ... to `%9`, each by what `put` gives for its number from
/// 0 on; a place for which there is no argument stays.
template <class Text, class Put>
[[nodiscard]] std::string filledPattern(const Text& pattern, std::size_t arguments, const Put& put) {
    std::string said;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        const bool place = pattern[i] == '%' && i + 1 < pattern.size() && pattern[i + 1] >= '1' &&
                           pattern[i + 1] < static_cast<char>('1' + static_cast<int>(arguments));
        if (place)
            said += put(static_cast<std::size_t>(pattern[++i] - '1'));
        else
            said += pattern[i];
    }
    return said;
}

/// What a value becomes in a phrase.
template <class T>
[[nodiscard]] Phrase::Argument phraseArgument(T&& value) {
    using Plain = std::remove_cvref_t<T>;
    if constexpr (std::is_same_v<Plain, Phrase>)
        return std::vector<Phrase>{std::forward<T>(value)};
    else if constexpr (std::is_same_v<Plain, Day> || std::is_same_v<Plain, Celsius> ||
                       std::is_same_v<Plain, std::vector<Phrase>>)
        return std::forward<T>(value);
    else if constexpr (std::is_integral_v<Plain>)
        return static_cast<std::int64_t>(value);
    else
        return std::string(std::forward<T>(value));
}

/// A pattern and its arguments, in the order of their numbers.
template <class... A>
[[nodiscard]] Phrase phrase(const char* pattern, A&&... arguments) {
    return {std::string(pattern),
            std::vector<Phrase::Argument>{phraseArgument(std::forward<A>(arguments))...}};
}

/// Marks a pattern that is kept under a name or in a list, for those who translate.
[[nodiscard]] constexpr const char* pattern(const char* words) {
    return words;
}

} // namespace warmbench
