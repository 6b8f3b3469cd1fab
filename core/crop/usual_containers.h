#pragma once

#include "core/crop/crop.h"

#include <vector>

namespace warmbench {

/// The kinds of container that the built-in recipes name, for a book that has none yet, with slots of 130 mm
/// in mind. Sizes: common practice, no source; a nursery's own are measured and changed.
[[nodiscard]] std::vector<ContainerType> usualContainers();

} // namespace warmbench
