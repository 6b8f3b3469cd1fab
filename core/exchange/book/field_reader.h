#pragma once

#include "core/book/field_rules.h"
#include "core/book/fields.h"
#include "core/exchange/json/reader.h"
#include "core/exchange/json/text.h"
#include "core/quantity/decimal.h"

#include <string>
#include <string_view>
#include <vector>

namespace warmbench {

/// Whether a field may be left out of an object: texts, lists, marks (true or false) and what a thing may be
/// without, which are then empty, false or absent. All else must be there.
template <class T>
inline constexpr bool mayBeLeftOut = std::is_same_v<T, bool> || std::is_same_v<T, std::string>;
template <class T>
inline constexpr bool mayBeLeftOut<std::optional<T>> = true;
template <class T>
inline constexpr bool mayBeLeftOut<std::vector<T>> = true;
template <class T>
inline constexpr bool mayBeLeftOut<Figure<T>> = mayBeLeftOut<T>;

/// Reads, strictly, whatever FieldWriter writes. What is refused is told to the json::Reader with its
/// pointer.
class FieldReader {
public:
    explicit FieldReader(json::Reader& reader) : m_reader(reader) {}

    void read(json::Value value, const json::Pointer& at, bool& yes) { yes = m_reader.boolean(value, at); }
    void read(json::Value value, const json::Pointer& at, int& number) {
        number = static_cast<int>(m_reader.integer(value, at, {-largestNumber, largestNumber}));
    }
    template <class Tag>
    void read(json::Value value, const json::Pointer& at, Id<Tag>& id) {
        id.number = m_reader.integer(value, at, {1, largestId});
    }
    template <class Tag, std::int64_t PerUnit>
    void read(json::Value value, const json::Pointer& at, Amount<Tag, PerUnit>& amount) {
        constexpr std::int64_t most = largestNumber * PerUnit;
        amount.parts = m_reader.number(value, at, decimalPlaces(PerUnit), {-most, most});
    }
    void read(json::Value value, const json::Pointer& at, std::string& text) {
        text = m_reader.string(value, at);
        if (auto fault = textFault(text)) refuse(value, at, "text, without " + *fault);
    }
    void read(json::Value value, const json::Pointer& at, Day& day) {
        if (const auto found = Day::fromIso(m_reader.string(value, at)))
            day = *found;
        else
            refuse(value, at, "a day such as \"2027-02-28\"");
    }
    void read(json::Value value, const json::Pointer& at, MonthDay& day) {
        if (const auto found = MonthDay::fromIso(m_reader.string(value, at)))
            day = *found;
        else
            refuse(value, at, "a month and a day such as \"02-28\"");
    }
    template <class Word>
    requires std::is_enum_v<Word>
    void read(json::Value value, const json::Pointer& at, Word& word) {
        const std::string found = m_reader.string(value, at);
        const auto& words = EnumWords<Word>::words;
        std::string known;
        for (std::size_t i = 0; i < words.size(); ++i) {
            if (found == words[i]) {
                word = static_cast<Word>(i);
                return;
            }
            known += (i == 0 ? "" : ", ") + json::inQuotes(words[i]);
        }
        refuse(value, at, "one of " + known);
    }
    template <class T>
    void read(json::Value value, const json::Pointer& at, std::optional<T>& maybe) {
        maybe.reset();
        if (value.kind() != json::Kind::Null) read(value, at, maybe.emplace());
    }
    template <class T>
    void read(json::Value value, const json::Pointer& at, std::vector<T>& values) {
        values.clear();
        json::Children items = m_reader.list(value, at, 0, longestList);
        while (const auto item = items.next()) read(*item, at / items.index(), values.emplace_back());
    }
    template <class T, std::size_t N>
    void read(json::Value value, const json::Pointer& at, std::array<T, N>& values) {
        json::Children items = m_reader.list(value, at, N, N);
        while (const auto item = items.next()) read(*item, at / items.index(), values[items.index()]);
    }
    /// Fields that are left out keep what they have.
    template <Described T>
    void read(json::Value value, const json::Pointer& at, T& thing) {
        const FieldNames& names = fieldNames<T>();
        const json::Fields fields = m_reader.object(value, at, names.required, names.optional);
        describe(thing, [&](const char* name, auto& field) {
            if (const auto found = fields.find(name)) read(*found, at / std::string_view(name), field);
        });
    }

private:
    struct FieldNames {
        std::vector<std::string_view> required;
        std::vector<std::string_view> optional;
    };
    template <class T>
    static const FieldNames& fieldNames() {
        static const FieldNames names = [] {
            FieldNames found;
            T example{};
            describe(example, [&]<class Field>(const char* name, Field&) {
                // A nursery's settings all have defaults.
                const bool optional = mayBeLeftOut<Field> || std::is_same_v<T, Nursery>;
                (optional ? found.optional : found.required).emplace_back(name);
            });
            return found;
        }();
        return names;
    }

    void refuse(json::Value value, const json::Pointer& at, const std::string& expected) {
        m_reader.refuse(at, "found " + json::shown(value) + ", expected " + expected);
    }

    json::Reader& m_reader;
};

} // namespace warmbench
