#include "core/planner/search/stream.h"

#include <algorithm>

namespace warmbench::planner::search {

namespace {

/// Rounds of packing a zone that scatters: none at a glance, more at the end.
constexpr long glance = 0;
constexpr long care = 20;
/// The first heat, as a part of the mean cost of a batch.
constexpr double firstHeat = 1.0;

} // namespace

Stream::Stream(const Model& model, std::uint64_t seed)
    : m_model(&model), m_walk(model, seed), m_bins(Bins::of(model, seed)), m_assembly(model),
      m_block(std::max(64, 4 * static_cast<int>(model.zones.size()))) {}

void Stream::begin(const Stopped& stopped) {
    m_walk.construct(stopped);
    pack(glance, [] { return false; });
}

void Stream::run(std::int64_t rounds, double progress, const Stopped& stopped) {
    if (m_model->batches.empty()) {
        m_rounds += rounds;
        return;
    }
    const double left = 1 - progress;
    const auto mean = static_cast<double>(std::min(m_walk.bestCost(), m_model->worth)) /
                      static_cast<double>(m_model->batches.size());
    const auto heat = static_cast<std::int64_t>(firstHeat * mean * left * left * left);
    for (std::int64_t i = 0; i < rounds && !stopped(); ++i) {
        if (m_bins) roundOfBins();
        else m_walk.round(heat);
        if (++m_rounds % m_block == 0) pack(glance, stopped);
    }
}

void Stream::roundOfBins() {
    m_bins->round();
    if (!m_bins->fits() || m_bins->cost() >= m_walk.bestCost()) return;
    m_walk.restart(m_bins->plans(), std::vector<int>(m_model->zones.size(), 0));
}

void Stream::finish(const Stopped& stopped) {
    pack(glance, stopped);
    m_lastPacked = never;
    pack(care, stopped);
}

void Stream::pack(long rounds, const Stopped& stopped) {
    if (m_walk.bestCost() >= m_total || m_walk.bestCost() == m_lastPacked) return;
    m_lastPacked = m_walk.bestCost();
    const std::int64_t total = m_assembly.pack(m_walk.best(), m_walk.bestHeld(), rounds, stopped);
    if (total >= m_total) return;
    m_total = total;
    m_answer = m_assembly.answer(m_walk.best(), m_walk.bestHeld());
    m_plans = m_walk.best();
    m_held = m_walk.bestHeld();
}

void Stream::adopt(const Stream& other) {
    m_walk.restart(other.m_plans, other.m_held);
}

} // namespace warmbench::planner::search
