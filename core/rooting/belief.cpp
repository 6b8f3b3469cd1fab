#include "core/rooting/belief.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace warmbench::rooting {
namespace {

/// Below the greatest by this much, a density's logarithm has no weight.
constexpr double negligible = 35;

double logNormalPrior(double value, double mean, double deviation) {
    const double z = (value - mean) / deviation;
    return -z * z / 2 - std::log(deviation) - std::log(2 * std::numbers::pi) / 2;
}

double logBeta(BetaShape share) {
    return std::lgamma(share.alpha) + std::lgamma(share.beta) - std::lgamma(share.alpha + share.beta);
}

struct Axis {
    double low = 0;
    double high = 1;

    [[nodiscard]] double step(std::size_t points) const {
        return (high - low) / static_cast<double>(points - 1);
    }
    [[nodiscard]] double at(std::size_t i, std::size_t points) const {
        return low + static_cast<double>(i) * step(points);
    }
};

/// Odds of the share, mu, ln sigma.
using Box = std::array<Axis, 3>;

/// The density of prior times likelihood in the grid's coordinates.
class Density {
public:
    Density(const RootingPrior& prior, const std::vector<Sighting>& sightings)
        : m_prior(prior), m_sightings(merged(sightings)), m_logBeta(logBeta(prior.share)) {
        for (const Sighting& sighting : m_sightings) {
            if (sighting.outcome == Outcome::Rooted) m_rooted += sighting.count;
            if (sighting.outcome == Outcome::Never) m_never += sighting.count;
        }
    }

    /// Calls visit(odds, mu, ln sigma, ln density) for every point of a grid over the box.
    template <class Visit>
    void over(const Box& box, std::size_t points, Visit visit) const {
        std::vector<Alive> alive;
        for (std::size_t i = 0; i < points; ++i)
            for (std::size_t j = 0; j < points; ++j) {
                const double mu = box[1].at(i, points);
                const double logSigma = box[2].at(j, points);
                const double ofTime = timePart(mu, logSigma, alive);
                for (std::size_t k = 0; k < points; ++k) {
                    const double odds = box[0].at(k, points);
                    visit(odds, mu, logSigma, ofTime + sharePart(odds, alive));
                }
            }
    }

private:
    struct Alive {
        double logWaiting; ///< ln of the part of those that will root that has not by then
        double count;
    };

    /// What does not depend on the share; fills in the cuttings alive without roots.
    double timePart(double mu, double logSigma, std::vector<Alive>& alive) const {
        const double sigma = std::exp(logSigma);
        const auto place = [&](double time) { return (std::log(time) - mu) / sigma; };
        double sum = logNormalPrior(mu, m_prior.mu, m_prior.muDeviation) +
                     logNormalPrior(logSigma, m_prior.logSigma, m_prior.logSigmaDeviation);
        alive.clear();
        for (const Sighting& sighting : m_sightings) {
            if (sighting.outcome == Outcome::Unrooted)
                alive.push_back({lawPoint(m_prior.family, place(sighting.from)).logAbove, sighting.count});
            if (sighting.outcome != Outcome::Rooted) continue;
            const double to = place(sighting.to);
            sum += sighting.count * (sighting.from > 0 ? logBetween(m_prior.family, place(sighting.from), to)
                                                       : lawPoint(m_prior.family, to).logBelow);
        }
        return sum;
    }

    double sharePart(double odds, const std::vector<Alive>& alive) const {
        const double logShare = -std::log1p(std::exp(-odds));
        const double logRest = -std::log1p(std::exp(odds));
        const double share = std::exp(logShare);
        const double rest = std::exp(logRest);
        double sum = (m_prior.share.alpha + m_rooted) * logShare + (m_prior.share.beta + m_never) * logRest -
                     m_logBeta;
        for (const Alive& waiting : alive)
            sum += waiting.count * std::log(rest + share * std::exp(waiting.logWaiting));
        return sum;
    }

    RootingPrior m_prior;
    std::vector<Sighting> m_sightings;
    double m_logBeta;
    double m_rooted = 0;
    double m_never = 0;
};

/// A box that holds all of the weight, not much wider than that.
Box drawnIn(const Density& density, Box box) {
    constexpr std::size_t points = 16;
    constexpr int mostRounds = 20;
    for (int round = 0; round < mostRounds; ++round) {
        double greatest = -std::numeric_limits<double>::infinity();
        density.over(box, points, [&](double, double, double, double value) {
            if (value > greatest) greatest = value;
        });
        Box inner;
        for (Axis& axis : inner)
            axis = {std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
        density.over(box, points, [&](double odds, double mu, double logSigma, double value) {
            if (!(value > greatest - negligible)) return;
            const std::array<double, 3> place{odds, mu, logSigma};
            for (std::size_t i = 0; i < 3; ++i) {
                inner[i].low = std::min(inner[i].low, place[i]);
                inner[i].high = std::max(inner[i].high, place[i]);
            }
        });
        double narrower = 1;
        for (std::size_t i = 0; i < 3; ++i) {
            const double margin = box[i].step(points);
            inner[i] = {std::max(box[i].low, inner[i].low - margin),
                        std::min(box[i].high, inner[i].high + margin)};
            narrower *= (inner[i].high - inner[i].low) / (box[i].high - box[i].low);
        }
        box = inner;
        if (narrower > 0.7) break;
    }
    return box;
}

} // namespace

RootingBelief::RootingBelief(const RootingPrior& prior, const std::vector<Sighting>& sightings)
    : m_family(prior.family) {
    constexpr double widest = 8;   // deviations of the prior
    constexpr double farOdds = 35; // a share this near to 0 or 1 is no longer told from it
    constexpr std::size_t points = 44;
    const Density density{prior, sightings};
    const Box box =
        drawnIn(density, {Axis{-farOdds, farOdds},
                          {prior.mu - widest * prior.muDeviation, prior.mu + widest * prior.muDeviation},
                          {prior.logSigma - widest * prior.logSigmaDeviation,
                           prior.logSigma + widest * prior.logSigmaDeviation}});
    double greatest = -std::numeric_limits<double>::infinity();
    m_nodes.reserve(points * points * points);
    density.over(box, points, [&](double odds, double mu, double logSigma, double value) {
        greatest = std::max(greatest, value);
        m_nodes.push_back({1 / (1 + std::exp(-odds)), mu, logSigma, value});
    });
    constexpr double weightless = 1e-13; // against the greatest
    for (Node& node : m_nodes) node.weight = std::exp(node.weight - greatest);
    std::erase_if(m_nodes, [](const Node& node) { return node.weight < weightless; });
    double sum = 0;
    for (const Node& node : m_nodes) sum += node.weight;
    for (Node& node : m_nodes) node.weight /= sum;
    m_logEvidence =
        greatest + std::log(sum * box[0].step(points) * box[1].step(points) * box[2].step(points));
}

RootingLaw RootingBelief::law(const Node& node) const {
    return {m_family, node.share, node.mu, std::exp(node.logSigma)};
}

template <class Figure>
Moments RootingBelief::moments(Figure figure) const {
    double mean = 0;
    for (const Node& node : m_nodes) mean += node.weight * figure(node);
    double variance = 0;
    for (const Node& node : m_nodes) {
        const double distance = figure(node) - mean;
        variance += node.weight * distance * distance;
    }
    return {mean, std::sqrt(variance)};
}

/// Between the two nodes about the probability, on a straight line.
template <class Figure>
double RootingBelief::quantile(Figure figure, double probability) const {
    std::vector<std::pair<double, double>> values;
    values.reserve(m_nodes.size());
    for (const Node& node : m_nodes) values.emplace_back(figure(node), node.weight);
    std::sort(values.begin(), values.end());
    double before = 0;
    double last = values.front().first;
    double reached = 0;
    for (const auto& [value, weight] : values) {
        const double middle = before + weight / 2;
        if (middle >= probability) {
            const double part = middle > reached ? (probability - reached) / (middle - reached) : 1;
            return last + std::clamp(part, 0.0, 1.0) * (value - last);
        }
        before += weight;
        reached = middle;
        last = value;
    }
    return last;
}

Moments RootingBelief::share() const {
    return moments([](const Node& node) { return node.share; });
}

Moments RootingBelief::mu() const {
    return moments([](const Node& node) { return node.mu; });
}

Moments RootingBelief::logSigma() const {
    return moments([](const Node& node) { return node.logSigma; });
}

Moments RootingBelief::rootedBy(double time) const {
    return moments([this, time](const Node& node) { return law(node).rootedBy(time); });
}

Interval RootingBelief::rootedInterval(double time, double level) const {
    const auto figure = [this, time](const Node& node) { return law(node).rootedBy(time); };
    return {quantile(figure, (1 - level) / 2), quantile(figure, (1 + level) / 2)};
}

double RootingBelief::readyTime(double part, double sure) const {
    const double place = lawQuantile(m_family, part);
    return std::exp(
        quantile([place](const Node& node) { return node.mu + std::exp(node.logSigma) * place; }, sure));
}

CountForecast RootingBelief::forecast(const BatchNow& now, double horizon, std::int64_t wanted,
                                      double level) const {
    // Chances that differ little are taken together, each class by its mean.
    constexpr std::size_t classes = 400;
    std::vector<double> weights(classes, 0);
    std::vector<double> chances(classes, 0);
    for (const Node& node : m_nodes) {
        const double chance = std::clamp(chanceToRoot(law(node), now.time, horizon), 0.0, 1.0);
        const auto place = std::min(classes - 1, static_cast<std::size_t>(chance * classes));
        weights[place] += node.weight;
        chances[place] += node.weight * chance;
    }
    CountForecast result;
    for (std::size_t i = 0; i < classes; ++i) {
        result.expected += chances[i];
        if (weights[i] > 0) chances[i] /= weights[i];
    }
    result.expected = static_cast<double>(now.rooted) + static_cast<double>(now.alive) * result.expected;
    const auto atLeast = [&](std::int64_t count) {
        double sum = 0;
        for (std::size_t i = 0; i < classes; ++i)
            if (weights[i] > 0)
                sum += weights[i] * binomialAtLeast(count - now.rooted, now.alive, chances[i]);
        return sum;
    };
    /// The smallest number that is not exceeded with so much probability.
    const auto countQuantile = [&](double probability) {
        std::int64_t low = now.rooted;
        std::int64_t high = now.rooted + now.alive;
        while (low < high) {
            const std::int64_t middle = low + (high - low) / 2;
            if (1 - atLeast(middle + 1) >= probability)
                high = middle;
            else
                low = middle + 1;
        }
        return static_cast<double>(low);
    };
    result.interval = {countQuantile((1 - level) / 2), countQuantile((1 + level) / 2)};
    result.sureness = atLeast(wanted);
    return result;
}

} // namespace warmbench::rooting
