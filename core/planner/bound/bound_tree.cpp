#include "core/planner/bound/bound_tree.h"

#include "core/planner/bound/leaf_cost.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace warmbench::planner {
namespace {

constexpr std::size_t splitsTried = 2; ///< of each property
constexpr int trialIterations = 12;
constexpr int roundIterations = 60;
constexpr int roundsOfBranch = 4;

} // namespace

void BoundTree::keep(const Domain& domain, const Ascent& ascent, double atLeast) {
    Branch branch;
    branch.domain = domain;
    branch.stand.assign(ascent.prices().stand.begin(), ascent.prices().stand.end());
    branch.strike.assign(ascent.prices().strike.begin(), ascent.prices().strike.end());
    branch.usage.assign(ascent.usage().begin(), ascent.usage().end());
    m_open.emplace(std::max(ascent.value(), atLeast), std::move(branch));
}

void BoundTree::open(const Domain& domain, const Ascent& ascent) {
    keep(domain, ascent, ascent.value());
}

std::size_t BoundTree::bytes() const {
    const std::size_t each = m_formulation.links.size() * (sizeof(char) + sizeof(float)) +
                             (m_formulation.prices + m_formulation.strikeRows.size()) * sizeof(float);
    return m_open.size() * each;
}

double BoundTree::valueAfter(const Domain& domain, const Prices& prices, double cutoff, int iterations,
                             const std::stop_token& stop) {
    Ascent ascent(m_formulation, m_dual, false);
    ascent.start(domain, prices, stop);
    ascent.climb(domain, {cutoff, iterations}, stop);
    return std::min(ascent.value(), cutoff);
}

void BoundTree::settle(Domain domain, const Prices& prices, double atLeast, double cutoff,
                       const std::stop_token& stop) {
    Ascent ascent(m_formulation, m_dual, true);
    ascent.start(domain, prices, stop);
    for (int round = 0; round < roundsOfBranch; ++round) {
        if (ascent.climb(domain, {cutoff, roundIterations}, stop)) return;
        if (stop.stop_requested()) return;
        const double value = m_dual.evaluate(domain, ascent.prices());
        if (std::isinf(value)) return;
        m_dual.forbidCostly(domain, value, cutoff);
    }
    keep(domain, ascent, atLeast);
}

bool BoundTree::settleLeaf() {
    const auto lowest = m_open.begin();
    Prices none;
    none.stand.assign(m_formulation.prices, 0);
    none.strike.assign(m_formulation.strikeRows.size(), 0);
    const double free = m_dual.evaluate(lowest->second.domain, none);
    if (std::isinf(free) && free < 0) return false; // stopped
    double cost = free;
    if (!std::isinf(free)) {
        cost = leafCost(m_formulation, m_dual.usedLinks);
        for (const int batch : m_dual.staysOut)
            cost += m_formulation.batches[static_cast<std::size_t>(batch)].value;
    }
    if (cost <= lowest->first) return false;
    auto leaf = m_open.extract(lowest);
    leaf.key() = cost;
    m_open.insert(std::move(leaf));
    return true;
}

bool BoundTree::splitLowest(double cutoff, const std::stop_token& stop) {
    const auto lowest = m_open.begin();
    const double value = lowest->first;
    if (value >= cutoff) {
        m_open.erase(lowest);
        return true;
    }
    const Branch& branch = lowest->second;
    Prices prices;
    prices.stand.assign(branch.stand.begin(), branch.stand.end());
    prices.strike.assign(branch.strike.begin(), branch.strike.end());
    const std::vector<double> usage(branch.usage.begin(), branch.usage.end());
    const auto splits = undecidedSplits(m_formulation, branch.domain, usage, splitsTried);
    const Split* chosen = nullptr;
    double most = -1;
    for (const Split& split : splits) {
        const double first =
            valueAfter(firstDomain(branch.domain, split), prices, cutoff, trialIterations, stop) - value;
        const double second =
            valueAfter(secondDomain(branch.domain, split), prices, cutoff, trialIterations, stop) - value;
        const double gain = std::max(first, 64.0) * std::max(second, 64.0);
        if (gain > most) {
            most = gain;
            chosen = &split;
        }
        if (stop.stop_requested()) return false;
    }
    if (chosen == nullptr) return settleLeaf();
    const Domain first = firstDomain(branch.domain, *chosen);
    const Domain second = secondDomain(branch.domain, *chosen);
    settle(first, prices, value, cutoff, stop);
    settle(second, prices, value, cutoff, stop);
    if (stop.stop_requested()) return false;
    m_open.erase(lowest);
    return true;
}

} // namespace warmbench::planner
