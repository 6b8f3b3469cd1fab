#include "core/crop/recipe_figures.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::literals;

namespace {

Recipe invented() {
    Recipe recipe;
    recipe.season = {{{7, 20}, {9, 15}}, fromMemory};
    recipe.cuttingLength = {105_mm, fromMemory};
    recipe.nodes = {3, fromMemory};
    recipe.rootZoneIdeal = {18.5_degC, commonPractice};
    recipe.daysToRoot = {{28, 49}, fromMemory};
    recipe.takePercent = {{70, 70}, ownFigure};
    recipe.covers = {{Cover::Tent, Cover::Mist}, fromMemory};
    recipe.medium = {{{"coir", 2}, {"perlite", 1}}, fromMemory};
    recipe.weanDays = {10, fromMemory};
    return recipe;
}

} // namespace

TEST_CASE("Figures are listed in words, in their order, each with its source") {
    const std::vector<FigureText> texts = figureTexts(invented());
    REQUIRE(texts.size() == figureLabels.size());
    for (std::size_t i = 0; i < texts.size(); ++i) {
        CHECK(texts[i].kind == static_cast<FigureKind>(i));
        CHECK(texts[i].label == figureLabels[i]);
    }
    const auto valueOf = [&texts](FigureKind kind) { return texts[static_cast<std::size_t>(kind)].value; };
    CHECK(valueOf(FigureKind::Season) == "07-20 to 09-15");
    CHECK(valueOf(FigureKind::CuttingLength) == "10.5 cm");
    CHECK(valueOf(FigureKind::Nodes) == "3");
    CHECK(valueOf(FigureKind::NodesBuried) == "not counted");
    CHECK(valueOf(FigureKind::Wound) == "no");
    CHECK(valueOf(FigureKind::RootZoneIdeal) == "18.5 °C");
    CHECK(valueOf(FigureKind::DaysToRoot) == "28 to 49 days");
    CHECK(valueOf(FigureKind::TakePercent) == "70 %");
    CHECK(valueOf(FigureKind::Covers) == "tent, else mist");
    CHECK(valueOf(FigureKind::Medium) == "coir 2 : perlite 1");
    CHECK(valueOf(FigureKind::WeanDays) == "10 days");
    CHECK(texts[static_cast<std::size_t>(FigureKind::RootZoneIdeal)].source == commonPractice);
}

TEST_CASE("A changed copy differs from its original in the changed figures only") {
    const Recipe original = invented();
    CHECK(differences(original, original).empty());
    Recipe own = original;
    own.rootZoneIdeal = {20_degC, ownFigure};
    own.covers = {{Cover::Tent}, ownFigure};
    own.daysToRoot.source = ownFigure; // confirmed, not changed
    own.name = "upstairs bench";
    const std::vector<FigureDifference> found = differences(own, original);
    REQUIRE(found.size() == 2);
    CHECK(found[0].own == FigureText{FigureKind::RootZoneIdeal, "root zone", "20 °C", ownFigure});
    CHECK(found[0].original == FigureText{FigureKind::RootZoneIdeal, "root zone", "18.5 °C", commonPractice});
    CHECK(found[1].own.value == "tent");
    CHECK(found[1].original.value == "tent, else mist");
}

TEST_CASE("Every change of a figure's value shows as a difference") {
    const Recipe original = invented();
    Recipe other = original;
    std::size_t changed = 0;
    const auto change = [&](auto& figure, auto value) {
        figure.value = value;
        CHECK(differences(other, original).size() == ++changed);
    };
    change(other.season, Season{{7, 21}, {9, 15}});
    change(other.cuttingLength, 104_mm);
    change(other.nodes, std::optional<int>{});
    change(other.nodesBuried, std::optional<int>{0});
    change(other.wound, true);
    change(other.tipRemoved, true);
    change(other.leafTrim, std::string{"half"});
    change(other.rootZoneLow, 0.1_degC);
    change(other.rootZoneIdeal, 18.6_degC);
    change(other.rootZoneHigh, 30_degC);
    change(other.air, 15_degC);
    change(other.daysToRoot, IntRange{28, 50});
    change(other.base, 5_degC);
    change(other.takePercent, IntRange{69, 70});
    change(other.hormone, std::string{"IBA 1000 ppm"});
    change(other.hormoneForm, std::string{"powder"});
    change(other.covers, std::vector{Cover::Mist, Cover::Tent});
    change(other.medium, std::vector<MediumComponent>{{"coir", 1}, {"perlite", 1}});
    change(other.container, std::string{"tray 40"});
    change(other.cuttingsPerContainer, 40);
    change(other.weanDays, 0);
    change(other.growOnDays, 1);
    change(other.aftercare, std::string{"shade"});
    change(other.caution, std::string{"thorns"});
    CHECK(changed == figureLabels.size());
}
