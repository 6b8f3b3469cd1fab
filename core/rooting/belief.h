#pragma once

#include "core/rooting/beta_binomial.h"
#include "core/rooting/forecast.h"
#include "core/rooting/proportion.h"
#include "core/rooting/rooting_law.h"
#include "core/rooting/sighting.h"

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

struct Moments {
    double mean = 0;
    double deviation = 0;
};

struct CountForecast {
    double expected = 0; ///< rooted by the horizon, with those rooted now
    Interval interval;   ///< of their number, at the level asked for
    double sureness = 0; ///< chance that at least the wanted number has rooted
};

/// What is believed of a batch after its checks, by Bayes' rule: the prior times the likelihood of the
/// sightings, summed over a grid of (ln(p / (1 - p)), mu, ln sigma) that is drawn in to where there is any
/// weight. For one hump, as these priors give; no sampling, so that the same data give the same figures.
class RootingBelief {
public:
    RootingBelief(const RootingPrior& prior, const std::vector<Sighting>& sightings);

    [[nodiscard]] Moments share() const;
    [[nodiscard]] Moments mu() const;
    [[nodiscard]] Moments logSigma() const;
    /// ln of the sightings' probability under the prior, without the multinomial coefficient.
    [[nodiscard]] double logEvidence() const { return m_logEvidence; }

    /// The share of all struck that has rooted by a time.
    [[nodiscard]] Moments rootedBy(double time) const;
    /// Its interval that leaves out (1 - level) / 2 on each side.
    [[nodiscard]] Interval rootedInterval(double time, double level) const;
    /// The time by which the part `part` of those that ever root has rooted, with a probability of `sure`;
    /// both above 0 and below 1.
    [[nodiscard]] double readyTime(double part, double sure) const;
    /// What becomes of a batch by `horizon`, not before now, if none die.
    [[nodiscard]] CountForecast forecast(const BatchNow& now, double horizon, std::int64_t wanted,
                                         double level) const;

private:
    struct Node {
        double share;
        double mu;
        double logSigma;
        double weight; ///< 1 in sum
    };

    [[nodiscard]] RootingLaw law(const Node& node) const;
    template <class Figure>
    [[nodiscard]] Moments moments(Figure figure) const;
    template <class Figure>
    [[nodiscard]] double quantile(Figure figure, double probability) const;

    Family m_family;
    std::vector<Node> m_nodes;
    double m_logEvidence = 0;
};

} // namespace warmbench::rooting
