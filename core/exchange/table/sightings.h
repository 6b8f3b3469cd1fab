#pragma once

#include "core/quantity/result.h"
#include "core/rooting/sighting.h"

#include <string>
#include <vector>

namespace warmbench::exchange {

/// The cuttings that one rooting law is fitted to.
struct SightingGroup {
    std::string name;
    std::vector<rooting::Sighting> sightings;
};

/// Reads a CSV text with the columns `group`, `from`, `to`, `count` and `outcome` (`rooted`, `unrooted` or
/// `never`; see Sighting). The groups are in order of first appearance. `name` is the file's, for refusals;
/// with `allRoot` cuttings that never root are refused.
Result<std::vector<SightingGroup>> readSightings(const std::string& name, std::string text, bool allRoot);

} // namespace warmbench::exchange
