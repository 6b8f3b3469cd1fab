#include "core/season/list/thing_list.h"

#include "core/season/list/line_reader.h"

#include <algorithm>
#include <array>

namespace warmbench::season {
namespace {

template <class Names>
std::vector<ListColumn> named(const Names& names) {
    std::vector<ListColumn> columns;
    columns.reserve(std::size(names));
    for (const char* name : names) columns.push_back({name});
    return columns;
}

std::vector<ListColumn> columnsOf(ListKind kind) {
    switch (kind) {
    case ListKind::Targets:
        return named(targetColumnNames);
    case ListKind::Stocks:
        return stockColumns();
    case ListKind::Recipes:
        return recipeColumns();
    case ListKind::Results:
        return resultColumns();
    }
    return {};
}

std::unique_ptr<LineReader> readerOf(ListKind kind, const RecipeLibrary& library, UnknownTaxa unknown) {
    return kind == ListKind::Stocks    ? stockReader(library, unknown)
           : kind == ListKind::Recipes ? recipeReader(library, unknown)
                                       : resultReader(library, unknown);
}

std::size_t columnNamed(const std::vector<ListColumn>& columns, const std::string& cell) {
    std::string name = lowered(cell);
    std::replace(name.begin(), name.end(), '_', ' '); // as programs write heads
    for (std::size_t i = 1; i < columns.size(); ++i) {
        const std::vector<std::string>& others = columns[i].others;
        if (columns[i].name == name || std::find(others.begin(), others.end(), name) != others.end())
            return i;
    }
    return 0;
}

TargetListShape targetShape(const ListShape& shape) {
    TargetListShape known{shape.delimiter, shape.order, shape.decimalComma, shape.head, {}};
    for (const std::size_t column : shape.columns) known.columns.push_back(static_cast<TargetColumn>(column));
    return known;
}

ThingList readTargets(std::string_view text, const ListShape& shape, const HouseBook& book,
                      const RecipeLibrary& library, UnknownTaxa unknown) {
    const auto listed = readTargetList(text, targetShape(shape), book, library, unknown);
    ThingList list;
    for (const ListedTarget& one : listed) {
        ListedThing thing{one.line, one.cells, {}, one.trouble};
        if (one.trouble.empty()) {
            thing.fields = {one.taxon.taxon.name, one.target.plants, one.target.due, one.target.worth,
                            one.target.name};
            ++list.right;
        }
        list.lines.push_back(std::move(thing));
    }
    list.command = putTargets(book, listed);
    return list;
}

/// The names of columns and fields, marked for those who translate.
[[maybe_unused]] constexpr std::array columnWords{pattern("passed over"),
                                                  pattern("taxon"),
                                                  pattern("wood"),
                                                  pattern("name"),
                                                  pattern("struck"),
                                                  pattern("cuttings"),
                                                  pattern("plants"),
                                                  pattern("potted on"),
                                                  pattern("stock"),
                                                  pattern("hormone"),
                                                  pattern("recipe"),
                                                  pattern("batch"),
                                                  pattern("note"),
                                                  pattern("place"),
                                                  pattern("from"),
                                                  pattern("to"),
                                                  pattern("regrowth"),
                                                  pattern("health"),
                                                  pattern("date"),
                                                  pattern("worth"),
                                                  pattern("by"),
                                                  pattern("target"),
                                                  pattern("season"),
                                                  pattern("cuttings a plant"),
                                                  pattern("your own figures")};

std::string label(ListKind kind, std::size_t count) {
    const Phrase name = listKindNames[static_cast<std::size_t>(kind)];
    return (count == 1 ? phrase("Put in 1 line of a list of %1", name)
                       : phrase("Put in %2 lines of a list of %1", name, count))
        .text();
}

} // namespace

std::optional<ListKind> listKindFromName(std::string_view name) {
    for (std::size_t i = 0; i < listKindNames.size(); ++i)
        if (name == listKindNames[i]) return static_cast<ListKind>(i);
    return std::nullopt;
}

std::vector<std::string> columnNames(ListKind kind) {
    std::vector<std::string> names;
    for (ListColumn& column : columnsOf(kind)) names.push_back(std::move(column.name));
    return names;
}

std::vector<std::string> fieldNames(ListKind kind) {
    switch (kind) {
    case ListKind::Targets:
        return {"taxon", "plants", "by", "worth", "target"};
    case ListKind::Stocks:
        return {"taxon", "stock", "plants", "wood", "season", "cuttings a plant"};
    case ListKind::Recipes:
        return {"taxon", "wood", "recipe", "your own figures"};
    case ListKind::Results:
        return {"taxon", "wood", "struck", "cuttings", "plants", "potted on", "stock"};
    }
    return {};
}

ListShape listShape(std::string_view text, ListKind kind, const HouseBook& book,
                    const RecipeLibrary& library) {
    ListShape shape;
    if (kind == ListKind::Targets) {
        const TargetListShape found = targetListShape(text, book, library);
        shape = {found.delimiter, found.order, found.decimalComma, found.head, {}};
        for (const TargetColumn column : found.columns)
            shape.columns.push_back(static_cast<std::size_t>(column));
        return shape;
    }
    const std::vector<TextLine> lines = linesOf(text);
    shape.delimiter = delimiterOf(lines);
    std::vector<Cells> rows;
    std::size_t width = 0;
    for (const TextLine& line : lines) {
        rows.push_back(cellsOf(line.text, shape.delimiter));
        width = std::max(width, rows.back().size());
    }
    shape.columns.assign(width, 0);
    if (rows.empty()) return shape;
    const std::vector<ListColumn> columns = columnsOf(kind);
    std::size_t named = 0;
    for (std::size_t i = 0; i < rows.front().size(); ++i) {
        const std::size_t column = columnNamed(columns, rows.front()[i]);
        if (column == 0 || std::count(shape.columns.begin(), shape.columns.end(), column) > 0) continue;
        shape.columns[i] = column;
        ++named;
    }
    // One name may be chance.
    shape.head = named >= 2;
    if (!shape.head)
        for (std::size_t i = 0; i < width; ++i) shape.columns[i] = i + 1 < columns.size() ? i + 1 : 0;
    if (shape.head) rows.erase(rows.begin());
    // Days of the year, such as 05-10, tell nothing of the order.
    for (Cells& row : rows)
        for (std::string& cell : row)
            if (MonthDay::fromIso(cell)) cell.clear();
    for (std::size_t i = 0; i < width; ++i)
        if (const auto order = orderOf(rows, i)) {
            shape.order = *order;
            break;
        }
    return shape;
}

ThingList readThingList(std::string_view text, ListKind kind, const ListShape& shape, const HouseBook& book,
                        const RecipeLibrary& library, UnknownTaxa unknown) {
    if (kind == ListKind::Targets) return readTargets(text, shape, book, library, unknown);
    std::vector<TextLine> lines = linesOf(text);
    if (shape.head && !lines.empty()) lines.erase(lines.begin());
    const std::vector<ListColumn> columns = columnsOf(kind);
    const auto reader = readerOf(kind, library, unknown);
    HouseBook after = book;
    ThingList list;
    Group group;
    for (const TextLine& textLine : lines) {
        ListedThing thing;
        thing.line = textLine.number;
        thing.cells = cellsOf(textLine.text, shape.delimiter);
        auto work = reader->read(Line(thing.cells, shape.columns, columns, shape.order), after);
        Outcome refusal = work ? Outcome() : Outcome(work.refusal());
        if (work)
            if (auto done = after.perform(Command(Group{"", work->commands})); !done)
                refusal = done.refusal();
        if (refusal) {
            thing.trouble = refusal->text();
        } else {
            thing.fields = std::move(work->fields);
            std::move(work->commands.begin(), work->commands.end(), std::back_inserter(group.commands));
            ++list.right;
        }
        list.lines.push_back(std::move(thing));
    }
    group.label = label(kind, list.right);
    list.command = Command{std::move(group)};
    return list;
}

} // namespace warmbench::season
