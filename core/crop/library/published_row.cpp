#include "core/crop/library/printed_amount.h"
#include "core/crop/library/row_reading.h"
#include "core/crop/library/row_writer.h"
#include "core/crop/library/taxon_name.h"
#include "core/crop/safety.h"

#include <array>
#include <utility>

namespace warmbench {
namespace {

constexpr const char* trialSeason = " (trial)";
constexpr const char* testedRange = " (range tested)";
constexpr const char* scoringDay = " (day of scoring or length of trial)";

bool hasDigit(std::string_view text) {
    return text.find_first_of("0123456789") != std::string_view::npos;
}

std::string rangeText(const std::string& low, const std::string& high) {
    if (low.empty() && high.empty()) return {};
    if (low == high) return low;
    if (low.empty()) return "up to " + high;
    if (high.empty()) return "from " + low;
    return low + " to " + high;
}

void readPublishedSeason(Sheet& sheet, RowWriter& writer) {
    const auto from = sheet.monthDay("strike_from", false);
    const auto to = sheet.monthDay("strike_to", true);
    if (!from && !to) return;
    const bool window = writer.isFirst("season_is", "window", "trial");
    if (window && from && to)
        writer.give(FigureKind::Season, &Recipe::season, std::optional{Season{*from, *to}});
    else
        writer.print(FigureKind::Season,
                     rangeText(from ? from->iso() : "", to ? to->iso() : "") + trialSeason);
}

void readPublishedRootZone(Sheet& sheet, RowWriter& writer) {
    const auto low = sheet.temperature("medium_min_c");
    const auto ideal = sheet.temperature("medium_ideal_c");
    const auto high = sheet.temperature("medium_max_c");
    if (low && high && *low > *high) sheet.refuse("medium_max_c", "a temperature not below medium_min_c");
    if (ideal && low && *ideal < *low) sheet.refuse("medium_ideal_c", "a temperature not below medium_min_c");
    if (ideal && high && *ideal > *high)
        sheet.refuse("medium_ideal_c", "a temperature not above medium_max_c");
    const bool limits = (low || high) && writer.isFirst("medium_range_is", "limits", "tested");
    if (limits)
        writer.give(FigureKind::RootZoneLow, &Recipe::rootZoneLow, low);
    else if (low)
        writer.print(FigureKind::RootZoneLow, valueText(*low) + testedRange);
    writer.give(FigureKind::RootZoneIdeal, &Recipe::rootZoneIdeal, ideal);
    if (limits)
        writer.give(FigureKind::RootZoneHigh, &Recipe::rootZoneHigh, high);
    else if (high)
        writer.print(FigureKind::RootZoneHigh, valueText(*high) + testedRange);
    writer.give(FigureKind::Air, &Recipe::air, sheet.temperature("air_c"));
}

void readPublishedDays(Sheet& sheet, RowWriter& writer) {
    const auto low = sheet.count("days_to_root_min");
    const auto high = sheet.count("days_to_root_max");
    if (low && high && *low > *high) sheet.refuse("days_to_root_max", "days not below days_to_root_min");
    if (!low && !high) return;
    const bool rooting = writer.isFirst("days_are", "rooting", "scoring");
    if (rooting && low && high && *low < *high) {
        writer.give(FigureKind::DaysToRoot, &Recipe::daysToRoot, std::optional{IntRange{*low, *high}});
        return;
    }
    const std::string days = rangeText(low ? valueText(*low) : "", high ? valueText(*high) : "");
    writer.print(FigureKind::DaysToRoot,
                 withUnit(FigureKind::DaysToRoot, days) + (rooting ? "" : scoringDay));
}

/// The form that words on a hormone name; nothing where they name none.
std::optional<std::string> hormoneFormIn(const std::string& hormone) {
    if (isWithoutHormone(hormone)) return "none";
    using Word = std::pair<const char*, const char*>;
    constexpr std::array<Word, 6> words{Word{"talc or quick dip", "powder or quick dip"},
                                        Word{"quick dip", "quick dip"},
                                        Word{"talc", "powder"},
                                        Word{"soak", "soak"},
                                        Word{"gel", "gel"},
                                        Word{"dip", "dip"}};
    for (const auto& [word, form] : words)
        if (hormone.find(word) != std::string::npos) return form;
    return std::nullopt;
}

void readPublishedHormone(Sheet& sheet, RowWriter& writer) {
    const auto hormone = sheet.words("hormone");
    if (!hormone) return;
    const bool names = hasDigit(*hormone) || isWithoutHormone(*hormone);
    if (!names) {
        writer.print(FigureKind::Hormone, *hormone);
        return;
    }
    writer.give(FigureKind::Hormone, &Recipe::hormone, hormone);
    writer.give(FigureKind::HormoneForm, &Recipe::hormoneForm, hormoneFormIn(*hormone));
}

void readPublishedCover(Sheet& sheet, RowWriter& writer) {
    const std::string cell = sheet.text("cover");
    const auto cover = coverNamed(std::string_view{cell}.substr(0, cell.find_first_of(", (")));
    if (!cover) {
        writer.print(FigureKind::Covers, cell);
        return;
    }
    writer.give(FigureKind::Covers, &Recipe::covers, std::optional{std::vector{*cover}});
}

void readPublishedMedium(Sheet& sheet, RowWriter& writer) {
    const std::string cell = sheet.text("medium_mix");
    const auto medium = mediumIn(cell);
    if (medium)
        writer.give(FigureKind::Medium, &Recipe::medium, medium);
    else
        writer.print(FigureKind::Medium, cell);
}

/// A caution's own source stands in brackets at its end; without one it is from memory, for the row's
/// publication is on rooting and not on poisons.
void readPublishedCaution(Sheet& sheet, RecipeRow& row, RowWriter& writer) {
    const auto cell = sheet.words("sap_or_toxicity_caution");
    if (!cell) return;
    std::string text = *cell;
    std::string source = fromMemory;
    const std::size_t bracket = text.rfind(" (");
    if (bracket != std::string::npos && text.back() == ')') {
        const std::string inBrackets = text.substr(bracket + 2, text.size() - bracket - 3);
        const bool named = inBrackets.find(' ') == std::string::npos;
        if (named) source = inBrackets;
        if (named || inBrackets == fromMemory || inBrackets == "see cautions.csv") text.erase(bracket);
    }
    const std::string publication = std::exchange(row.source, source);
    writer.give(FigureKind::Caution, &Recipe::caution, std::optional{text});
    row.source = publication;
}

} // namespace

std::vector<std::string> publishedColumns() {
    return {"taxon",
            "common_name",
            "wood_type",
            "strike_from",
            "strike_to",
            "season_is",
            "medium_ideal_c",
            "medium_min_c",
            "medium_max_c",
            "medium_range_is",
            "air_c",
            "days_to_root_min",
            "days_to_root_max",
            "days_are",
            "base_c",
            "take_pct_typical",
            "hormone",
            "cover",
            "medium_mix",
            "sap_or_toxicity_caution",
            "source_id",
            "evidence",
            "note"};
}

RecipeRow publishedRow(Sheet& sheet) {
    RecipeRow row;
    row.line = sheet.line();
    row.taxon = sheet.text("taxon");
    row.commonNames = splitText(sheet.text("common_name"), ',');
    row.woodText = sheet.text("wood_type");
    row.wood = woodNamed(row.woodText);
    row.source = sheet.text("source_id");
    row.evidence = sheet.text("evidence");
    row.note = sheet.text("note");
    if (row.taxon.empty()) sheet.refuse("taxon", "a taxon");
    if (row.source.empty()) sheet.refuse("source_id", "the id of a source");
    if (!row.wood && row.woodText != "root")
        sheet.refuse("wood_type",
                     "one of softwood, semi-ripe, hardwood, evergreen hardwood, basal, leaf-bud, root");

    RowWriter writer{sheet, row};
    readPublishedSeason(sheet, writer);
    readPublishedRootZone(sheet, writer);
    readPublishedDays(sheet, writer);
    writer.give(FigureKind::Base, &Recipe::base, sheet.temperature("base_c"));
    const std::string take = sheet.text("take_pct_typical");
    if (const auto range = takeIn(take))
        writer.give(FigureKind::TakePercent, &Recipe::takePercent, range);
    else
        writer.print(FigureKind::TakePercent, take);
    readPublishedHormone(sheet, writer);
    readPublishedCover(sheet, writer);
    readPublishedMedium(sheet, writer);
    readPublishedCaution(sheet, row, writer);
    return row;
}

} // namespace warmbench
