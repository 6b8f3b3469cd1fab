#pragma once

#include "core/book/fields.h"
#include "core/exchange/book/field_reader.h"
#include "core/exchange/book/field_writer.h"

#include <QString>
#include <QVariant>

/// How each type of field is kept in a column: the one place. `toColumn` and `fromColumn` are each other's
/// inverse; `fromColumn` says false where a column holds what no field can.
namespace warmbench::app {

/// Whether a type has a column of its own; all else is JSON text.
template <class T>
inline constexpr bool isScalar = std::is_enum_v<T> || std::is_same_v<T, bool> || std::is_same_v<T, int> ||
                                 std::is_same_v<T, std::string> || std::is_same_v<T, Day>;
template <class Tag>
inline constexpr bool isScalar<Id<Tag>> = true;
template <class Tag, std::int64_t PerUnit>
inline constexpr bool isScalar<Amount<Tag, PerUnit>> = true;

inline QVariant toColumn(bool yes) {
    return yes ? 1 : 0;
}
inline QVariant toColumn(int number) {
    return number;
}
template <class Tag>
QVariant toColumn(Id<Tag> id) {
    return static_cast<qlonglong>(id.number);
}
template <class Tag, std::int64_t PerUnit>
QVariant toColumn(Amount<Tag, PerUnit> amount) {
    return static_cast<qlonglong>(amount.parts);
}
inline QVariant toColumn(const std::string& text) {
    return QString::fromStdString(text);
}
inline QVariant toColumn(Day day) {
    return QString::fromStdString(day.iso());
}
template <class Word>
requires std::is_enum_v<Word> QVariant toColumn(Word word) {
    return QString::fromUtf8(EnumWords<Word>::words[static_cast<std::size_t>(word)]);
}
template <class T>
requires(isScalar<T>) QVariant toColumn(const std::optional<T>& maybe) {
    return maybe ? toColumn(*maybe) : QVariant{};
}
template <class T>
requires(!isScalar<T>) QVariant toColumn(const T& nested) {
    const std::string text = FieldWriter::oneLine().text(nested);
    return text == "null" ? QVariant{} : QVariant{QString::fromStdString(text)};
}

inline bool fromColumn(const QVariant& column, int& number) {
    bool whole = false;
    const qlonglong value = column.toLongLong(&whole);
    number = static_cast<int>(value);
    return whole && value == number;
}
inline bool fromColumn(const QVariant& column, bool& yes) {
    int number = 0;
    const bool read = fromColumn(column, number);
    yes = number == 1;
    return read && (number == 0 || number == 1);
}
template <class Tag>
bool fromColumn(const QVariant& column, Id<Tag>& id) {
    bool whole = false;
    id.number = column.toLongLong(&whole);
    return whole;
}
template <class Tag, std::int64_t PerUnit>
bool fromColumn(const QVariant& column, Amount<Tag, PerUnit>& amount) {
    bool whole = false;
    amount.parts = column.toLongLong(&whole);
    return whole;
}
inline bool fromColumn(const QVariant& column, std::string& text) {
    text = column.toString().toStdString();
    return !column.isNull();
}
inline bool fromColumn(const QVariant& column, Day& day) {
    const auto found = Day::fromIso(column.toString().toStdString());
    if (found) day = *found;
    return found.has_value();
}
template <class Word>
requires std::is_enum_v<Word>
bool fromColumn(const QVariant& column, Word& word) {
    const std::string text = column.toString().toStdString();
    const auto& words = EnumWords<Word>::words;
    for (std::size_t i = 0; i < words.size(); ++i)
        if (text == words[i]) {
            word = static_cast<Word>(i);
            return true;
        }
    return false;
}
template <class T>
requires(isScalar<T>) bool fromColumn(const QVariant& column, std::optional<T>& maybe) {
    maybe.reset();
    return column.isNull() || fromColumn(column, maybe.emplace());
}
template <class T>
requires(!isScalar<T>) bool fromColumn(const QVariant& column, T& nested) {
    const std::string text = column.isNull() ? "null" : column.toString().toStdString();
    const auto value = json::parse(text);
    if (!value) return false;
    json::Reader reader;
    FieldReader(reader).read(*value, {}, nested);
    return !reader.failed();
}

} // namespace warmbench::app
