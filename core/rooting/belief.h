#pragma once

#include "core/rooting/beta_binomial.h"
#include "core/rooting/look.h"
#include "core/rooting/proportion.h"
#include "core/rooting/rooting_law.h"
#include "core/rooting/sighting.h"

#include <cstddef>
#include <vector>

namespace warmbench::rooting {

/// What is believed of a batch before its checks: the share that roots has a beta law; mu and ln sigma are
/// normal; all three independent. Deviations are above 0.
struct RootingPrior {
    Family family = Family::LogLogistic;
    BetaShape share;
    double mu = 0;
    double muDeviation = 1;
    double logSigma = 0;
    double logSigmaDeviation = 1;
};

/// The share that roots among those alive, when the share of all struck has the law `take` and the part
/// `deadPart` of them is dead. Those that never root die first: their shape shrinks to n / (n + deadPart / 2)
/// of itself, n being the part expected never to root. A compromise between only such deaths and deaths by
/// chance alone; tests/speed measures how both hold.
BetaShape amongAlive(BetaShape take, double deadPart);

/// What is known of a batch: sightings of single cuttings, and looks at samples of those that stand together.
struct Evidence {
    std::vector<Sighting> sightings;
    std::vector<LookSeries> looks;
};

/// A grid in units of the belief's own deviations. What the defaults leave out is measured against a long run
/// in tests/core/rooting.
struct Quadrature {
    double step = 0.7;
    double radius = 5.6;
};

struct Moments {
    double mean = 0;
    double deviation = 0;
};

struct CountForecast {
    double expected = 0;         ///< rooted by the horizon, with those rooted now
    Interval interval;           ///< of their number, at the level asked for
    double sureness = 0;         ///< chance that at least the wanted number has rooted
    std::vector<double> atLeast; ///< chance that at least 0, 1, 2, ... have
};

/// What is believed of a batch after its checks, by Bayes' rule: the prior times the likelihood of the
/// evidence, summed over a grid of (ln(p / (1 - p)), mu, ln sigma). For one hump, as these priors give; no
/// sampling, so that the same data give the same figures. resources/doc/rooting-model.md has the likelihood.
class RootingBelief {
public:
    RootingBelief(const RootingPrior& prior, const Evidence& evidence, const Quadrature& quadrature = {});

    [[nodiscard]] Moments share() const;
    [[nodiscard]] Moments mu() const;
    [[nodiscard]] Moments logSigma() const;
    /// ln of the evidence's probability under the prior, but for factors that depend on the evidence alone.
    [[nodiscard]] double logEvidence() const { return m_logEvidence; }

    /// The share of all struck that has rooted by a time.
    [[nodiscard]] Moments rootedBy(double time) const;
    /// Its interval that leaves out (1 - level) / 2 on each side.
    [[nodiscard]] Interval rootedInterval(double time, double level) const;
    /// The time by which the part `part` of those that ever root has rooted, with a probability of `sure`;
    /// both above 0 and below 1.
    [[nodiscard]] double readyTime(double part, double sure) const;
    /// How many of those that stand will have rooted by `horizon`, not before any look at them, if no more
    /// die.
    [[nodiscard]] CountForecast forecast(const std::vector<CuttingsLeft>& left, double horizon, double wanted,
                                         double level) const;

private:
    /// Nodes of the grid with the same mu and sigma lie together and share one.
    struct Timing {
        double mu;
        double sigma;
        double weight; ///< 1 in sum
    };
    struct Node {
        double share;
        std::size_t timing; ///< place in m_timings
        double weight;      ///< 1 in sum
    };

    /// The part of those that root that has by a time, for each timing.
    [[nodiscard]] std::vector<double> timingsBy(double time) const;

    Family m_family;
    std::vector<Timing> m_timings;
    std::vector<Node> m_nodes;
    double m_logEvidence = 0;
};

} // namespace warmbench::rooting
