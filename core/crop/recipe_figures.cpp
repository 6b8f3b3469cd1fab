#include "core/crop/recipe_figures.h"

#include "core/quantity/decimal.h"

namespace warmbench {

std::string valueText(const Season& season) {
    return season.from.iso() + " to " + season.to.iso();
}

std::string valueText(Millimetres length) {
    return decimalText(length.parts, 1) + " cm";
}

std::string valueText(std::optional<int> count) {
    return count ? valueText(*count) : "not counted";
}

std::string valueText(bool yes) {
    return yes ? "yes" : "no";
}

std::string valueText(const std::string& words) {
    return words;
}

std::string valueText(Celsius temperature) {
    return decimalText(temperature.parts, 1) + " °C";
}

std::string valueText(const IntRange& range) {
    if (range.low == range.high) return std::to_string(range.low);
    return std::to_string(range.low) + " to " + std::to_string(range.high);
}

std::string valueText(int count) {
    return std::to_string(count);
}

std::string valueText(const std::vector<Cover>& covers) {
    std::string text;
    for (const Cover cover : covers) {
        if (!text.empty()) text += ", else ";
        text += coverNames[static_cast<std::size_t>(cover)];
    }
    return text;
}

std::string valueText(const std::vector<MediumComponent>& medium) {
    std::string text;
    for (const MediumComponent& component : medium) {
        if (!text.empty()) text += " : ";
        text += component.name + ' ' + std::to_string(component.parts);
    }
    return text;
}

std::string hormoneText(const Recipe& recipe) {
    const std::string& hormone = recipe.hormone.value;
    const std::string& form = recipe.hormoneForm.value;
    return form.empty() || form == hormone ? hormone : hormone + ", " + form;
}

std::string withUnit(FigureKind kind, std::string value) {
    switch (kind) {
    case FigureKind::DaysToRoot:
    case FigureKind::WeanDays:
    case FigureKind::GrowOnDays:
        return value + " days";
    case FigureKind::TakePercent:
        return value + " %";
    default:
        return value;
    }
}

std::vector<FigureText> figureTexts(const Recipe& recipe) {
    std::vector<FigureText> texts;
    texts.reserve(figureLabels.size());
    const auto addText = [&texts](FigureKind kind, const auto& figure) {
        texts.push_back({kind, figureLabels[static_cast<std::size_t>(kind)],
                         withUnit(kind, valueText(figure.value)), figure.source});
    };
    visitFigures(addText, recipe);
    return texts;
}

std::vector<FigureDifference> differences(const Recipe& own, const Recipe& original) {
    std::vector<FigureText> ownTexts = figureTexts(own);
    std::vector<FigureText> originalTexts = figureTexts(original);
    std::vector<FigureDifference> found;
    for (std::size_t i = 0; i < ownTexts.size(); ++i)
        if (ownTexts[i].value != originalTexts[i].value)
            found.push_back({std::move(ownTexts[i]), std::move(originalTexts[i])});
    return found;
}

} // namespace warmbench
