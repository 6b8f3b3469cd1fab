#include "core/rooting/belief.h"

#include "core/rooting/density.h"
#include "core/rooting/ln_gamma.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace warmbench::rooting {

BetaShape amongAlive(BetaShape take, double deadPart) {
    const double never = take.beta / (take.alpha + take.beta);
    return {take.alpha, take.beta * never / (deadPart / 2 + never)};
}

RootingBelief::RootingBelief(const RootingPrior& prior, const Evidence& evidence,
                             const Quadrature& quadrature)
    : m_family(prior.family) {
    Density density{prior, evidence};
    const PosteriorGrid grid = posteriorGrid(density, quadrature);
    m_logEvidence = grid.logEvidence;
    m_nodes.reserve(grid.nodes.size());
    for (const GridNode& node : grid.nodes) {
        const Timing timing{node.place[0], std::exp(node.place[1]), 0};
        if (m_timings.empty() || m_timings.back().mu != timing.mu || m_timings.back().sigma != timing.sigma)
            m_timings.push_back(timing);
        m_timings.back().weight += node.weight;
        m_nodes.push_back({1 / (1 + std::exp(-node.place[2])), m_timings.size() - 1, node.weight});
    }
}

std::vector<double> RootingBelief::timingsBy(double time) const {
    std::vector<double> by(m_timings.size(), 0);
    if (!(time > 0)) return by;
    const double logTime = std::log(time);
    std::transform(m_timings.begin(), m_timings.end(), by.begin(), [&](const Timing& timing) {
        return lawBelow(m_family, (logTime - timing.mu) / timing.sigma);
    });
    return by;
}

namespace {

/// Mean and deviation of figures with weights that are 1 in sum.
template <class Weighted, class Figure>
Moments momentsOf(const std::vector<Weighted>& all, Figure figure) {
    double mean = 0;
    for (const Weighted& one : all) mean += one.weight * figure(one);
    double variance = 0;
    for (const Weighted& one : all) {
        const double distance = figure(one) - mean;
        variance += one.weight * distance * distance;
    }
    return {mean, std::sqrt(variance)};
}

/// Figures with their weights, from the smallest on.
using Ranked = std::vector<std::pair<double, double>>;

/// Between the two figures about the probability, on a straight line.
double quantile(const Ranked& ranked, double probability) {
    double before = 0;
    double last = ranked.front().first;
    double reached = 0;
    for (const auto& [value, weight] : ranked) {
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

} // namespace

Moments RootingBelief::share() const {
    return momentsOf(m_nodes, [](const Node& node) { return node.share; });
}

Moments RootingBelief::mu() const {
    return momentsOf(m_timings, [](const Timing& timing) { return timing.mu; });
}

Moments RootingBelief::logSigma() const {
    return momentsOf(m_timings, [](const Timing& timing) { return std::log(timing.sigma); });
}

Moments RootingBelief::rootedBy(double time) const {
    const std::vector<double> timing = timingsBy(time);
    return momentsOf(m_nodes, [&](const Node& node) { return node.share * timing[node.timing]; });
}

Interval RootingBelief::rootedInterval(double time, double level) const {
    const std::vector<double> timing = timingsBy(time);
    Ranked ranked;
    ranked.reserve(m_nodes.size());
    for (const Node& node : m_nodes) ranked.emplace_back(node.share * timing[node.timing], node.weight);
    std::sort(ranked.begin(), ranked.end());
    return {quantile(ranked, (1 - level) / 2), quantile(ranked, (1 + level) / 2)};
}

double RootingBelief::readyTime(double part, double sure) const {
    const double place = lawQuantile(m_family, part);
    Ranked ranked;
    ranked.reserve(m_timings.size());
    for (const Timing& timing : m_timings)
        ranked.emplace_back(timing.mu + timing.sigma * place, timing.weight);
    std::sort(ranked.begin(), ranked.end());
    return std::exp(quantile(ranked, sure));
}

namespace {

/// Cuttings that stand together, looked at once more at the horizon, all of them.
struct LastLook {
    std::vector<std::vector<double>> timings; ///< by each of its looks, the part of those that root
    LookTerm term;
    double others = 0; ///< not known to be rooted
};

/// Adds weight * P(known + Binomial(trials, chance) = n) to every n.
void addBinomial(std::vector<double>& probability, std::size_t known, std::size_t trials, double chance,
                 double weight) {
    chance = std::clamp(chance, 1e-15, 1 - 1e-15);
    const double n = static_cast<double>(trials);
    // From the likeliest number outwards, by ratios of neighbours.
    const auto middle = std::min(trials, static_cast<std::size_t>((n + 1) * chance));
    const double k = static_cast<double>(middle);
    const double odds = chance / (1 - chance);
    const double peak = weight * std::exp(lnGamma(n + 1) - lnGamma(k + 1) - lnGamma(n - k + 1) +
                                          k * std::log(chance) + (n - k) * std::log1p(-chance));
    constexpr double negligible = 1e-14;
    double value = peak;
    for (std::size_t i = middle; value > negligible * peak; ++i) {
        probability[known + i] += value;
        if (i == trials) break;
        value *= odds * static_cast<double>(trials - i) / static_cast<double>(i + 1);
    }
    value = peak;
    for (std::size_t i = middle; i-- > 0 && value > negligible * peak;) {
        value *= static_cast<double>(i + 1) / (odds * static_cast<double>(trials - i));
        probability[known + i] += value;
    }
}

} // namespace

CountForecast RootingBelief::forecast(const std::vector<CuttingsLeft>& left, double horizon, double wanted,
                                      double level) const {
    std::vector<LastLook> looks;
    double known = 0;
    double others = 0;
    for (const CuttingsLeft& one : left) {
        LookSeries series = one.looks;
        series.push_back({horizon, one.alive, 0, one.alive});
        LastLook look;
        for (const Look& each : series) look.timings.push_back(timingsBy(each.time));
        const double rooted = knownRooted(series, series.size() - 1);
        look.term = lookTerms(series).back();
        look.others = one.alive - rooted;
        known += rooted;
        others += look.others;
        looks.push_back(std::move(look));
    }
    const auto knownCount = static_cast<std::size_t>(std::llround(known));
    const auto trials = static_cast<std::size_t>(std::max(0LL, std::llround(known + others))) - knownCount;
    // Chances that differ little are taken together, each class by its mean.
    constexpr std::size_t classes = 256;
    std::vector<double> weights(classes, 0);
    std::vector<double> chances(classes, 0);
    std::vector<double> rootedBy;
    for (const Node& node : m_nodes) {
        double sum = 0;
        for (const LastLook& look : looks) {
            rootedBy.clear();
            for (const auto& timing : look.timings) rootedBy.push_back(node.share * timing[node.timing]);
            sum += look.others * look.term.chance(look.timings.size() - 1, rootedBy.data());
        }
        const double chance = others > 0 ? std::clamp(sum / others, 0.0, 1.0) : 0;
        const auto place = std::min(classes - 1, static_cast<std::size_t>(chance * classes));
        weights[place] += node.weight;
        chances[place] += node.weight * chance;
    }
    std::vector<double> probability(knownCount + trials + 1, 0);
    CountForecast result;
    for (std::size_t i = 0; i < classes; ++i) {
        if (!(weights[i] > 0)) continue;
        result.expected += chances[i] * others;
        addBinomial(probability, knownCount, trials, chances[i] / weights[i], weights[i]);
    }
    result.expected += known;
    result.atLeast.resize(probability.size());
    double above = 0;
    for (std::size_t i = probability.size(); i-- > 0;) result.atLeast[i] = above += probability[i];
    /// The smallest number that is not exceeded with so much probability.
    const auto countQuantile = [&](double wantedBelow) {
        std::size_t count = 0;
        while (count + 1 < result.atLeast.size() && 1 - result.atLeast[count + 1] < wantedBelow) ++count;
        return static_cast<double>(count);
    };
    result.interval = {countQuantile((1 - level) / 2), countQuantile((1 + level) / 2)};
    const double least = std::max(0.0, std::ceil(wanted));
    result.sureness = least < static_cast<double>(result.atLeast.size())
                          ? std::min(1.0, result.atLeast[static_cast<std::size_t>(least)])
                          : 0;
    return result;
}

} // namespace warmbench::rooting
