#pragma once

#include "core/rooting/sighting.h"

#include <span>
#include <vector>

namespace warmbench::rooting {

/// What one root check of a batch found among the cuttings that were still without roots.
struct CheckRound {
    double time = 0;    ///< degree-days since striking, more than at the check before
    double rooted = 0;  ///< newly rooted
    double dead = 0;    ///< found dead, without roots
    double removed = 0; ///< taken away alive without roots
};

/// How a cutting that is found dead counts.
enum class DeathRule {
    UntilPrevious, ///< as alive without roots at the check before, of unknown fate since
    UntilThis,     ///< as alive without roots at the check that found it dead
    NeverRoots,    ///< as one that never roots
};

/// The sightings that a batch's checks amount to: rooted between two checks, dead by the rule, removed or
/// still without roots at the last check alive then. `struck` is at least the sum of all that the checks
/// found.
std::vector<Sighting> sightingsOf(double struck, std::span<const CheckRound> checks, DeathRule rule);

} // namespace warmbench::rooting
