#pragma once

#include "core/rooting/sighting.h"

#include <vector>

namespace warmbench::rooting {

/// The greatest log-likelihood that rooting laws approach without reaching it, for any family: where all
/// roots come at one moment (sigma towards 0, with mu fixed or nearing a time in the data), or where when
/// they come is spread without end (sigma towards infinity). With `allRoot` the share stays 1. Minus infinity
/// where every such law has no likelihood. `sightings` as merged() gives them.
double supremumAtLimits(const std::vector<Sighting>& sightings, bool allRoot);

} // namespace warmbench::rooting
