#include "core/exchange/book/book_table.h"

#include "core/exchange/book/field_writer.h"

namespace warmbench {
namespace {

TableCell cellOf(const std::string& words) {
    return {words, TableCell::Kind::Text};
}
TableCell cellOf(Day day) {
    return {day.iso(), TableCell::Kind::Day};
}
template <class Word>
requires std::is_enum_v<Word> TableCell cellOf(Word word) {
    return {EnumWords<Word>::words[static_cast<std::size_t>(word)], TableCell::Kind::Text};
}
template <class Tag, std::int64_t PerUnit>
TableCell cellOf(Amount<Tag, PerUnit> amount) {
    return {decimal(amount), TableCell::Kind::Number};
}
template <class Tag>
TableCell cellOf(Id<Tag> id) {
    return {std::to_string(id.number), TableCell::Kind::Number};
}
TableCell cellOf(int number) {
    return {std::to_string(number), TableCell::Kind::Number};
}
template <class T>
requires(!std::is_enum_v<T>) TableCell cellOf(const T& nested) {
    return {FieldWriter::oneLine().text(nested), TableCell::Kind::Text};
}
template <class T>
TableCell cellOf(const std::optional<T>& maybe) {
    return maybe ? cellOf(*maybe) : TableCell{};
}

/// A field that names another thing of the book: by what people call that, where they do.
template <class Tag>
TableCell cellIn(const HouseBook& book, Id<Tag> id) {
    TableCell cell = cellOf(id);
    forEachKind([&]<class E>() {
        if constexpr (std::is_same_v<IdOf<E>, Id<Tag>>) {
            const E* thing = book.find<E>(id);
            if constexpr (requires { thing->code; }) {
                if (thing) cell = cellOf(thing->code);
            } else if constexpr (requires { thing->name; }) {
                if (thing) cell = cellOf(thing->name);
            }
        }
    });
    return cell;
}
template <class Tag>
TableCell cellIn(const HouseBook& book, const std::optional<Id<Tag>>& id) {
    return id ? cellIn(book, *id) : TableCell{};
}
template <class T>
TableCell cellIn(const HouseBook&, const T& field) {
    return cellOf(field);
}

std::string csvCell(const TableCell& cell) {
    constexpr std::string_view formulaStarts = "=+-@\t\r";
    std::string text = cell.text;
    // A negative number is no formula.
    if (cell.kind == TableCell::Kind::Text && !text.empty() &&
        formulaStarts.find(text.front()) != std::string_view::npos)
        text.insert(text.begin(), '\'');
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char c : text) quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
    return quoted + "\"";
}

} // namespace

std::optional<BookTable> bookTable(const HouseBook& book, std::string_view list) {
    std::optional<BookTable> table;
    forEachKind([&]<class E>() {
        if (list != kindName<E>.many) return;
        table.emplace(1);
        const E example{};
        describe(example, [&](const char* name, const auto&) { table->front().push_back({name, {}}); });
        for (const auto& [id, thing] : book.all<E>()) {
            auto& row = table->emplace_back();
            describe(thing, [&](const char* name, const auto& field) {
                const bool isOwn = std::string_view(name) == "id";
                row.push_back(isOwn ? cellOf(field) : cellIn(book, field));
            });
        }
    });
    return table;
}

std::string csvText(const BookTable& table) {
    std::string text;
    for (const auto& row : table) {
        for (std::size_t i = 0; i < row.size(); ++i) text += (i > 0 ? "," : "") + csvCell(row[i]);
        text += "\r\n";
    }
    return text;
}

std::vector<std::string> tableNames() {
    std::vector<std::string> names;
    forEachKind([&]<class E>() { names.emplace_back(kindName<E>.many); });
    return names;
}

} // namespace warmbench
