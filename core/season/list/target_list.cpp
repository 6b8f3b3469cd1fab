#include "core/season/list/target_list.h"

#include "core/season/list/list_text.h"

#include <algorithm>
#include <map>
#include <set>

namespace warmbench::season {
namespace {

constexpr double mostWorth = 1'000'000;

/// What a column is by its name; nothing for a name that is not known.
std::optional<TargetColumn> targetColumnNamed(const std::string& cell) {
    static const std::map<std::string, TargetColumn> known{
        {"taxon", TargetColumn::Taxon},    {"plant", TargetColumn::Taxon},
        {"species", TargetColumn::Taxon},  {"variety", TargetColumn::Taxon},
        {"cultivar", TargetColumn::Taxon}, {"plants", TargetColumn::Plants},
        {"number", TargetColumn::Plants},  {"quantity", TargetColumn::Plants},
        {"wanted", TargetColumn::Plants},  {"date", TargetColumn::Due},
        {"due", TargetColumn::Due},        {"by", TargetColumn::Due},
        {"worth", TargetColumn::Worth},    {"price", TargetColumn::Worth},
        {"value", TargetColumn::Worth},    {"wood", TargetColumn::Wood},
        {"name", TargetColumn::Name},      {"target", TargetColumn::Name},
        {"note", TargetColumn::Note},      {"notes", TargetColumn::Note},
        {"comment", TargetColumn::Note}};
    const auto found = known.find(lowered(cell));
    return found == known.end() ? std::nullopt : std::optional(found->second);
}

/// Whether all cells of a column that are not empty, of which there is one, are of a kind.
template <class Is>
bool all(const std::vector<Cells>& rows, std::size_t column, Is is) {
    bool any = false;
    for (const auto& row : rows) {
        if (column >= row.size() || row[column].empty()) continue;
        if (!is(row[column])) return false;
        any = true;
    }
    return any;
}

/// Gives columns their meaning by what stands in them.
class ColumnGuess {
public:
    ColumnGuess(const std::vector<Cells>& rows, TargetListShape& shape, const HouseBook& book,
                const RecipeLibrary& library)
        : m_rows(rows), m_shape(shape), m_book(book), m_library(library) {}

    void guess() {
        for (std::size_t i = 0; i < m_shape.columns.size(); ++i)
            if (const auto order = orderOf(m_rows, i)) {
                m_shape.columns[i] = TargetColumn::Due;
                m_shape.order = *order;
                break;
            }
        takeTaxa();
        take(TargetColumn::Wood, [](const std::string& cell) { return woodIn(cell); });
        take(TargetColumn::Plants, [](const std::string& cell) { return countIn(cell); });
        take(TargetColumn::Worth, [&](const std::string& cell) {
            return exchange::numberIn(cell, true) || exchange::numberIn(cell, false);
        });
    }

    /// The taxa of a list whose head names no column of them: what it calls names may be theirs.
    void guessTaxa() {
        auto& columns = m_shape.columns;
        if (std::find(columns.begin(), columns.end(), TargetColumn::Taxon) != columns.end()) return;
        const auto names = std::find(columns.begin(), columns.end(), TargetColumn::Name);
        if (names != columns.end()) *names = TargetColumn::PassedOver;
        takeTaxa();
        if (names != columns.end() && *names == TargetColumn::PassedOver) *names = TargetColumn::Name;
    }

private:
    void takeTaxa() {
        take(
            TargetColumn::Taxon,
            [&](const std::string& cell) { return chooseTaxon(m_book, m_library, cell); }, false);
    }

    /// Finds the first free column that is of a kind: all its cells, or at least one.
    template <class Is>
    bool take(TargetColumn meaning, Is is, bool whole = true) {
        const auto& columns = m_shape.columns;
        if (std::find(columns.begin(), columns.end(), meaning) != columns.end()) return false;
        for (std::size_t column = 0; column < columns.size(); ++column) {
            if (columns[column] != TargetColumn::PassedOver) continue;
            const bool fits = whole ? all(m_rows, column, is)
                                    : std::any_of(m_rows.begin(), m_rows.end(), [&](const auto& row) {
                                          return column < row.size() && !row[column].empty() &&
                                                 static_cast<bool>(is(row[column]));
                                      });
            if (!fits) continue;
            m_shape.columns[column] = meaning;
            return true;
        }
        return false;
    }

    const std::vector<Cells>& m_rows;
    TargetListShape& m_shape;
    const HouseBook& m_book;
    const RecipeLibrary& m_library;
};

/// Reads the cells of one line into a target.
class TargetReader {
public:
    TargetReader(const TargetListShape& shape, const HouseBook& book, const RecipeLibrary& library,
                 UnknownTaxa unknown)
        : m_shape(shape), m_book(book), m_library(library), m_unknown(unknown) {}

    void read(ListedTarget& listed) {
        bool taxon = false;
        bool plants = false;
        bool due = false;
        const std::size_t count = std::min(m_shape.columns.size(), listed.cells.size());
        for (std::size_t i = 0; i < count && listed.trouble.empty(); ++i) {
            const std::string& cell = listed.cells[i];
            if (cell.empty()) continue;
            readCell(listed, m_shape.columns[i], cell);
            taxon = taxon || m_shape.columns[i] == TargetColumn::Taxon;
            plants = plants || m_shape.columns[i] == TargetColumn::Plants;
            due = due || m_shape.columns[i] == TargetColumn::Due;
        }
        if (!listed.trouble.empty()) return;
        if (!taxon)
            listed.trouble = phrase("no taxon is named").text();
        else if (!plants)
            listed.trouble = phrase("no number of plants is given").text();
        else if (!due)
            listed.trouble = phrase("no date is given").text();
    }

private:
    void readCell(ListedTarget& listed, TargetColumn column, const std::string& cell) {
        Target& target = listed.target;
        switch (column) {
        case TargetColumn::PassedOver:
            return;
        case TargetColumn::Taxon:
            return readTaxon(listed, cell);
        case TargetColumn::Plants:
            if (const auto count = countIn(cell))
                target.plants = *count;
            else
                listed.trouble = phrase("found '%1', expected a number of plants, 1 to 1000000", cell).text();
            return;
        case TargetColumn::Due:
            if (const auto day = dayIn(cell, m_shape.order))
                target.due = *day;
            else
                listed.trouble = phrase("found '%1', expected a date", cell).text();
            return;
        case TargetColumn::Worth:
            if (const auto worth = exchange::numberIn(cell, m_shape.decimalComma);
                worth && *worth >= 0 && *worth <= mostWorth)
                target.worth = Money::fromUnits(*worth);
            else
                listed.trouble = phrase("found '%1', expected what a plant is worth", cell).text();
            return;
        case TargetColumn::Wood:
            target.wood = woodIn(cell);
            if (!target.wood)
                listed.trouble = phrase("found '%1', expected a wood such as softwood", cell).text();
            return;
        case TargetColumn::Name:
            target.name = cell;
            return;
        case TargetColumn::Note:
            target.note += (target.note.empty() ? "" : "; ") + cell;
            return;
        }
    }

    void readTaxon(ListedTarget& listed, const std::string& cell) {
        auto choice = m_unknown == UnknownTaxa::TakeAsOwn ? chooseOwnTaxon(m_book, m_library, cell)
                                                          : chooseTaxon(m_book, m_library, cell);
        if (choice)
            listed.taxon = std::move(*choice);
        else
            listed.trouble = choice.refusal().text();
    }

    const TargetListShape& m_shape;
    const HouseBook& m_book;
    const RecipeLibrary& m_library;
    UnknownTaxa m_unknown;
};

/// Names for the targets that have none, and trouble for those that have one that is taken.
void giveNames(std::vector<ListedTarget>& list, const HouseBook& book) {
    std::set<std::string> taken;
    for (const auto& [id, target] : book.all<Target>()) taken.insert(target.name);
    for (ListedTarget& one : list)
        if (one.trouble.empty() && !one.target.name.empty() && !taken.insert(one.target.name).second)
            one.trouble = phrase("there is a target %1 already", one.target.name).text();
    std::size_t number = book.all<Target>().size();
    for (ListedTarget& one : list) {
        if (!one.trouble.empty() || !one.target.name.empty()) continue;
        do ++number;
        while (!taken.insert(numberedTargetName(number)).second);
        one.target.name = numberedTargetName(number);
    }
}

} // namespace

TargetListShape targetListShape(std::string_view text, const HouseBook& book, const RecipeLibrary& library) {
    const std::vector<TextLine> lines = linesOf(text);
    TargetListShape shape;
    shape.delimiter = delimiterOf(lines);
    std::vector<Cells> rows;
    std::size_t width = 0;
    for (const auto& [number, line] : lines) {
        rows.push_back(cellsOf(line, shape.delimiter));
        width = std::max(width, rows.back().size());
    }
    shape.columns.assign(width, TargetColumn::PassedOver);
    if (rows.empty()) return shape;
    std::set<TargetColumn> named;
    for (std::size_t i = 0; i < rows.front().size(); ++i)
        if (const auto column = targetColumnNamed(rows.front()[i]); column && named.insert(*column).second)
            shape.columns[i] = *column;
    // One name may be chance, such as a target called `plant`.
    shape.head = named.size() >= 2 || (named.size() == 1 && width == 1);
    if (!shape.head) shape.columns.assign(width, TargetColumn::PassedOver);
    if (shape.head) {
        rows.erase(rows.begin());
        for (std::size_t i = 0; i < width; ++i)
            if (shape.columns[i] == TargetColumn::Due)
                if (const auto order = orderOf(rows, i)) shape.order = *order;
        ColumnGuess(rows, shape, book, library).guessTaxa();
    } else {
        ColumnGuess(rows, shape, book, library).guess();
    }
    for (std::size_t i = 0; i < width; ++i)
        if (shape.columns[i] == TargetColumn::Worth)
            shape.decimalComma =
                !all(rows, i, [](const std::string& cell) { return exchange::numberIn(cell, false); });
    return shape;
}

std::vector<ListedTarget> readTargetList(std::string_view text, const TargetListShape& shape,
                                         const HouseBook& book, const RecipeLibrary& library,
                                         UnknownTaxa unknown) {
    std::vector<TextLine> lines = linesOf(text);
    if (shape.head && !lines.empty()) lines.erase(lines.begin());
    std::vector<ListedTarget> list;
    TargetReader reader(shape, book, library, unknown);
    for (const auto& [number, line] : lines) {
        ListedTarget listed;
        listed.line = number;
        listed.target.worth = usualWorth;
        listed.cells = cellsOf(line, shape.delimiter);
        reader.read(listed);
        list.push_back(std::move(listed));
    }
    giveNames(list, book);
    return list;
}

Command putTargets(const HouseBook& book, const std::vector<ListedTarget>& list) {
    Group group;
    std::map<std::string, TaxonId> added;
    TaxonId next = book.nextId<Taxon>();
    std::size_t count = 0;
    for (const ListedTarget& one : list) {
        if (!one.trouble.empty()) continue;
        Target target = one.target;
        target.taxon = one.taxon.taxon.id;
        if (one.taxon.isNew) {
            const auto [found, isFirst] = added.emplace(one.taxon.taxon.name, next);
            if (isFirst) {
                Taxon taxon = one.taxon.taxon;
                taxon.id = {};
                group.commands.push_back(Command{Put<Taxon>{taxon}});
                next = {next.number + 1};
            }
            target.taxon = found->second;
        }
        group.commands.push_back(Command{Put<Target>{target}});
        ++count;
    }
    group.label =
        (count == 1 ? phrase("Put in 1 target of a list") : phrase("Put in %1 targets of a list", count))
            .text();
    return Command{group};
}

} // namespace warmbench::season
