#pragma once

#include "core/rooting/belief.h"

#include <cstdint>
#include <vector>

/// Batches whose every cutting's fate is known, for seeing whether beliefs hold what they promise.
namespace warmbench::tests {

/// Who dies in a simulated batch.
enum class Deaths : std::uint8_t {
    None,
    NeverRooters, ///< seven of ten that would never root, and three of a hundred others
    Anyone,       ///< three of ten cuttings, at some time, unless rooted by then
};

struct SimulatedBatch {
    rooting::RootingPrior prior; ///< from which its law was drawn, for those alive
    rooting::RootingLaw law;
    double struck = 0;
    std::vector<rooting::CuttingsLeft> left; ///< after its checks, pooled
    double now = 0;                          ///< time of the last check
    double next = 0;                         ///< a time half as far again
    double last = 0;                         ///< by when all have rooted that will
    double rootedByNext = 0;                 ///< alive and rooted by `next`
    double rootedByLast = 0;
};

/// A batch of four containers of 40 cuttings with a law drawn from a prior like a recipe's, and one to seven
/// rounds of checks: samples of 6 to 12, or in every fifth batch all cuttings. The same for the same seed.
SimulatedBatch simulatedBatch(std::uint64_t seed, Deaths deaths);

/// How many of `batches` simulated ones lie in their bands.
struct Calibration {
    int batches = 0;
    int shareByNext = 0; ///< the law's share by `next` within its 90 % band; speaks of those alive only
    int countByNext = 0; ///< plants by `next` within their 90 % interval
    int take = 0;        ///< plants by `last` within their 90 % interval
};
Calibration calibration(int batches, Deaths deaths);

} // namespace warmbench::tests
