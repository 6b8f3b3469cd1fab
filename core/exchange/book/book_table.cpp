#include "core/exchange/book/book_table.h"

#include "core/exchange/book/field_writer.h"

#include <string_view>

namespace warmbench {
namespace {

std::string cell(std::string text) {
    constexpr std::string_view formulaStarts = "=+-@\t\r";
    if (!text.empty() && formulaStarts.find(text.front()) != std::string_view::npos)
        text.insert(text.begin(), '\'');
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char c : text) quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
    return quoted + "\"";
}

std::string plain(const std::string& text) {
    return cell(text);
}
std::string plain(Day day) {
    return day.iso();
}
template <class Word>
requires std::is_enum_v<Word> std::string plain(Word word) {
    return EnumWords<Word>::words[static_cast<std::size_t>(word)];
}
template <class Tag, std::int64_t PerUnit>
std::string plain(Amount<Tag, PerUnit> amount) {
    return decimal(amount); // a negative number is no formula
}
template <class T>
requires(!std::is_enum_v<T>) std::string plain(const T& other) {
    const std::string text = FieldWriter::oneLine().text(other);
    return std::is_same_v<T, int> ? text : cell(text);
}
template <class T>
std::string plain(const std::optional<T>& maybe) {
    return maybe ? plain(*maybe) : std::string{};
}

} // namespace

std::optional<std::string> writeTable(const HouseBook& book, std::string_view list) {
    std::optional<std::string> table;
    forEachKind([&]<class E>() {
        if (list != kindName<E>.many) return;
        std::string text;
        const auto line = [&](const std::string& value, bool& first) {
            text += (first ? "" : ",") + value;
            first = false;
        };
        bool first = true;
        E example{};
        describe(example, [&](const char* name, const auto&) { line(name, first); });
        text += "\r\n";
        for (const auto& [id, thing] : book.all<E>()) {
            first = true;
            describe(thing, [&](const char*, const auto& field) { line(plain(field), first); });
            text += "\r\n";
        }
        table = std::move(text);
    });
    return table;
}

std::string tableNames() {
    std::string names;
    forEachKind([&]<class E>() { names += (names.empty() ? "" : ", ") + std::string(kindName<E>.many); });
    return names;
}

} // namespace warmbench
