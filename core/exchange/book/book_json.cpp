#include "core/exchange/book/book_json.h"

#include "core/exchange/book/field_reader.h"
#include "core/exchange/book/field_writer.h"

#include <optional>

namespace warmbench {
namespace {

constexpr const char* formatName = "warmbench-house-book";
constexpr std::size_t lineWidth = 110;

template <class E>
std::string listText(const FieldWriter& writer, const HouseBook& book, std::size_t indent) {
    std::vector<std::string> items;
    for (const auto& [id, thing] : book.all<E>())
        items.push_back(writer.text(thing, indent + FieldWriter::indentStep));
    return writer.joined('[', items, ']', indent);
}

/// Refuses what is no house book, or one of a later version, before its fields are looked at.
void readHead(json::Reader& reader, json::Value root) {
    if (root.kind() != json::Kind::Object) return;
    json::Children members{root};
    bool named = false;
    while (const auto member = members.next()) {
        const std::string key = members.key();
        const bool isText = member->kind() == json::Kind::String;
        if (key == "format") named = isText && member->string() == formatName;
        if (key == "format" && !named)
            reader.refuse(json::Pointer{} / std::string_view("format"),
                          "found " + json::shown(*member) + ", expected " + json::inQuotes(formatName));
        if (key == "version") {
            const json::Pointer at = json::Pointer{} / std::string_view("version");
            const std::int64_t version = reader.integer(*member, at, {1, largestNumber});
            if (version > bookFormatVersion)
                reader.refuse(at, "found " + std::to_string(version) + ", expected " +
                                      std::to_string(bookFormatVersion) +
                                      ": it was written by a newer Warmbench");
        }
    }
}

template <class E>
void readList(json::Reader& reader, json::Value value, const json::Pointer& at,
              std::map<IdOf<E>, E>& things) {
    FieldReader fields(reader);
    json::Children items = reader.list(value, at);
    while (const auto item = items.next()) {
        E thing{};
        fields.read(*item, at / items.index(), thing);
        const IdOf<E> id = thing.id;
        if (!things.emplace(id, std::move(thing)).second)
            reader.refuse(at / items.index() / std::string_view("id"),
                          "number " + std::to_string(id.number) + " stands twice, expected once");
        if (reader.failed()) return;
    }
}

Things readThings(json::Reader& reader, const json::Fields& root) {
    Things things;
    forEachKind([&]<class E>() {
        const std::string_view name = kindName<E>.many;
        const json::Pointer at = json::Pointer{} / name;
        const auto value = root.find(name);
        auto& kind = std::get<std::map<IdOf<E>, E>>(things);
        if constexpr (std::is_same_v<E, Nursery>) {
            Nursery nursery;
            if (value) FieldReader(reader).read(*value, at, nursery);
            kind.emplace(nursery.id, nursery);
        } else if (value) {
            readList<E>(reader, *value, at, kind);
        }
    });
    return things;
}

/// Where the thing that breaks a rule stands in the text.
json::Pointer placeOf(const BrokenRule& broken, const json::Fields& root) {
    const json::Pointer list = json::Pointer{} / std::string_view(broken.kind);
    const auto value = root.find(broken.kind);
    if (!value || value->kind() != json::Kind::List) return list;
    json::Children items{*value};
    while (const auto item = items.next()) {
        json::Reader reader;
        json::Children members{*item};
        while (const auto member = members.next())
            if (members.key() == "id" && reader.integer(*member, list) == broken.number)
                return list / items.index();
    }
    return list;
}

template <class E>
std::string editText(const Edit<E>& edit) {
    const FieldWriter writer = FieldWriter::oneLine();
    return writer.joined('{',
                         {FieldWriter::member("kind", json::inQuotes(kindName<E>.many)),
                          FieldWriter::member("before", writer.text(edit.before)),
                          FieldWriter::member("after", writer.text(edit.after))},
                         '}', 0);
}

AnyEdit readEdit(json::Reader& reader, json::Value value, const json::Pointer& at) {
    const json::Fields fields = reader.object(value, at, {"kind", "before", "after"});
    const std::string kind = reader.name(fields["kind"], at / std::string_view("kind"));
    std::optional<AnyEdit> any;
    forEachKind([&]<class E>() {
        if (kind != kindName<E>.many) return;
        Edit<E> edit;
        FieldReader reading(reader);
        reading.read(fields["before"], at / std::string_view("before"), edit.before);
        reading.read(fields["after"], at / std::string_view("after"), edit.after);
        if (!edit.before && !edit.after) reader.refuse(at, "neither before nor after, expected one or both");
        any = std::move(edit);
    });
    if (any) return *std::move(any);
    reader.refuse(at / std::string_view("kind"),
                  "found " + json::inQuotes(kind) + ", expected a kind of thing");
    return Edit<Nursery>{}; // nobody sees it, as the reader has failed
}

} // namespace

std::string writeBook(const HouseBook& book) {
    const FieldWriter writer(lineWidth);
    std::string text = "{\n  " + FieldWriter::member("format", json::inQuotes(formatName)) + ",\n  " +
                       FieldWriter::member("version", std::to_string(bookFormatVersion));
    forEachKind([&]<class E>() {
        text += ",\n  ";
        if constexpr (std::is_same_v<E, Nursery>)
            text +=
                FieldWriter::member(kindName<E>.many, writer.text(book.nursery(), FieldWriter::indentStep));
        else
            text += FieldWriter::member(kindName<E>.many, listText<E>(writer, book, FieldWriter::indentStep));
    });
    return text + "\n}\n";
}

Result<HouseBook> readBook(std::string_view text) {
    const Result<json::Value> root = json::parse(text);
    if (!root) return root.refusal();
    json::Reader reader;
    readHead(reader, *root);
    const std::vector<std::string_view> required{"format", "version"};
    std::vector<std::string_view> optional;
    forEachKind([&]<class E>() { optional.emplace_back(kindName<E>.many); });
    const json::Fields fields = reader.object(*root, {}, required, optional);
    Things things = readThings(reader, fields);
    if (reader.failed()) return *reader.refusal();
    auto made = HouseBook::make(std::move(things));
    if (auto* book = std::get_if<HouseBook>(&made)) return std::move(*book);
    const BrokenRule& first = std::get<std::vector<BrokenRule>>(made).front();
    return Refusal{placeOf(first, fields).text(), first.refusal.text()};
}

std::string writeChange(const Change& change) {
    std::vector<std::string> edits;
    for (const AnyEdit& edit : change.edits)
        edits.push_back(std::visit([](const auto& one) { return editText(one); }, edit));
    const FieldWriter writer = FieldWriter::oneLine();
    return writer.joined('{', {FieldWriter::member("edits", writer.joined('[', edits, ']', 0))}, '}', 0);
}

Result<Change> readChange(std::string_view text) {
    const Result<json::Value> root = json::parse(text);
    if (!root) return root.refusal();
    json::Reader reader;
    const json::Fields fields = reader.object(*root, {}, {"edits"});
    const json::Pointer at = json::Pointer{} / std::string_view("edits");
    Change change;
    json::Children items = reader.list(fields["edits"], at);
    while (const auto item = items.next())
        change.edits.push_back(readEdit(reader, *item, at / items.index()));
    if (reader.failed()) return *reader.refusal();
    return change;
}

} // namespace warmbench
