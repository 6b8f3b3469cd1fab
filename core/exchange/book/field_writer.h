#pragma once

#include "core/book/fields.h"
#include "core/exchange/json/text.h"
#include "core/quantity/decimal.h"

#include <cstddef>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

namespace warmbench {

/// Writes whatever can be a field of a thing, and things themselves, as JSON: quantities as exact decimals in
/// their whole units, days as `2027-02-28`, days of any year as `02-28`, words of enums as they are, what is
/// absent as null. Lists and objects that fit stand on one line.
class FieldWriter {
public:
    /// No line becomes wider than `width` for the sake of standing on one.
    explicit FieldWriter(std::size_t width) : m_width(width) {}
    /// Writes everything on one line.
    static FieldWriter oneLine() { return FieldWriter{std::numeric_limits<std::size_t>::max()}; }

    [[nodiscard]] std::string text(bool yes, std::size_t = 0) const { return yes ? "true" : "false"; }
    [[nodiscard]] std::string text(int number, std::size_t = 0) const { return std::to_string(number); }
    template <class Tag>
    [[nodiscard]] std::string text(Id<Tag> id, std::size_t = 0) const {
        return std::to_string(id.number);
    }
    template <class Tag, std::int64_t PerUnit>
    [[nodiscard]] std::string text(Amount<Tag, PerUnit> amount, std::size_t = 0) const {
        return decimal(amount);
    }
    [[nodiscard]] std::string text(const std::string& words, std::size_t = 0) const {
        return json::inQuotes(words);
    }
    [[nodiscard]] std::string text(Day day, std::size_t = 0) const { return json::inQuotes(day.iso()); }
    [[nodiscard]] std::string text(MonthDay day, std::size_t = 0) const { return json::inQuotes(day.iso()); }
    template <class Word>
    requires std::is_enum_v<Word>
    [[nodiscard]] std::string text(Word word, std::size_t = 0) const {
        return json::inQuotes(EnumWords<Word>::words[static_cast<std::size_t>(word)]);
    }
    template <class T>
    [[nodiscard]] std::string text(const std::optional<T>& value, std::size_t indent = 0) const {
        return value ? text(*value, indent) : "null";
    }
    template <class T>
    [[nodiscard]] std::string text(const std::vector<T>& values, std::size_t indent = 0) const {
        return list(values, indent);
    }
    template <class T, std::size_t N>
    [[nodiscard]] std::string text(const std::array<T, N>& values, std::size_t indent = 0) const {
        return list(values, indent);
    }
    template <Described T>
    [[nodiscard]] std::string text(const T& thing, std::size_t indent = 0) const {
        std::vector<std::string> members;
        describe(thing, [&](const char* name, const auto& value) {
            members.push_back(member(name, text(value, indent + indentStep)));
        });
        return joined('{', members, '}', indent);
    }

    /// `"name": value`.
    [[nodiscard]] static std::string member(std::string_view name, const std::string& value) {
        return json::inQuotes(name) + ": " + value;
    }
    /// Texts of items or members, written `indentStep` further in, between their brackets.
    [[nodiscard]] std::string joined(char open, const std::vector<std::string>& parts, char close,
                                     std::size_t indent) const {
        std::size_t length = indent;
        bool oneLine = true;
        for (const std::string& part : parts) {
            length += part.size() + 2;
            oneLine = oneLine && part.find('\n') == std::string::npos;
        }
        oneLine = oneLine && length <= m_width;
        const std::string between = oneLine ? " " : "\n" + std::string(indent + indentStep, ' ');
        std::string all(1, open);
        if (!oneLine) all += between;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            if (i > 0) all += "," + between;
            all += parts[i];
        }
        if (!oneLine) all += "\n" + std::string(indent, ' ');
        return all + close;
    }

    static constexpr std::size_t indentStep = 2;

private:
    template <class List>
    [[nodiscard]] std::string list(const List& values, std::size_t indent) const {
        std::vector<std::string> items;
        items.reserve(values.size());
        for (const auto& value : values) items.push_back(text(value, indent + indentStep));
        return joined('[', items, ']', indent);
    }

    std::size_t m_width;
};

} // namespace warmbench
