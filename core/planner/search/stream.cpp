#include "core/planner/search/stream.h"

#include <algorithm>
#include <cmath>

namespace warmbench::planner::search {

namespace {

/// Rounds of packing a zone that scatters: none at a glance, more at the end.
constexpr long glance = 0;
constexpr long care = 20;
/// Heat at the beginning of a cooling, as a part of the mean cost of a batch: of one that begins anew, and of
/// one that goes on from the best.
constexpr double firstHeat = 4;
constexpr double laterHeat = 0.5;
/// A cooling of so many rounds for each batch is enough; then rather another.
constexpr double roundsForBatch = 1000;
constexpr int mostCycles = 1000;

} // namespace

Stream::Stream(const Model& model, std::uint64_t seed)
    : m_model(&model), m_walk(model, seed), m_bins(Bins::of(model, seed)), m_assembly(model),
      m_block(std::max(64, 4 * static_cast<int>(model.zones.size()))) {}

void Stream::begin(const Stopped& stopped, const Stopped& givenUp) {
    m_walk.construct(stopped);
    pack(glance, givenUp);
    if (m_total < never) return;
    const std::vector<Plan> none(m_model->batches.size());
    const std::vector<int> held(m_model->zones.size(), 0);
    keep(none, held, m_assembly.pack(none, held, glance, [] { return false; }));
}

void Stream::run(std::int64_t rounds, const Cooling& cooling, const Stopped& stopped) {
    if (m_model->batches.empty()) {
        m_rounds += rounds;
        return;
    }
    const double along = std::clamp(cooling.progress, 0.0, 1.0) * cooling.cycles;
    const int cycle = std::min(static_cast<int>(along), cooling.cycles - 1);
    if (cycle != m_cycle && cycle % 2 == 1 && m_total < never) m_walk.restart(m_plans, m_held);
    m_cycle = cycle;
    const double left = 1 - (along - cycle);
    const auto mean = static_cast<double>(std::min(m_walk.bestCost(), m_model->worth)) /
                      static_cast<double>(m_model->batches.size());
    const double first = (cycle % 2 == 1 ? laterHeat : firstHeat * cooling.warmth) * mean;
    const auto heat = static_cast<std::int64_t>(first * left * left * left);
    for (std::int64_t i = 0; i < rounds && !stopped(); ++i) {
        if (m_bins)
            roundOfBins();
        else
            m_walk.round(heat);
        if (++m_rounds % m_block == 0) pack(glance, stopped);
    }
}

Cooling Stream::coolingFor(double rounds) const {
    const double enough =
        rounds / (roundsForBatch * std::max(1.0, static_cast<double>(m_model->batches.size())));
    // One that begins anew and one that goes on; with more time rather longer ones than many.
    const double cycles = std::max(std::min(enough, 2.0), std::sqrt(enough));
    return {0, std::clamp(static_cast<int>(cycles), 1, mostCycles), std::sqrt(std::min(1.0, enough))};
}

void Stream::roundOfBins() {
    m_bins->round();
    if (!m_bins->fits() || m_bins->cost() >= m_walk.bestCost()) return;
    m_walk.restart(m_bins->plans(), std::vector<int>(m_model->zones.size(), 0));
}

void Stream::finish(const Stopped& stopped) {
    if (stopped() && m_total < never) return;
    pack(glance, stopped);
    m_lastPacked = never;
    pack(care, stopped);
}

void Stream::pack(long rounds, const Stopped& stopped) {
    if (m_walk.bestCost() >= m_total || m_walk.bestCost() == m_lastPacked) return;
    m_lastPacked = m_walk.bestCost();
    const std::int64_t total = m_assembly.pack(m_walk.best(), m_walk.bestHeld(), rounds, stopped);
    if (total < m_total) keep(m_walk.best(), m_walk.bestHeld(), total);
}

void Stream::keep(const std::vector<Plan>& plans, const std::vector<int>& held, std::int64_t total) {
    m_total = total;
    m_answer = m_assembly.answer(plans, held);
    m_plans = plans;
    m_held = held;
}

void Stream::adopt(const Stream& other) {
    m_walk.restart(other.m_plans, other.m_held);
}

} // namespace warmbench::planner::search
