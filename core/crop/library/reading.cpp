#include "core/crop/library/library.h"
#include "core/crop/library/row_reading.h"
#include "core/crop/library/taxon_name.h"

#include <algorithm>
#include <functional>

namespace warmbench {
namespace {

Outcome readEach(Sheet& sheet, const std::function<void()>& read) {
    while (sheet.next()) {
        read();
        if (sheet.refusal()) break;
    }
    return sheet.refusal();
}

bool namesAlready(const std::vector<RecipeRow>& rows, const RecipeRow& row) {
    const std::string key = nameKey(row.taxon);
    return std::any_of(rows.begin(), rows.end(), [&](const RecipeRow& other) {
        return other.kind == row.kind && other.wood == row.wood && nameKey(other.taxon) == key;
    });
}

void addMissing(std::vector<std::string>& names, const std::vector<std::string>& more) {
    for (const std::string& name : more) {
        const auto same = [&name](const std::string& known) { return nameKey(known) == nameKey(name); };
        if (std::none_of(names.begin(), names.end(), same)) names.push_back(name);
    }
}

} // namespace

struct RecipeLibrary::Reading {
    RecipeLibrary library;

    Outcome readSources(const std::string& text) {
        Sheet sheet{"sources.csv",
                    text,
                    {"source_id", "title", "author_or_body", "year", "kind", "address", "opened"}};
        return readEach(sheet, [&] {
            Source source{sheet.text("source_id"), sheet.text("title"), sheet.text("author_or_body"),
                          sheet.text("year"),      sheet.text("kind"),  sheet.text("address"),
                          sheet.text("opened")};
            if (source.id.empty()) sheet.refuse("source_id", "an id");
            if (!library.m_sourceById.emplace(source.id, library.m_sources.size()).second)
                sheet.refuse("source_id", "each id once");
            library.m_sources.push_back(std::move(source));
        });
    }

    Outcome readPublished(const std::string& text) {
        Sheet sheet{"recipes.csv", text, publishedColumns()};
        return readEach(sheet, [&] {
            RecipeRow row = publishedRow(sheet);
            if (!library.source(row.source)) sheet.refuse("source_id", "an id that sources.csv has");
            library.addRow(std::move(row));
        });
    }

    Outcome readWoodRows(const char* name, const std::string& text, RowKind kind) {
        const bool ofTaxa = kind == RowKind::Memory;
        Sheet sheet{name, text, ofTaxa ? memoryColumns() : woodColumns()};
        return readEach(sheet, [&] {
            RecipeRow row = woodRow(sheet, kind);
            if (namesAlready(library.m_rows, row))
                sheet.refuse("wood_type", ofTaxa ? "each taxon and wood once" : "each wood once");
            library.addRow(std::move(row));
        });
    }

    Outcome readCautions(const std::string& text) {
        Sheet sheet{"cautions.csv", text, {"genus", "hazard", "category", "parts", "source_id", "evidence"}};
        return readEach(sheet, [&] {
            Caution caution;
            caution.plants = sheet.text("genus");
            caution.hazard = sheet.text("hazard");
            caution.category = sheet.text("category");
            caution.parts = sheet.text("parts");
            caution.source = sheet.words("source_id").value_or(fromMemory);
            caution.evidence = sheet.text("evidence");
            caution.genera = generaNamedIn(caution.plants);
            if (caution.genera.empty()) sheet.refuse("genus", "a name with a capital");
            if (caution.hazard.empty()) sheet.refuse("hazard", "what it does");
            if (caution.source != fromMemory && !library.source(caution.source))
                sheet.refuse("source_id", "an id that sources.csv has, or nothing");
            library.m_cautions.push_back(std::move(caution));
        });
    }

    [[nodiscard]] Outcome missingDefault() const {
        for (std::size_t wood = 0; wood < woodNames.size(); ++wood) {
            const auto isIts = [wood](const RecipeRow& row) {
                return row.kind == RowKind::Default && row.wood == static_cast<Wood>(wood);
            };
            if (std::none_of(library.m_rows.begin(), library.m_rows.end(), isIts))
                return Refusal{"wood_defaults.csv", std::string{"found no row for "} + woodNames[wood] +
                                                        ", expected one for each wood"};
        }
        return {};
    }
};

void RecipeLibrary::addRow(RecipeRow row) {
    const std::size_t place = m_rows.size();
    if (!row.taxon.empty()) {
        const auto [known, isNew] = m_taxonByKey.emplace(nameKey(row.taxon), m_taxa.size());
        if (isNew) m_taxa.push_back({row.taxon, {}, {}, {}});
        KnownTaxon& taxon = m_taxa[known->second];
        for (const std::string& synonym : row.synonyms) m_taxonByKey.emplace(nameKey(synonym), known->second);
        addMissing(taxon.synonyms, row.synonyms);
        addMissing(taxon.commonNames, row.commonNames);
        taxon.rows.push_back(place);
    }
    m_rows.push_back(std::move(row));
}

void RecipeLibrary::sortTaxa() {
    std::sort(m_taxa.begin(), m_taxa.end(),
              [](const KnownTaxon& a, const KnownTaxon& b) { return nameKey(a.name) < nameKey(b.name); });
    m_taxonByKey.clear();
    for (std::size_t i = 0; i < m_taxa.size(); ++i) m_taxonByKey.emplace(nameKey(m_taxa[i].name), i);
    for (std::size_t i = 0; i < m_taxa.size(); ++i)
        for (const std::string& synonym : m_taxa[i].synonyms) m_taxonByKey.emplace(nameKey(synonym), i);
}

Result<RecipeLibrary> RecipeLibrary::read(const LibraryTexts& texts) {
    Reading reading;
    if (auto refused = reading.readSources(texts.sources)) return *refused;
    // Rows from memory first: they name the synonyms under which publications speak of their taxa.
    if (auto refused = reading.readWoodRows("recipes_memory.csv", texts.memory, RowKind::Memory))
        return *refused;
    if (auto refused = reading.readPublished(texts.published)) return *refused;
    if (auto refused =
            reading.readWoodRows("common_practice.csv", texts.commonPractice, RowKind::CommonPractice))
        return *refused;
    if (auto refused = reading.readWoodRows("wood_defaults.csv", texts.defaults, RowKind::Default))
        return *refused;
    if (auto refused = reading.readCautions(texts.cautions)) return *refused;
    if (auto refused = reading.missingDefault()) return *refused;
    reading.library.sortTaxa();
    return std::move(reading.library);
}

} // namespace warmbench
