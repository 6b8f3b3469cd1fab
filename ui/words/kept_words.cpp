#include "ui/words/kept_words.h"

#include <QFile>

#include <algorithm>
#include <map>
#include <optional>

namespace warmbench::ui {
namespace {

constexpr int fewestLetters = 2;

/// A pattern in pieces: what stands before its first place, between places, and behind the last.
struct KeptPattern {
    std::string pattern;
    std::vector<std::string> between;
    std::vector<std::size_t> places; ///< which argument each place takes
    int letters = 0;                 ///< of its own
};

KeptPattern inPieces(const std::string& pattern) {
    KeptPattern pieces{pattern, {std::string()}, {}, 0};
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        const bool place =
            pattern[i] == '%' && i + 1 < pattern.size() && pattern[i + 1] >= '1' && pattern[i + 1] <= '9';
        if (place) {
            pieces.places.push_back(static_cast<std::size_t>(pattern[++i] - '1'));
            pieces.between.emplace_back();
        } else {
            pieces.between.back() += pattern[i];
            if (std::isalpha(static_cast<unsigned char>(pattern[i])) != 0) ++pieces.letters;
        }
    }
    return pieces;
}

/// All patterns of core, as resources/translation/renew.py lists them.
const std::vector<KeptPattern>& keptPatterns() {
    static const std::vector<KeptPattern> patterns = [] {
        std::vector<KeptPattern> read;
        QFile file(QStringLiteral(":/translation/patterns.txt"));
        if (!file.open(QIODevice::ReadOnly)) return read;
        for (const QByteArray& line : file.readAll().split('\n'))
            if (KeptPattern pieces = inPieces(line.toStdString()); pieces.letters >= fewestLetters)
                read.push_back(std::move(pieces));
        std::stable_sort(read.begin(), read.end(),
                         [](const KeptPattern& a, const KeptPattern& b) { return a.letters > b.letters; });
        return read;
    }();
    return patterns;
}

/// What stands in the places; nothing where the words are not of this pattern.
std::optional<std::map<std::size_t, std::string>> filling(const KeptPattern& kept, const std::string& words) {
    std::map<std::size_t, std::string> arguments;
    if (!words.starts_with(kept.between.front())) return std::nullopt;
    std::size_t at = kept.between.front().size();
    for (std::size_t i = 0; i < kept.places.size(); ++i) {
        const std::string& after = kept.between[i + 1];
        const bool last = i + 1 == kept.places.size();
        if (last && (words.size() < at + after.size() || !words.ends_with(after))) return std::nullopt;
        const std::size_t end = last ? words.size() - after.size() : words.find(after, at + 1);
        if (end == std::string::npos || end <= at) return std::nullopt;
        const std::string found = words.substr(at, end - at);
        const auto [kind, isNew] = arguments.emplace(kept.places[i], found);
        if (!isNew && kind->second != found) return std::nullopt;
        at = end + after.size();
    }
    if (at != words.size()) return std::nullopt;
    return arguments;
}

/// Whether it is a pattern without places.
bool isKept(const Phrase& phrase) {
    return std::any_of(keptPatterns().begin(), keptPatterns().end(),
                       [&](const KeptPattern& kept) { return kept.pattern == phrase.pattern(); });
}

std::optional<double> decimalIn(const std::string& words) {
    bool whole = false;
    const double number = QByteArray::fromStdString(words).toDouble(&whole);
    return whole ? std::optional(number) : std::nullopt;
}

Phrase::Argument argumentOf(const std::string& words) {
    if (const auto day = Day::fromIso(words)) return *day;
    const auto isDigit = [](unsigned char c) { return std::isdigit(c) != 0; };
    if (words.size() < 10 && (words.front() != '0' || words.size() == 1) &&
        std::all_of(words.begin(), words.end(), isDigit))
        return std::int64_t{std::stoll(words)};
    if (const auto degrees = words.find(" °C"); degrees != std::string::npos && degrees + 4 == words.size())
        if (const auto number = decimalIn(words.substr(0, degrees))) return Celsius::fromUnits(*number);
    return std::vector<Phrase>{readKeptWords(words)};
}

} // namespace

Phrase readKeptWords(const std::string& words) {
    for (const KeptPattern& kept : keptPatterns()) {
        const auto found = filling(kept, words);
        if (!found) continue;
        std::vector<Phrase::Argument> arguments;
        for (const auto& [place, filled] : *found) arguments.push_back(argumentOf(filled));
        return {kept.pattern, std::move(arguments)};
    }
    // What was put together of several: a place and what is wrong there, or one after another.
    for (const char* pattern : {"%1: %2", "%1; %2", "%1, %2"}) {
        const std::string between(pattern + 2, 2);
        const auto at = between == ", " ? words.rfind(between) : words.find(between);
        if (at == std::string::npos || at == 0 || at + 2 == words.size()) continue;
        Phrase first = readKeptWords(words.substr(0, at));
        Phrase second = readKeptWords(words.substr(at + 2));
        if (first.arguments().empty() && second.arguments().empty() && !isKept(first) && !isKept(second))
            continue;
        return {pattern, {std::vector<Phrase>{std::move(first)}, std::vector<Phrase>{std::move(second)}}};
    }
    return words;
}

Phrase withDates(const Phrase& phrase, Day first) {
    std::vector<Phrase::Argument> arguments = phrase.arguments();
    const bool isDay = phrase.pattern() == "day %1" || phrase.pattern() == "days %1 to %2";
    for (Phrase::Argument& argument : arguments) {
        if (const auto* day = std::get_if<std::int64_t>(&argument); day && isDay)
            argument = first + static_cast<int>(*day);
        else if (auto* phrases = std::get_if<std::vector<Phrase>>(&argument))
            for (Phrase& one : *phrases) one = withDates(one, first);
    }
    if (!isDay) return {phrase.pattern(), std::move(arguments)};
    return {arguments.size() == 1 ? "%1" : "%1 to %2", std::move(arguments)};
}

} // namespace warmbench::ui
