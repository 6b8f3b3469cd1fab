#pragma once

#include "core/crop/crop.h"
#include "core/quantity/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace warmbench {

/// The names of a recipe's figures, as in the JSON of house books: `root_zone_ideal_c`, `take_percent`, ...
[[nodiscard]] std::vector<std::string> recipeFigureNames();

/// The recipe with one figure changed to a person's own, which its source then says. Values are as people
/// write them: `21.5`, `yes`, `21 to 35`, `07-20 to 09-15`, `mist, tent`, `2 coir, 1 perlite`; numbers are in
/// the unit that the figure's name ends with. Refused: an unknown figure, a value that is none of its kind.
/// Whether the figures fit together is for the book's rules to say.
[[nodiscard]] Result<Recipe> withOwnFigure(Recipe recipe, const std::string& figure,
                                           const std::string& value);

} // namespace warmbench
