#pragma once

#include "core/rooting/belief.h"

#include <array>

namespace warmbench::rooting {

/// mu, ln sigma, ln(p / (1 - p)).
using LawPlace = std::array<double, 3>;

/// The density of prior times likelihood over LawPlace, by its logarithm.
class Density {
public:
    Density(const RootingPrior& prior, const Evidence& evidence);

    /// Sets the first two coordinates for the calls of `at` that follow.
    void setTiming(double mu, double logSigma);
    /// At these odds.
    [[nodiscard]] double at(double odds);
    [[nodiscard]] double at(const LawPlace& place) {
        setTiming(place[0], place[1]);
        return at(place[2]);
    }

    /// Means and deviations of the prior.
    [[nodiscard]] LawPlace priorMean() const;
    [[nodiscard]] LawPlace priorDeviation() const;

private:
    struct Alive {
        double time;
        double count;
        double waiting; ///< part of those that will root that has not by then
    };
    struct Series {
        std::vector<double> logTimes;
        std::vector<LookTerm> terms;
        std::vector<double> below; ///< part of those that will root that has by each time
    };

    RootingPrior m_prior;
    double m_logBeta;
    double m_rooted = 0; ///< cuttings of sightings known to root
    double m_never = 0;
    std::vector<Sighting> m_rootedBetween;
    std::vector<Alive> m_alive;
    std::vector<Series> m_series;
    std::vector<double> m_rootedBy;
    double m_timing = 0; ///< what does not depend on the odds
};

/// One point of a grid over LawPlace.
struct GridNode {
    LawPlace place{};
    double weight = 0; ///< 1 in sum
};

struct PosteriorGrid {
    std::vector<GridNode> nodes;
    double logEvidence = 0;
};

/// Sums the density up on a grid laid along its own axes: its mode by damped Newton steps, its means and
/// covariances by a coarse grid that is laid anew until it fits, then the trapezoid rule within a ball.
PosteriorGrid posteriorGrid(Density& density, const Quadrature& quadrature);

} // namespace warmbench::rooting
