#pragma once

#include "core/rooting/sighting.h"

#include <cstddef>
#include <span>
#include <vector>

namespace warmbench::rooting {

/// A part of all cuttings that roots after `from` and not after `to`; infinite `to`: that never roots or
/// roots after the last check. Where in the interval it does is left open.
struct RootingMass {
    double from = 0;
    double to = 0;
    double mass = 0;
};

struct TurnbullEstimate {
    std::vector<RootingMass> masses; ///< in order of time; those below 1e-8 are left out
    double logLikelihood = 0;
};

/// The nonparametric maximum likelihood estimate of when cuttings root (Turnbull 1976, JRSS B 38:290-295),
/// with its masses within 1e-8 or so where they are unique. Cuttings known never to root count as not rooted
/// after the last time in the data. Without sightings that tell anything all mass never roots.
TurnbullEstimate turnbull(const std::vector<Sighting>& sightings);

/// Cuttings that are known to lie in one of the atoms `first` to `last`.
struct AtomRange {
    std::size_t first = 0;
    std::size_t last = 0;
    double count = 0; ///< above 0
};

/// The masses of `atoms` atoms, not negative and 1 in sum, that maximise the sum of count * ln(mass in
/// range). By Newton steps on a small support to which atoms of too great a gradient are added (Wang 2007,
/// JRSS B 69:185-198, without its least-squares part). `ranges` are not empty.
std::vector<double> likeliestMasses(std::size_t atoms, std::span<const AtomRange> ranges);

/// The sum of count * ln(mass in range).
double massLogLikelihood(std::span<const double> masses, std::span<const AtomRange> ranges);

} // namespace warmbench::rooting
