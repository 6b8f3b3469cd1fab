#pragma once

#include "core/crop/library/row.h"
#include "core/crop/library/sheet.h"

namespace warmbench {

/// The columns of recipes.csv.
[[nodiscard]] std::vector<std::string> publishedColumns();
/// The columns of recipes_memory.csv; without the first three, those of wood_defaults.csv and
/// common_practice.csv.
[[nodiscard]] std::vector<std::string> memoryColumns();
[[nodiscard]] std::vector<std::string> woodColumns();

/// The current record of recipes.csv. Figures that the record marks as a trial's, a bound such as `>50`, one
/// end of a range, or words that name no amount are printed but do not enter a recipe.
[[nodiscard]] RecipeRow publishedRow(Sheet& sheet);

/// The current record of one of the other three files. `kind` says which; unless it is CommonPractice, every
/// cell but those of nodes must be filled.
[[nodiscard]] RecipeRow woodRow(Sheet& sheet, RowKind kind);

} // namespace warmbench
