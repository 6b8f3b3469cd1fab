#pragma once

#include "core/crop/crop.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace warmbench {

/// The figures of a recipe, in the order in which they are shown.
enum class FigureKind : std::uint8_t {
    Season,
    CuttingLength,
    Nodes,
    NodesBuried,
    Wound,
    TipRemoved,
    LeafTrim,
    RootZoneLow,
    RootZoneIdeal,
    RootZoneHigh,
    Air,
    DaysToRoot,
    Base,
    TakePercent,
    Hormone,
    HormoneForm,
    Covers,
    Medium,
    Container,
    CuttingsPerContainer,
    WeanDays,
    GrowOnDays,
    Aftercare,
    Caution
};

/// What each figure is called.
inline constexpr std::array<const char*, 24> figureLabels{"season (north)",
                                                          "cutting length",
                                                          "nodes",
                                                          "nodes in the medium",
                                                          "wound",
                                                          "tip removed",
                                                          "leaf trimmed",
                                                          "root zone, lowest",
                                                          "root zone",
                                                          "root zone, highest",
                                                          "air",
                                                          "days to root",
                                                          "base of thermal time",
                                                          "take",
                                                          "hormone",
                                                          "hormone as",
                                                          "cover",
                                                          "medium",
                                                          "container",
                                                          "cuttings in a container",
                                                          "days to wean",
                                                          "days to grow on",
                                                          "aftercare",
                                                          "caution"};

/// Calls `visit(kind, figure)` for every figure of a recipe, in the order of FigureKind; `AnyRecipe` is
/// Recipe or const Recipe.
template <class AnyRecipe, class Visit>
void visitFigures(AnyRecipe& recipe, Visit&& visit) {
    visit(FigureKind::Season, recipe.season);
    visit(FigureKind::CuttingLength, recipe.cuttingLength);
    visit(FigureKind::Nodes, recipe.nodes);
    visit(FigureKind::NodesBuried, recipe.nodesBuried);
    visit(FigureKind::Wound, recipe.wound);
    visit(FigureKind::TipRemoved, recipe.tipRemoved);
    visit(FigureKind::LeafTrim, recipe.leafTrim);
    visit(FigureKind::RootZoneLow, recipe.rootZoneLow);
    visit(FigureKind::RootZoneIdeal, recipe.rootZoneIdeal);
    visit(FigureKind::RootZoneHigh, recipe.rootZoneHigh);
    visit(FigureKind::Air, recipe.air);
    visit(FigureKind::DaysToRoot, recipe.daysToRoot);
    visit(FigureKind::Base, recipe.base);
    visit(FigureKind::TakePercent, recipe.takePercent);
    visit(FigureKind::Hormone, recipe.hormone);
    visit(FigureKind::HormoneForm, recipe.hormoneForm);
    visit(FigureKind::Covers, recipe.covers);
    visit(FigureKind::Medium, recipe.medium);
    visit(FigureKind::Container, recipe.container);
    visit(FigureKind::CuttingsPerContainer, recipe.cuttingsPerContainer);
    visit(FigureKind::WeanDays, recipe.weanDays);
    visit(FigureKind::GrowOnDays, recipe.growOnDays);
    visit(FigureKind::Aftercare, recipe.aftercare);
    visit(FigureKind::Caution, recipe.caution);
}

/// A figure in words, with its unit: temperatures in °C, lengths in centimetres, seasons as `07-20 to 09-15`.
struct FigureText {
    FigureKind kind = FigureKind::Season;
    std::string label;
    std::string value;
    std::string source; ///< as the recipe holds it: an id or a mark
    friend bool operator==(const FigureText&, const FigureText&) = default;
};

[[nodiscard]] std::string valueText(const Season& season);
[[nodiscard]] std::string valueText(Millimetres length);
[[nodiscard]] std::string valueText(std::optional<int> count); ///< `not counted` for none
[[nodiscard]] std::string valueText(bool yes);
[[nodiscard]] std::string valueText(const std::string& words);
[[nodiscard]] std::string valueText(Celsius temperature);
[[nodiscard]] std::string valueText(const IntRange& range);
[[nodiscard]] std::string valueText(int count);
[[nodiscard]] std::string valueText(const std::vector<Cover>& covers);
[[nodiscard]] std::string valueText(const std::vector<MediumComponent>& medium);

/// `days`, `%` or nothing: what is written after a figure that is a count or a range.
[[nodiscard]] std::string_view unitOf(FigureKind kind);

/// All figures of a recipe, in the order of FigureKind.
[[nodiscard]] std::vector<FigureText> figureTexts(const Recipe& recipe);

/// One figure that two recipes hold differently.
struct FigureDifference {
    FigureText own;
    FigureText original;
};

/// The figures whose values differ between a changed copy and its original; one that only names another
/// source does not count.
[[nodiscard]] std::vector<FigureDifference> differences(const Recipe& own, const Recipe& original);

} // namespace warmbench
