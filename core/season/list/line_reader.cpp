#include "core/season/list/line_reader.h"

#include <algorithm>

namespace warmbench::season {

Line::Line(const Cells& cells, const std::vector<std::size_t>& columns, const std::vector<ListColumn>& known,
           exchange::DateOrder order)
    : m_order(order) {
    for (std::size_t i = 0; i < std::min(cells.size(), columns.size()); ++i)
        if (columns[i] > 0 && columns[i] < known.size() && !cells[i].empty())
            m_cells.emplace(known[columns[i]].name, cells[i]);
}

std::string Line::at(const std::string& column) const {
    const auto found = m_cells.find(column);
    return found == m_cells.end() ? std::string() : found->second;
}

Result<int> Line::count(const std::string& column, int least) const {
    if (!has(column)) return Refusal{column, phrase("none is given")};
    if (const auto count = countIn(at(column), least)) return *count;
    return Refusal{column, phrase("found '%1', expected a whole number from %2 on", at(column), least)};
}

Result<Day> Line::day(const std::string& column) const {
    if (!has(column)) return Refusal{column, phrase("no date is given")};
    if (const auto day = dayIn(at(column), m_order)) return *day;
    return Refusal{column, phrase("found '%1', expected a date", at(column))};
}

Result<Wood> Line::wood() const {
    if (const auto wood = woodIn(at("wood"))) return *wood;
    return Refusal{"wood", has("wood") ? phrase("found '%1', expected a wood such as softwood", at("wood"))
                                       : phrase("none is given, such as softwood")};
}

Result<Taxon> LineReader::taxon(const Line& line, const HouseBook& book,
                                std::vector<Command>& commands) const {
    if (!line.has("taxon")) return Refusal{"taxon", phrase("none is named")};
    auto choice = m_unknown == UnknownTaxa::TakeAsOwn ? chooseOwnTaxon(book, m_library, line.at("taxon"))
                                                      : chooseTaxon(book, m_library, line.at("taxon"));
    if (!choice) return choice.refusal();
    Taxon taxon = choice->taxon;
    if (choice->isNew) {
        Taxon put = taxon;
        put.id = {};
        commands.push_back(Command{Put<Taxon>{std::move(put)}});
        taxon.id = book.nextId<Taxon>();
    }
    return taxon;
}

} // namespace warmbench::season
