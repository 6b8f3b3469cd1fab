#pragma once

#include "core/crop/crop.h"

#include <array>
#include <string>
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

/// Calls `visit(kind, figure...)` for every figure, in the order of FigureKind, with that figure of each of
/// the recipes given (Recipe or const Recipe).
template <class Visit, class... Recipes>
void visitFigures(Visit&& visit, Recipes&... recipes) {
    visit(FigureKind::Season, recipes.season...);
    visit(FigureKind::CuttingLength, recipes.cuttingLength...);
    visit(FigureKind::Nodes, recipes.nodes...);
    visit(FigureKind::NodesBuried, recipes.nodesBuried...);
    visit(FigureKind::Wound, recipes.wound...);
    visit(FigureKind::TipRemoved, recipes.tipRemoved...);
    visit(FigureKind::LeafTrim, recipes.leafTrim...);
    visit(FigureKind::RootZoneLow, recipes.rootZoneLow...);
    visit(FigureKind::RootZoneIdeal, recipes.rootZoneIdeal...);
    visit(FigureKind::RootZoneHigh, recipes.rootZoneHigh...);
    visit(FigureKind::Air, recipes.air...);
    visit(FigureKind::DaysToRoot, recipes.daysToRoot...);
    visit(FigureKind::Base, recipes.base...);
    visit(FigureKind::TakePercent, recipes.takePercent...);
    visit(FigureKind::Hormone, recipes.hormone...);
    visit(FigureKind::HormoneForm, recipes.hormoneForm...);
    visit(FigureKind::Covers, recipes.covers...);
    visit(FigureKind::Medium, recipes.medium...);
    visit(FigureKind::Container, recipes.container...);
    visit(FigureKind::CuttingsPerContainer, recipes.cuttingsPerContainer...);
    visit(FigureKind::WeanDays, recipes.weanDays...);
    visit(FigureKind::GrowOnDays, recipes.growOnDays...);
    visit(FigureKind::Aftercare, recipes.aftercare...);
    visit(FigureKind::Caution, recipes.caution...);
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

/// `IBA 1000-3000 ppm, powder`; the form is left out where there is none or it says the same.
[[nodiscard]] std::string hormoneText(const Recipe& recipe);

/// A value in words with the `days` or `%` that its kind asks for.
[[nodiscard]] std::string withUnit(FigureKind kind, std::string value);

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
