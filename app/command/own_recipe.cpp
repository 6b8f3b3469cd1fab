#include "app/command/call.h"
#include "app/command/open_book.h"
#include "app/resource/built_in_recipes.h"
#include "core/book/command.h"
#include "core/crop/library/sheet.h"
#include "core/crop/library/taxon_name.h"
#include "core/crop/recipe_figures.h"
#include "core/exchange/book/recipe_change.h"

#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct OwnRecipeOptions {
    std::string book;
    std::string taxon;
    std::string wood;
    std::string name;
    std::vector<std::string> figures;
};

/// A book's taxon of this botanical name or synonym, else the only one of this common name.
const Taxon* taxonIn(const HouseBook& book, const std::string& name) {
    const std::string key = nameKey(name);
    const auto matches = [&](const std::vector<std::string>& names) {
        return std::any_of(names.begin(), names.end(),
                           [&](const std::string& one) { return nameKey(one) == key; });
    };
    const Taxon* common = nullptr;
    int commons = 0;
    for (const auto& [id, taxon] : book.all<Taxon>()) {
        if (nameKey(taxon.name) == key || matches(taxon.synonyms)) return &taxon;
        if (!matches(taxon.commonNames)) continue;
        common = &taxon;
        ++commons;
    }
    return commons == 1 ? common : nullptr;
}

/// The taxon as the built-in recipes know it; refused where they do not know one of that name.
Result<Taxon> knownTaxon(const std::string& name) {
    const auto found = builtInRecipes().named(name);
    if (found.size() != 1)
        return Refusal{name, "found " + std::to_string(found.size()) +
                                 " taxa of this name, expected the name of one in the book or built in"};
    Taxon taxon;
    taxon.name = found.front()->name;
    taxon.synonyms = found.front()->synonyms;
    taxon.commonNames = found.front()->commonNames;
    return taxon;
}

const Recipe* recipeIn(const HouseBook& book, TaxonId taxon, Wood wood, const std::string& name) {
    for (const auto& [id, recipe] : book.all<Recipe>())
        if (recipe.taxon == taxon && recipe.wood == wood && recipe.name == name) return &recipe;
    return nullptr;
}

Result<Recipe> changed(Recipe recipe, const std::vector<std::string>& figures) {
    for (const std::string& figure : figures) {
        const std::size_t equals = figure.find('=');
        if (equals == std::string::npos)
            return Refusal{"--set", "found '" + figure + "', expected FIGURE=VALUE"};
        auto next = withOwnFigure(std::move(recipe), figure.substr(0, equals), figure.substr(equals + 1));
        if (!next) return next.refusal();
        recipe = std::move(*next);
    }
    return recipe;
}

void show(const std::string& taxon, const Recipe& own) {
    std::cout << taxon << ", " << woodNames[static_cast<std::size_t>(own.wood)];
    if (!own.name.empty()) std::cout << ", " << own.name;
    std::cout << '\n';
    const auto original = builtInRecipes().composeOrigin(own.origin);
    for (const FigureText& figure : figureTexts(own)) {
        std::cout << "  " << figure.label << ": " << figure.value << " (" << figure.source << ")\n";
        if (!original) continue;
        for (const FigureDifference& difference : differences(own, *original))
            if (difference.own.kind == figure.kind)
                std::cout << "      built in: " << difference.original.value << " ("
                          << builtInRecipes().sourceText(difference.original.source) << ")\n";
    }
    if (!original) std::cout << "No built-in recipe stands beside it.\n";
}

int keepRecipe(const OwnRecipeOptions& options) {
    const auto file = openBook(options.book, options.figures.empty() ? OpenMode::Read : OpenMode::Write);
    if (!file) return refuseFile(file.refusal());
    const HouseBook& book = (*file)->book();
    const Wood wood = *woodNamed(options.wood);

    Group group;
    const Taxon* known = taxonIn(book, options.taxon);
    Taxon taxon;
    if (known) {
        taxon = *known;
    } else {
        auto builtIn = knownTaxon(options.taxon);
        if (!builtIn) return refuse(builtIn.refusal());
        taxon = *builtIn;
        group.commands.push_back(Put<Taxon>{taxon});
        taxon.id = book.nextId<Taxon>();
    }
    Recipe recipe;
    if (const Recipe* own = recipeIn(book, taxon.id, wood, options.name)) {
        recipe = *own;
    } else {
        recipe = builtInRecipes().compose(taxon.name, wood);
        recipe.taxon = taxon.id;
        recipe.name = options.name;
    }
    if (options.figures.empty()) {
        if (recipe.id == RecipeId{}) std::cout << "The book has no recipe of its own yet; built in:\n";
        show(taxon.name, recipe);
        return done;
    }
    const auto next = changed(std::move(recipe), options.figures);
    if (!next) return refuse(next.refusal());
    group.label = phrase("Change a recipe of %1", taxon.name).text();
    group.commands.push_back(Put<Recipe>{*next});
    if (auto refusal = (*file)->perform(Command{std::move(group)})) return refuse(*refusal);
    show(taxon.name, *next);
    return done;
}

} // namespace

void addOwnRecipe(CLI::App& program, Work& work) {
    CLI::App* call = program.add_subcommand(
        "own-recipe", "Show a house book's own recipe beside the built-in one, or change figures of it");
    const auto options = std::make_shared<OwnRecipeOptions>();
    call->add_option("book", options->book, "The house book")->required();
    call->add_option("taxon", options->taxon, "A botanical or common name")->required();
    call->add_option("--wood", options->wood, "The wood of the cuttings")
        ->required()
        ->check(CLI::IsMember(std::vector<std::string>{woodNames.begin(), woodNames.end()}));
    call->add_option("--name", options->name, "To keep several recipes of one taxon and wood apart");
    call->add_option("--set", options->figures,
                     "FIGURE=VALUE, such as root_zone_ideal_c=21 or \"days_to_root=21 to 35\"; the built-in "
                     "recipe is copied into the book first, and stays to compare");
    call->callback([&work, options] { work = [options] { return keepRecipe(*options); }; });
}

} // namespace warmbench::app
