#pragma once

#include "core/rooting/belief.h"

namespace warmbench::tests {

/// A prior for tests that need any one.
inline const rooting::RootingPrior samplePrior{rooting::Family::LogLogistic, {8, 3}, 5.3, 0.35, -1.2, 0.4};

} // namespace warmbench::tests
