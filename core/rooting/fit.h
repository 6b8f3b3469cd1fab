#pragma once

#include "core/rooting/rooting_law.h"
#include "core/rooting/sighting.h"

#include <array>
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

/// Covariances of p, mu and sigma from the observed information, row by row; those of p are 0 where all root.
using LawCovariance = std::array<double, 9>;

struct RootingFit {
    FitStatus status = FitStatus::NoUniqueAnswer;
    double cuttings = 0;
    double logLikelihood = 0;      ///< the greatest, or the value approached
    std::optional<RootingLaw> law; ///< absent without a unique answer
    LawCovariance covariance{};    ///< where there is a law

    /// Standard errors; that of the share is absent where all root, all are without a unique answer.
    [[nodiscard]] std::optional<double> shareError() const;
    [[nodiscard]] std::optional<double> muError() const;
    [[nodiscard]] std::optional<double> sigmaError() const;
};

/// Fits a rooting law to sightings by maximum likelihood; with `allRoot` the share is held at 1, and no
/// sighting may be of cuttings that never root. The status is decided by comparing the maximum found inside
/// with the one where all root (there the problem is concave) and with the exact supremum at the limits where
/// sigma is 0 or without bound.
RootingFit fitRooting(Family family, const std::vector<Sighting>& sightings, bool allRoot = false);

} // namespace warmbench::rooting
