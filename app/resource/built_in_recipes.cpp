#include "app/resource/built_in_recipes.h"

#include "app/resource/resource.h"

#include <stdexcept>

namespace warmbench::app {

const RecipeLibrary& builtInRecipes() {
    static const RecipeLibrary library = [] {
        auto read = RecipeLibrary::read(
            {resourceText("recipe/sources.csv"), resourceText("recipe/recipes.csv"),
             resourceText("recipe/recipes_memory.csv"), resourceText("recipe/common_practice.csv"),
             resourceText("recipe/wood_defaults.csv"), resourceText("recipe/cautions.csv")});
        if (!read) throw std::logic_error("the built-in recipes: " + read.refusal().text());
        return *std::move(read);
    }();
    return library;
}

} // namespace warmbench::app
