#include "app/command/recipe_report.h"

#include "core/quantity/utf8.h"
#include "core/rooting/prior/recipe_prior.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cctype>
#include <cmath>

namespace warmbench::app {
namespace {

std::string woodText(Wood wood) {
    return woodNames[static_cast<std::size_t>(wood)];
}

/// A text with blanks behind it up to a width in characters.
std::string padded(std::string text, std::size_t width) {
    const std::size_t letters = characters(text);
    text.append(width - std::min(width, letters), ' ');
    return text;
}

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) text += (text.empty() ? "" : ", ") + word;
    return text;
}

/// The ids of publications named in a figure's source, also within one that is derived.
void collectIds(const RecipeLibrary& library, const std::string& source, std::set<std::string>& ids) {
    const auto isPartOfId = [](char c) {
        return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_';
    };
    auto first = source.begin();
    while ((first = std::find_if(first, source.end(), isPartOfId)) != source.end()) {
        const auto end = std::find_if_not(first, source.end(), isPartOfId);
        if (const std::string word{first, end}; library.source(word)) ids.insert(word);
        first = end;
    }
}

void writeGiven(std::ostream& out, const GivenFigure& given) {
    out << "      " << padded(given.value, 34) << "  " << given.source;
    if (!given.evidence.empty()) out << " [" << given.evidence << ']';
    out << (given.taxon.empty() ? std::string{" for the wood in general"} : " on " + given.taxon) << '\n';
    if (!given.note.empty()) out << "        " << given.note << '\n';
}

void writeRooting(std::ostream& out, const Recipe& recipe) {
    const auto need = rooting::rootingNeed(recipe);
    if (need)
        out << "  of those that root, a tenth have by " << need->t10().units() << " degree-days, half by "
            << need->t50().units() << ", nine tenths by " << need->t90().units() << "\n    "
            << need->derivation << '\n';
    else
        out << "  no thermal time: " << need.refusal().text() << '\n';
    if (const auto prior = rooting::takePrior(recipe)) {
        const double share = prior->share.alpha / (prior->share.alpha + prior->share.beta);
        out << "  of those struck, about " << std::lround(share * 100) << " in 100 are expected to root\n    "
            << prior->derivation << '\n';
    }
}

void writeRecipe(std::ostream& out, const RecipeLibrary& library, const RecipeReport& report, Wood wood,
                 std::set<std::string>& ids) {
    out << report.taxon << ", " << woodText(wood) << '\n';
    for (const FigureComparison& figure : library.sideBySide(report.taxon, wood)) {
        out << "  " << padded(figure.used.label, 24) << padded(figure.used.value, 34) << "  "
            << figure.used.source << (figure.differ ? " (sources differ)" : "") << '\n';
        collectIds(library, figure.used.source, ids);
        if (!report.sideBySide) continue;
        for (const GivenFigure& given : figure.given) {
            writeGiven(out, given);
            collectIds(library, given.source, ids);
        }
    }
    writeRooting(out, library.compose(report.taxon, wood));
    out << '\n';
}

void writeCautions(std::ostream& out, const RecipeLibrary& library, const std::string& taxon,
                   std::set<std::string>& ids) {
    out << "Cautions by genus. " << cautionIsNoPromise << '\n';
    const auto cautions = library.cautionsOf(taxon);
    if (cautions.empty()) out << "  the lists name nothing of this genus\n";
    for (const Caution* caution : cautions) {
        out << "  " << caution->plants << ": " << caution->hazard << " (" << caution->source << ", "
            << caution->evidence << ")\n";
        collectIds(library, caution->source, ids);
    }
}

nlohmann::json rootingJson(const Recipe& recipe) {
    nlohmann::json json;
    if (const auto need = rooting::rootingNeed(recipe))
        json["thermal"] = {{"mu", need->mu},
                           {"sigma", need->sigma},
                           {"base_c", need->base.units()},
                           {"t10", need->quantile(0.1)},
                           {"t50", need->quantile(0.5)},
                           {"t90", need->quantile(0.9)},
                           {"derivation", need->derivation}};
    if (const auto prior = rooting::takePrior(recipe))
        json["take"] = {
            {"alpha", prior->share.alpha}, {"beta", prior->share.beta}, {"derivation", prior->derivation}};
    return json;
}

nlohmann::json recipeJson(const RecipeLibrary& library, const std::string& taxon, Wood wood) {
    const Recipe recipe = library.compose(taxon, wood);
    nlohmann::json json = rootingJson(recipe);
    json["wood"] = woodText(wood);
    json["origin"] = recipe.origin;
    for (const FigureComparison& figure : library.sideBySide(taxon, wood)) {
        nlohmann::json all = nlohmann::json::array();
        for (const GivenFigure& given : figure.given)
            all.push_back({{"taxon", given.taxon},
                           {"value", given.value},
                           {"source", given.source},
                           {"source_text", library.sourceText(given.source)},
                           {"evidence", given.evidence},
                           {"note", given.note}});
        json["figures"].push_back({{"figure", figure.used.label},
                                   {"value", figure.used.value},
                                   {"source", figure.used.source},
                                   {"source_text", library.sourceText(figure.used.source)},
                                   {"sources_differ", figure.differ},
                                   {"given", std::move(all)}});
    }
    return json;
}

std::vector<std::string> woodTexts(const RecipeLibrary& library, const KnownTaxon& taxon) {
    std::vector<std::string> texts;
    for (const Wood wood : library.woodsOf(taxon)) texts.push_back(woodText(wood));
    return texts;
}

} // namespace

void writeRecipes(std::ostream& out, const RecipeLibrary& library, const RecipeReport& report) {
    std::set<std::string> ids;
    for (const Wood wood : report.woods) writeRecipe(out, library, report, wood, ids);
    writeCautions(out, library, report.taxon, ids);
    if (ids.empty()) return;
    out << "\nSources\n";
    for (const std::string& id : ids)
        out << "  " << id << ": " << library.sourceText(id) << " [read: " << library.source(id)->opened
            << "]\n";
}

nlohmann::json recipesJson(const RecipeLibrary& library, const RecipeReport& report) {
    nlohmann::json json{{"taxon", report.taxon},
                        {"caution", cautionIsNoPromise},
                        {"cautions", nlohmann::json::array()},
                        {"recipes", nlohmann::json::array()}};
    for (const Caution* caution : library.cautionsOf(report.taxon))
        json["cautions"].push_back({{"plants", caution->plants},
                                    {"hazard", caution->hazard},
                                    {"category", caution->category},
                                    {"parts", caution->parts},
                                    {"source", caution->source},
                                    {"source_text", library.sourceText(caution->source)},
                                    {"evidence", caution->evidence}});
    for (const Wood wood : report.woods) json["recipes"].push_back(recipeJson(library, report.taxon, wood));
    return json;
}

void writeTaxa(std::ostream& out, const RecipeLibrary& library, const std::vector<const KnownTaxon*>& taxa) {
    for (const KnownTaxon* taxon : taxa) {
        const std::vector<std::string> woods = woodTexts(library, *taxon);
        out << taxon->name;
        if (!taxon->commonNames.empty()) out << " (" << joined(taxon->commonNames) << ')';
        out << ": " << (woods.empty() ? "root cuttings only, which are not planned here" : joined(woods))
            << '\n';
    }
}

nlohmann::json taxaJson(const RecipeLibrary& library, const std::vector<const KnownTaxon*>& taxa) {
    nlohmann::json json{{"taxa", nlohmann::json::array()}};
    for (const KnownTaxon* taxon : taxa)
        json["taxa"].push_back({{"taxon", taxon->name},
                                {"synonyms", taxon->synonyms},
                                {"common_names", taxon->commonNames},
                                {"woods", woodTexts(library, *taxon)}});
    return json;
}

} // namespace warmbench::app
