#pragma once

#include "core/crop/library/library.h"

#include <nlohmann/json_fwd.hpp>

#include <ostream>

namespace warmbench::app {

/// What of a taxon's recipes is reported.
struct RecipeReport {
    std::string taxon;
    std::vector<Wood> woods;
    bool sideBySide = false; ///< all sources of every figure, not only the one that is used
};

/// Recipes for a person: every figure with its source, what follows for thermal time and take, cautions, and
/// the publications behind it all.
void writeRecipes(std::ostream& out, const RecipeLibrary& library, const RecipeReport& report);
/// The same as JSON, always with all sources.
[[nodiscard]] nlohmann::json recipesJson(const RecipeLibrary& library, const RecipeReport& report);

/// One line a taxon: its name, common names and woods.
void writeTaxa(std::ostream& out, const RecipeLibrary& library, const std::vector<const KnownTaxon*>& taxa);
[[nodiscard]] nlohmann::json taxaJson(const RecipeLibrary& library,
                                      const std::vector<const KnownTaxon*>& taxa);

} // namespace warmbench::app
