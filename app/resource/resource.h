#pragma once

#include <string>
#include <string_view>

namespace warmbench::app {

/// The text of a file built into the program, by its name under `resources`, such as `recipe/recipes.csv`.
/// The name must be one that app/resource/CMakeLists.txt lists; throws std::logic_error for another.
std::string resourceText(std::string_view name);

} // namespace warmbench::app
