#include "library_texts.h"

#include "core/crop/safety.h"
#include "core/rooting/prior/recipe_prior.h"

#include <algorithm>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

std::ptrdiff_t rowsOfKind(RowKind kind) {
    const auto& rows = builtInLibrary().rows();
    return std::count_if(rows.begin(), rows.end(), [kind](const RecipeRow& row) { return row.kind == kind; });
}

bool isMarkOrKnown(const std::string& source) {
    return source == fromMemory || source == commonPractice || source.starts_with("derived: ") ||
           builtInLibrary().source(source) != nullptr;
}

} // namespace

TEST_CASE("Every built-in row is read") {
    // Lines of the files less their first.
    CHECK(rowsOfKind(RowKind::Published) == 220);
    CHECK(rowsOfKind(RowKind::Memory) == 157);
    CHECK(rowsOfKind(RowKind::CommonPractice) == 4);
    CHECK(rowsOfKind(RowKind::Default) == 6);
    CHECK(builtInLibrary().cautions().size() == 69);
}

TEST_CASE("The recipes from memory are 157 of 126 taxa") {
    std::set<std::string> taxa;
    for (const RecipeRow& row : builtInLibrary().rows())
        if (row.kind == RowKind::Memory) taxa.insert(row.taxon);
    CHECK(taxa.size() == 126);
}

TEST_CASE("Every composed recipe is whole and at one with itself, and every figure has a source") {
    const auto pairs = builtInLibrary().pairs();
    CHECK(pairs.size() > 250);
    for (const TaxonWood& pair : pairs) {
        INFO(pair.taxon << ", " << woodNames[static_cast<std::size_t>(pair.wood)]);
        const Recipe recipe = builtInLibrary().compose(pair.taxon, pair.wood);
        for (const FigureText& figure : figureTexts(recipe)) {
            INFO(figure.label << ": " << figure.value << " by " << figure.source);
            CHECK_FALSE(figure.value.empty());
            CHECK(isMarkOrKnown(figure.source));
        }
        CHECK(recipe.rootZoneLow.value <= recipe.rootZoneIdeal.value);
        CHECK(recipe.rootZoneIdeal.value <= recipe.rootZoneHigh.value);
        CHECK(recipe.base.value < recipe.rootZoneIdeal.value);
        CHECK(recipe.daysToRoot.value.low >= 1);
        CHECK(recipe.daysToRoot.value.low < recipe.daysToRoot.value.high);
        CHECK(recipe.takePercent.value.low >= 0);
        CHECK(recipe.takePercent.value.low <= recipe.takePercent.value.high);
        CHECK(recipe.takePercent.value.high <= 100);
        CHECK_FALSE(recipe.covers.value.empty());
        CHECK_FALSE(recipe.medium.value.empty());
        CHECK(recipe.cuttingsPerContainer.value >= 1);
        CHECK(rooting::rootingNeed(recipe));
        CHECK(rooting::takePrior(recipe));
        CHECK(builtInLibrary().composeOrigin(recipe.origin) == recipe);
    }
}

TEST_CASE("What is published of a figure stands before what is from memory") {
    for (const TaxonWood& pair : builtInLibrary().pairs())
        for (const FigureComparison& figure : builtInLibrary().sideBySide(pair.taxon, pair.wood)) {
            INFO(pair.taxon << ": " << figure.used.label);
            REQUIRE_FALSE(figure.given.empty());
            // A row on this very taxon comes first; its species, its genus and its cultivars may follow.
            const auto isPublished = [](const GivenFigure& given) {
                return builtInLibrary().source(given.source) != nullptr;
            };
            const auto& given = figure.given;
            const auto firstUnpublished = std::find_if_not(given.begin(), given.end(), isPublished);
            const auto ownPublished =
                std::find_if(firstUnpublished, given.end(), [&](const GivenFigure& later) {
                    return isPublished(later) && later.taxon == pair.taxon;
                });
            if (figure.used.kind != FigureKind::Caution) CHECK(ownPublished == given.end());
        }
}

TEST_CASE("A figure that no publication gives is marked as what it is") {
    const Recipe recipe = builtInLibrary().compose("Abutilon × hybridum", Wood::Softwood);
    for (const FigureText& figure : figureTexts(recipe)) {
        INFO(figure.label);
        CHECK(figure.source == fromMemory);
    }
}

TEST_CASE("Cautions keep the source and evidence of their list") {
    for (const Caution& caution : builtInLibrary().cautions()) {
        INFO(caution.plants);
        CHECK(isMarkOrKnown(caution.source));
        CHECK_FALSE(caution.evidence.empty());
        CHECK_FALSE(caution.hazard.empty());
    }
    // 12 rows of cautions.csv name no source and say `from memory, not opened`.
    const auto& cautions = builtInLibrary().cautions();
    CHECK(std::count_if(cautions.begin(), cautions.end(),
                        [](const Caution& caution) { return caution.source == fromMemory; }) == 12);
}

TEST_CASE("Every caution at the work comes from a known source or is marked") {
    for (std::size_t hazard = 0; hazard < hazardNames.size(); ++hazard)
        for (const SafetyNote& note : safetyNotes(static_cast<Hazard>(hazard))) {
            INFO(note.text);
            CHECK(isMarkOrKnown(note.source));
        }
}

TEST_CASE("A source is worded for people") {
    CHECK(builtInLibrary().sourceText("WILK2005A") ==
          "Wilkerson, Gates, Zolnier, Kester & Geneve 2005, Predicting rooting stages in poinsettia cuttings "
          "using root "
          "zone temperature-based models, J. Amer. Soc. Hort. Sci. 130(3):302-307");
    CHECK(builtInLibrary().sourceText(fromMemory) == fromMemory);
    CHECK(builtInLibrary().sourceText("derived: so and so") == "derived: so and so");
}
