#include "core/planner/bound/stock_selection.h"

#include "core/planner/index.h"

#include <algorithm>

namespace warmbench::planner {
namespace {

constexpr int mostSteps = 20'000;

} // namespace

double StockSelection::costOf(std::size_t index, int period) const {
    const int batch = m_group->batches[index];
    if (batch == m_fixedBatch && period != m_fixedPeriod) return infinity;
    const StrikeOptions& options = (*m_options)[at(batch)];
    return period == out ? options.out : options.cost[at(period)];
}

double StockSelection::solve(const StockGroup& group, const std::vector<StrikeOptions>& options,
                             int fixedBatch, int fixedPeriod) {
    m_group = &group;
    m_options = &options;
    m_fixedBatch = fixedPeriod == free ? -1 : fixedBatch;
    m_fixedPeriod = fixedPeriod;
    const std::size_t size = group.batches.size();
    const int periods = static_cast<int>(group.ends.size()) + 1; // the last is not limited
    m_used.assign(group.ends.size(), 0);
    m_rest.assign(size + 1, 0);
    std::vector<int> cheapest(size, out);
    for (std::size_t i = size; i-- > 0;) {
        double least = costOf(i, out);
        for (int period = 0; period < periods; ++period)
            if (costOf(i, period) < least) {
                least = costOf(i, period);
                cheapest[i] = period;
            }
        m_rest[i] = m_rest[i + 1] + least;
    }
    m_periods.assign(size, out);
    m_best.assign(size, out);
    m_least = infinity;
    m_steps = 0;
    descend(0, 0);
    if (m_steps > mostSteps) {
        m_best = cheapest;
        return m_rest[0];
    }
    return m_least;
}

void StockSelection::descend(std::size_t index, double cost) {
    if (cost + m_rest[index] >= m_least || ++m_steps > mostSteps) return;
    if (index == m_periods.size()) {
        m_least = cost;
        m_best = m_periods;
        return;
    }
    // The cheapest period first; the others, and staying out, in their order.
    int first = out;
    for (int period = 0; period <= static_cast<int>(m_used.size()); ++period)
        if (costOf(index, period) < costOf(index, first)) first = period;
    tryPeriod(index, first, cost);
    for (int period = out; period <= static_cast<int>(m_used.size()); ++period)
        if (period != first) tryPeriod(index, period, cost);
}

void StockSelection::tryPeriod(std::size_t index, int period, double cost) {
    const double own = costOf(index, period);
    if (own == infinity) return;
    m_periods[index] = period;
    if (period == out) {
        descend(index + 1, cost + own);
        return;
    }
    const double cuttings = m_formulation.batches[at(m_group->batches[index])].cuttings;
    for (std::size_t later = at(period); later < m_used.size(); ++later)
        if (m_used[later] + cuttings > m_group->limits[later]) return;
    for (std::size_t later = at(period); later < m_used.size(); ++later) m_used[later] += cuttings;
    descend(index + 1, cost + own);
    for (std::size_t later = at(period); later < m_used.size(); ++later) m_used[later] -= cuttings;
}

} // namespace warmbench::planner
