#include "core/crop/library/library.h"

#include "core/crop/library/taxon_name.h"

#include <algorithm>
#include <array>

namespace warmbench {
namespace {

/// How far a publication was read and what it is, 0 for the first to be believed.
int rankOf(const std::string& evidence) {
    if (evidence.find("second-hand") != std::string::npos) return 4;
    constexpr std::array<std::string_view, 4> studies{"paper", "dataset", "thesis", "review chapter"};
    constexpr std::array<std::string_view, 5> summaries{"abstract", "conference abstract", "figures page",
                                                        "proceedings", "trade+abstract"};
    constexpr std::array<std::string_view, 5> advice{"textbook", "book", "reference", "extension", "society"};
    const auto among = [&evidence](const auto& kinds) {
        return std::find(kinds.begin(), kinds.end(), evidence) != kinds.end();
    };
    if (among(studies)) return 0;
    if (among(summaries)) return 1;
    return among(advice) ? 2 : 3;
}

bool hasName(const std::vector<std::string>& names, const std::string& key) {
    return std::any_of(names.begin(), names.end(),
                       [&key](const std::string& name) { return nameKey(name) == key; });
}

/// All names of a taxon in one key, to search in.
std::string allNames(const KnownTaxon& taxon) {
    std::string names = nameKey(taxon.name);
    for (const std::string& name : taxon.synonyms) names += '\n' + nameKey(name);
    for (const std::string& name : taxon.commonNames) names += '\n' + nameKey(name);
    return names;
}

bool sayDifferentThings(const std::vector<GivenFigure>& given) {
    const GivenFigure* first = nullptr;
    for (const GivenFigure& figure : given) {
        if (figure.taxon.empty()) continue;
        if (first && first->value != figure.value) return true;
        if (!first) first = &figure;
    }
    return false;
}

} // namespace

const KnownTaxon* RecipeLibrary::taxonWithKey(const std::string& key) const {
    const auto found = m_taxonByKey.find(key);
    return found == m_taxonByKey.end() ? nullptr : &m_taxa[found->second];
}

std::vector<const KnownTaxon*> RecipeLibrary::named(std::string_view name) const {
    const std::string key = nameKey(name);
    if (const KnownTaxon* taxon = taxonWithKey(key)) return {taxon};
    std::vector<const KnownTaxon*> found;
    for (const KnownTaxon& taxon : m_taxa)
        if (hasName(taxon.commonNames, key)) found.push_back(&taxon);
    return found;
}

const KnownTaxon* RecipeLibrary::taxonOf(std::string_view name) const {
    const auto found = named(name);
    return found.size() == 1 ? found.front() : nullptr;
}

std::vector<const KnownTaxon*> RecipeLibrary::search(std::string_view words) const {
    const std::vector<std::string> wanted = splitText(nameKey(words), ' ');
    std::vector<const KnownTaxon*> found;
    for (const KnownTaxon& taxon : m_taxa) {
        const std::string names = allNames(taxon);
        const auto stands = [&names](const std::string& word) {
            return names.find(word) != std::string::npos;
        };
        if (std::all_of(wanted.begin(), wanted.end(), stands)) found.push_back(&taxon);
    }
    return found;
}

std::set<Wood> RecipeLibrary::woodsOf(const KnownTaxon& taxon) const {
    std::set<Wood> woods;
    for (const std::size_t row : taxon.rows)
        if (m_rows[row].wood) woods.insert(*m_rows[row].wood);
    return woods;
}

std::vector<TaxonWood> RecipeLibrary::pairs() const {
    std::vector<TaxonWood> pairs;
    for (const KnownTaxon& taxon : m_taxa)
        for (const Wood wood : woodsOf(taxon)) pairs.push_back({taxon.name, wood});
    return pairs;
}

std::vector<const RecipeRow*> RecipeLibrary::rowsOf(const KnownTaxon* taxon, RowKind kind,
                                                    std::optional<Wood> wood) const {
    std::vector<const RecipeRow*> rows;
    if (!taxon) return rows;
    for (const std::size_t place : taxon->rows) {
        const RecipeRow& row = m_rows[place];
        if (row.kind == kind && (!wood || row.wood == wood)) rows.push_back(&row);
    }
    std::stable_sort(rows.begin(), rows.end(), [](const RecipeRow* a, const RecipeRow* b) {
        return rankOf(a->evidence) < rankOf(b->evidence);
    });
    return rows;
}

std::vector<FigureComparison> RecipeLibrary::sideBySide(std::string_view taxonName, Wood wood) const {
    std::vector<const RecipeRow*> rows = layersOf(taxonName, wood);
    const KnownTaxon* taxon = taxonOf(taxonName);
    const std::string species = speciesKey(taxon ? std::string_view{taxon->name} : taxonName);
    const auto isNew = [&rows](const RecipeRow& row) {
        return std::find(rows.begin(), rows.end(), &row) == rows.end();
    };
    for (const RecipeRow& row : m_rows)
        if (!species.empty() && row.wood == wood && speciesKey(row.taxon) == species && isNew(row))
            rows.push_back(&row);

    std::vector<FigureComparison> comparisons;
    for (FigureText& used : figureTexts(compose(taxonName, wood))) {
        FigureComparison comparison{std::move(used), {}, false};
        for (const RecipeRow* row : rows)
            for (const FigureText& printed : row->printed)
                if (printed.kind == comparison.used.kind)
                    comparison.given.push_back(
                        {row->taxon, printed.value, printed.source, row->evidence, row->note});
        comparison.differ = sayDifferentThings(comparison.given);
        comparisons.push_back(std::move(comparison));
    }
    return comparisons;
}

std::vector<const Caution*> RecipeLibrary::cautionsOf(std::string_view taxonName) const {
    std::set<std::string> genera{genusKey(taxonName)};
    if (const KnownTaxon* taxon = taxonOf(taxonName)) {
        genera.insert(genusKey(taxon->name));
        for (const std::string& synonym : taxon->synonyms) genera.insert(genusKey(synonym));
    }
    std::vector<const Caution*> found;
    for (const Caution& caution : m_cautions)
        if (std::any_of(genera.begin(), genera.end(),
                        [&](const std::string& genus) { return caution.concerns(genus); }))
            found.push_back(&caution);
    return found;
}

const Source* RecipeLibrary::source(std::string_view id) const {
    const auto found = m_sourceById.find(id);
    return found == m_sourceById.end() ? nullptr : &m_sources[found->second];
}

std::string RecipeLibrary::sourceText(std::string_view figureSource) const {
    const Source* found = source(figureSource);
    if (!found) return std::string{figureSource};
    return found->author + (found->year.empty() ? "" : ' ' + found->year) + ", " + found->title;
}

} // namespace warmbench
