#pragma once

#include "core/rooting/likelihood.h"

namespace warmbench::rooting {

struct Summit {
    Slant slant;
    double value = 0;
    bool level = false; ///< the climb ended because nothing higher was promised
};

/// Climbs from a start by damped Newton steps; infinite odds stay so (all root). Stops at a local maximum, or
/// far out where the likelihood only creeps towards a limit.
Summit climb(const Likelihood& likelihood, const Slant& start);

} // namespace warmbench::rooting
