#pragma once

#include "core/rooting/rooting_law.h"
#include "core/rooting/sighting.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace warmbench::rooting {

enum class FitStatus : std::uint8_t {
    Inside,         ///< one greatest likelihood, with a share below 1
    AllRoot,        ///< the likelihood is greatest where all root
    NoUniqueAnswer, ///< no finite maximum, or more than one
};
/// `inside`, `all-root` or `no-unique-answer`.
std::string_view statusName(FitStatus status);

struct LawErrors {
    std::optional<double> share; ///< absent where all root
    double mu = 0;
    double sigma = 0;
};

struct RootingFit {
    FitStatus status = FitStatus::NoUniqueAnswer;
    double cuttings = 0;
    double logLikelihood = 0;        ///< the greatest, or the value approached
    std::optional<RootingLaw> law;   ///< absent without a unique answer
    std::optional<LawErrors> errors; ///< standard errors from the observed information
};

/// Fits a rooting law to sightings by maximum likelihood; with `allRoot` the share is held at 1, and no
/// sighting may be of cuttings that never root. The status is decided by comparing the maximum found inside
/// with the one where all root (there the problem is concave) and with the exact supremum at the limits where
/// sigma is 0 or without bound.
RootingFit fitRooting(Family family, const std::vector<Sighting>& sightings, bool allRoot = false);

} // namespace warmbench::rooting
