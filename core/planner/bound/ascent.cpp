#include "core/planner/bound/ascent.h"

#include "core/planner/index.h"

#include <algorithm>
#include <cmath>

namespace warmbench::planner {
namespace {

// Settings that measured best on planning problems of 14 to 200 batches.
constexpr double firstStride = 0.2;
constexpr double longestStride = 2;
constexpr double shortestStride = 5e-4;
constexpr double strideGrowth = 1.1;
constexpr double strideDecay = 0.75;
constexpr int failuresBeforeDecay = 20;
constexpr double firstNewest = 0.05;
constexpr double leastNewest = 1e-4;
constexpr int iterationsOfReference = 100;
constexpr double progressOfReference = 1.01;
constexpr double aim = 1.05; ///< steps aim this much above the value

void moveAlong(std::vector<double>& prices, const std::vector<double>& from, const std::vector<double>& mean,
               double length) {
    for (std::size_t i = 0; i < prices.size(); ++i)
        prices[i] = std::max(0.0, std::floor(from[i] + length * mean[i] + 0.5));
}

void blend(std::vector<double>& mean, const std::vector<double>& newest, double weight) {
    for (std::size_t i = 0; i < mean.size(); ++i) mean[i] += weight * (newest[i] - mean[i]);
}

/// Inner products of the newest excess and the mean, over the rows whose price either can move.
struct Products {
    double newestNewest = 0;
    double newestMean = 0;
    double meanMean = 0;
};

void addProducts(Products& sum, const std::vector<double>& newest, const std::vector<double>& mean,
                 const std::vector<double>& prices, double scale) {
    for (std::size_t i = 0; i < mean.size(); ++i) {
        if (newest[i] <= 0 && mean[i] <= 0 && prices[i] <= 0) continue;
        sum.newestNewest += newest[i] * newest[i] * scale;
        sum.newestMean += newest[i] * mean[i] * scale;
        sum.meanMean += mean[i] * mean[i] * scale;
    }
}

} // namespace

Prices sharePrices(const Formulation& formulation) {
    Prices prices;
    prices.stand.assign(formulation.prices, 0);
    prices.strike.assign(formulation.strikeRows.size(), 0);
    for (const Lane& lane : formulation.lanes) {
        const ZoneShelf& shelf = formulation.shelves[static_cast<std::size_t>(lane.kind)];
        const double cost = shelf.dayCost[at(lane.setPoint + 1)];
        const double share = std::floor(cost * lane.slots / std::max(1, shelf.slots));
        std::fill_n(prices.stand.begin() + static_cast<std::ptrdiff_t>(lane.firstPrice),
                    lane.toDay - lane.fromDay, share);
    }
    return prices;
}

Ascent::Ascent(const Formulation& formulation, DualFunction& dual, bool countsUsage)
    : m_formulation(formulation), m_dual(dual), m_countsUsage(countsUsage) {
    double cuttings = 0;
    for (const BatchChains& batch : formulation.batches) cuttings += batch.cuttings;
    const auto batches = static_cast<double>(std::max<std::size_t>(1, formulation.batches.size()));
    m_cuttingsScale = std::max(1.0, cuttings / batches);
}

void Ascent::start(const Domain& domain, const Prices& prices, const std::stop_token& stop) {
    m_value = m_dual.evaluate(domain, prices);
    if (stop.stop_requested()) return;
    m_best = prices;
    m_trial = prices;
    m_standMean = m_dual.standExcess;
    m_strikeMean = m_dual.strikeExcess;
    if (m_countsUsage) m_usage.assign(m_formulation.links.size(), 0);
    m_stride = firstStride;
    m_newest = firstNewest;
    m_reference = m_value;
    m_iteration = 1;
    m_failures = 0;
    takeInto(1);
}

bool Ascent::climb(const Domain& domain, const AscentLimits& limits, const std::stop_token& stop) {
    double target = 0;
    for (int i = 0; i < limits.iterations && m_value < limits.cutoff && !stop.stop_requested(); ++i) {
        const double length = meanLength();
        if (length < 1e-9) break;
        if (m_value > target - (aim - 1) / 2 * std::abs(target) || i == 0)
            target = std::min(m_value + (aim - 1) * std::abs(m_value) + Formulation::unitsPerThousandth,
                              limits.cutoff + (aim - 1) / 2 * std::abs(limits.cutoff));
        const double stride = m_stride * (target - m_value) / length;
        moveAlong(m_trial.stand, m_best.stand, m_standMean, stride);
        moveAlong(m_trial.strike, m_best.strike, m_strikeMean, stride / (m_cuttingsScale * m_cuttingsScale));
        const double value = m_dual.evaluate(domain, m_trial);
        if (std::isinf(value)) {
            if (value > 0) m_value = value;
            m_stride *= strideDecay;
            continue;
        }
        ++m_iteration;
        bool agrees = false;
        takeInto(weightOfNewest(agrees));
        const bool better = value > m_value;
        if (better) {
            m_value = value;
            std::swap(m_best, m_trial);
        }
        adapt(better, agrees);
    }
    return m_value >= limits.cutoff;
}

double Ascent::meanLength() const {
    double stand = 0;
    for (std::size_t i = 0; i < m_standMean.size(); ++i)
        if (m_standMean[i] > 0 || m_best.stand[i] > 0) stand += m_standMean[i] * m_standMean[i];
    double strike = 0;
    for (std::size_t i = 0; i < m_strikeMean.size(); ++i)
        if (m_strikeMean[i] > 0 || m_best.strike[i] > 0) strike += m_strikeMean[i] * m_strikeMean[i];
    return stand + strike / (m_cuttingsScale * m_cuttingsScale);
}

double Ascent::weightOfNewest(bool& agrees) const {
    Products sum;
    addProducts(sum, m_dual.standExcess, m_standMean, m_trial.stand, 1);
    addProducts(sum, m_dual.strikeExcess, m_strikeMean, m_trial.strike,
                1 / (m_cuttingsScale * m_cuttingsScale));
    agrees = sum.newestMean >= 0;
    const double apart = sum.newestNewest - 2 * sum.newestMean + sum.meanMean;
    const double shortest = apart > 1e-12 ? (sum.meanMean - sum.newestMean) / apart : m_newest;
    const double young = 1.0 / m_iteration; // a plain mean at first
    return std::max(young, std::clamp(shortest, m_newest / 10, m_newest));
}

void Ascent::takeInto(double weight) {
    blend(m_standMean, m_dual.standExcess, weight);
    blend(m_strikeMean, m_dual.strikeExcess, weight);
    if (!m_countsUsage) return;
    for (double& usage : m_usage) usage *= 1 - weight;
    for (const int link : m_dual.usedLinks) m_usage[static_cast<std::size_t>(link)] += weight;
}

void Ascent::adapt(bool better, bool agrees) {
    if (better) {
        m_failures = 0;
        if (agrees) m_stride = std::min(longestStride, m_stride * strideGrowth);
    } else if (++m_failures >= failuresBeforeDecay) {
        m_failures = 0;
        m_stride = std::max(shortestStride, m_stride * strideDecay);
    }
    if (m_iteration % iterationsOfReference != 0) return;
    if (m_value < progressOfReference * m_reference && m_newest > leastNewest) m_newest /= 2;
    m_reference = m_value;
}

} // namespace warmbench::planner
