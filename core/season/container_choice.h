#pragma once

#include "core/book/house_book.h"

namespace warmbench::season {

/// The kind of container that a recipe asks for by name, else the one that takes about as many cuttings; null
/// where the book has none.
[[nodiscard]] const ContainerType* containerFor(const HouseBook& book, const Recipe& recipe);

/// Cuttings that one takes: as many as the recipe says of the kind that it asks for.
[[nodiscard]] int cuttingsIn(const ContainerType& type, const Recipe& recipe);

} // namespace warmbench::season
