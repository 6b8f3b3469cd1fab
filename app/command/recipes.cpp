#include "app/command/call.h"
#include "app/command/recipe_report.h"
#include "app/resource/built_in_recipes.h"
#include "core/crop/library/sheet.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct RecipesOptions {
    std::string taxon;
    std::string wood;
    bool sources = false;
    bool json = false;
};

int refuseName(const std::string& found, const std::string& expected) {
    std::cerr << "warmbench: recipes: found '" << found << "', expected " << expected << '\n';
    return badInput;
}

int list(const RecipesOptions& options, const std::vector<const KnownTaxon*>& taxa) {
    if (options.json)
        std::cout << taxaJson(builtInRecipes(), taxa).dump(2) << '\n';
    else
        writeTaxa(std::cout, builtInRecipes(), taxa);
    return done;
}

int show(const RecipesOptions& options, const std::string& taxon, const std::vector<Wood>& woods) {
    const RecipeReport report{taxon, woods, options.sources};
    if (options.json)
        std::cout << recipesJson(builtInRecipes(), report).dump(2) << '\n';
    else
        writeRecipes(std::cout, builtInRecipes(), report);
    return done;
}

int showRecipes(const RecipesOptions& options) {
    const RecipeLibrary& library = builtInRecipes();
    if (options.taxon.empty()) return list(options, library.search(""));
    std::vector<const KnownTaxon*> found = library.named(options.taxon);
    if (found.size() != 1) found = library.search(options.taxon);
    if (found.size() > 1) return list(options, found);
    if (!options.wood.empty())
        return show(options, found.empty() ? options.taxon : found.front()->name, {*woodNamed(options.wood)});
    if (found.empty())
        return refuseName(options.taxon, "a name of a built-in taxon, or --wood for a general recipe");
    const std::set<Wood> woods = library.woodsOf(*found.front());
    if (woods.empty()) return list(options, found);
    return show(options, found.front()->name, {woods.begin(), woods.end()});
}

} // namespace

void addRecipes(CLI::App& program, Work& work) {
    CLI::App* call =
        program.add_subcommand("recipes", "List or show the built-in recipes, with their sources");
    const auto options = std::make_shared<RecipesOptions>();
    call->add_option("taxon", options->taxon,
                     "A botanical or common name, or words of one; all taxa are listed without it");
    call->add_option("--wood", options->wood,
                     "Only this wood; for a taxon that is not built in, a general recipe")
        ->check(CLI::IsMember(std::vector<std::string>{woodNames.begin(), woodNames.end()}));
    call->add_flag("--sources", options->sources, "All sources of every figure, side by side");
    call->add_flag("--json", options->json, "As JSON, with all sources");
    call->callback([&work, options] { work = [options] { return showRecipes(*options); }; });
}

} // namespace warmbench::app
