#include "core/crop/library/printed_amount.h"
#include "core/crop/library/row_reading.h"
#include "core/crop/library/row_writer.h"
#include "core/crop/library/taxon_name.h"

namespace warmbench {
namespace {

std::optional<std::vector<Cover>> coversIn(std::string_view text) {
    std::vector<Cover> covers;
    for (const std::string& name : splitText(text, '/')) {
        const auto cover = coverNamed(name);
        if (!cover) return std::nullopt;
        covers.push_back(*cover);
    }
    if (covers.empty()) return std::nullopt;
    return covers;
}

/// A range of which both ends or neither must be given.
std::optional<IntRange> wholeRange(Sheet& sheet, std::string_view low, std::string_view high) {
    const auto from = sheet.count(low);
    const auto to = sheet.count(high);
    if (from && !to) sheet.refuse(high, "a number beside " + std::string{low});
    if (to && !from) sheet.refuse(low, "a number beside " + std::string{high});
    if (!from || !to) return std::nullopt;
    if (*from > *to) sheet.refuse(high, "a number not below " + std::string{low});
    return IntRange{*from, *to};
}

void checkWhole(Sheet& sheet, const RecipeRow& row) {
    const std::vector<std::string> columns = woodColumns();
    for (const std::string& column : columns)
        if (!column.starts_with("nodes_") && sheet.text(column).empty()) sheet.refuse(column, "a figure");
    const Recipe& recipe = row.figures;
    if (recipe.rootZoneLow.value > recipe.rootZoneIdeal.value)
        sheet.refuse("root_zone_low_c", "a temperature not above root_zone_ideal_c");
    if (recipe.rootZoneIdeal.value > recipe.rootZoneHigh.value)
        sheet.refuse("root_zone_high_c", "a temperature not below root_zone_ideal_c");
    if (recipe.base.value >= recipe.rootZoneIdeal.value)
        sheet.refuse("base_c", "a temperature below root_zone_ideal_c");
    if (recipe.takePercent.value.high > 100) sheet.refuse("take_high_pct", "at most 100");
    if (recipe.daysToRoot.value.low < 1) sheet.refuse("days_to_root_min", "at least 1");
}

} // namespace

std::vector<std::string> woodColumns() {
    return {"wood_type",
            "strike_from",
            "strike_to",
            "cutting_length_cm",
            "nodes_min",
            "nodes_buried",
            "wound",
            "tip_removed",
            "leaf_trim",
            "root_zone_low_c",
            "root_zone_ideal_c",
            "root_zone_high_c",
            "air_c",
            "days_to_root_min",
            "days_to_root_max",
            "base_c",
            "take_low_pct",
            "take_high_pct",
            "hormone",
            "hormone_form",
            "cover",
            "medium",
            "container",
            "cuttings_per_container",
            "wean_days",
            "grow_on_days_to_pot",
            "aftercare",
            "caution",
            "confidence"};
}

std::vector<std::string> memoryColumns() {
    std::vector<std::string> columns{"taxon", "synonyms", "common_name"};
    const std::vector<std::string> rest = woodColumns();
    columns.insert(columns.end(), rest.begin(), rest.end());
    return columns;
}

RecipeRow woodRow(Sheet& sheet, RowKind kind) {
    RecipeRow row;
    row.kind = kind;
    row.line = sheet.line();
    row.woodText = sheet.text("wood_type");
    row.wood = sheet.wood("wood_type");
    row.source = kind == RowKind::CommonPractice ? commonPractice : fromMemory;
    if (kind == RowKind::Memory) {
        row.taxon = sheet.text("taxon");
        row.synonyms = splitText(sheet.text("synonyms"), ';');
        row.commonNames = splitText(sheet.text("common_name"), ',');
        if (row.taxon.empty()) sheet.refuse("taxon", "a taxon");
    }
    if (const auto confidence = sheet.words("confidence"))
        row.evidence = *confidence + " agreement on the method";

    RowWriter writer{sheet, row};
    const auto from = sheet.monthDay("strike_from", false);
    const auto to = sheet.monthDay("strike_to", true);
    if (from && to) writer.give(FigureKind::Season, &Recipe::season, std::optional{Season{*from, *to}});
    if (const auto length = sheet.number("cutting_length_cm"))
        writer.give(FigureKind::CuttingLength, &Recipe::cuttingLength,
                    std::optional{Millimetres::fromUnits(*length * 10)});
    const auto nodes = sheet.count("nodes_min");
    const auto buried = sheet.count("nodes_buried");
    if (nodes || kind != RowKind::CommonPractice) {
        writer.give(FigureKind::Nodes, &Recipe::nodes, std::make_optional(nodes));
        writer.give(FigureKind::NodesBuried, &Recipe::nodesBuried, std::make_optional(buried));
    }
    writer.give(FigureKind::Wound, &Recipe::wound, sheet.yesOrNo("wound"));
    writer.give(FigureKind::TipRemoved, &Recipe::tipRemoved, sheet.yesOrNo("tip_removed"));
    writer.give(FigureKind::LeafTrim, &Recipe::leafTrim, sheet.words("leaf_trim"));
    writer.give(FigureKind::RootZoneLow, &Recipe::rootZoneLow, sheet.temperature("root_zone_low_c"));
    writer.give(FigureKind::RootZoneIdeal, &Recipe::rootZoneIdeal, sheet.temperature("root_zone_ideal_c"));
    writer.give(FigureKind::RootZoneHigh, &Recipe::rootZoneHigh, sheet.temperature("root_zone_high_c"));
    writer.give(FigureKind::Air, &Recipe::air, sheet.temperature("air_c"));
    writer.give(FigureKind::DaysToRoot, &Recipe::daysToRoot,
                wholeRange(sheet, "days_to_root_min", "days_to_root_max"));
    writer.give(FigureKind::Base, &Recipe::base, sheet.temperature("base_c"));
    writer.give(FigureKind::TakePercent, &Recipe::takePercent,
                wholeRange(sheet, "take_low_pct", "take_high_pct"));
    writer.give(FigureKind::Hormone, &Recipe::hormone, sheet.words("hormone"));
    writer.give(FigureKind::HormoneForm, &Recipe::hormoneForm, sheet.words("hormone_form"));
    const std::string cover = sheet.text("cover");
    const auto covers = coversIn(cover);
    if (!covers && !cover.empty()) sheet.refuse("cover", "covers such as tent/mist");
    writer.give(FigureKind::Covers, &Recipe::covers, covers);
    const std::string mix = sheet.text("medium");
    const auto medium = mediumIn(mix);
    if (!medium && !mix.empty()) sheet.refuse("medium", "parts such as coir 1 : perlite 1");
    writer.give(FigureKind::Medium, &Recipe::medium, medium);
    writer.give(FigureKind::Container, &Recipe::container, sheet.words("container"));
    writer.give(FigureKind::CuttingsPerContainer, &Recipe::cuttingsPerContainer,
                sheet.count("cuttings_per_container"));
    writer.give(FigureKind::WeanDays, &Recipe::weanDays, sheet.count("wean_days"));
    writer.give(FigureKind::GrowOnDays, &Recipe::growOnDays, sheet.count("grow_on_days_to_pot"));
    writer.give(FigureKind::Aftercare, &Recipe::aftercare, sheet.words("aftercare"));
    writer.give(FigureKind::Caution, &Recipe::caution, sheet.words("caution"));
    if (kind != RowKind::CommonPractice) checkWhole(sheet, row);
    return row;
}

} // namespace warmbench
