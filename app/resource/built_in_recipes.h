#pragma once

#include "core/crop/library/library.h"

namespace warmbench::app {

/// The recipes that are built into the program, read once.
const RecipeLibrary& builtInRecipes();

} // namespace warmbench::app
