#include "core/planner/search/stream.h"

#include <algorithm>

namespace warmbench::planner::search {

Stream::Stream(const Model& model, std::uint64_t seed)
    : m_model(&model), m_walk(model, seed), m_bins(Bins::of(model, seed)), m_found(model),
      m_block(std::max(64, 4 * static_cast<int>(model.zones.size()))) {}

void Stream::begin(const Stopped& stopped, const Stopped& givenUp) {
    m_walk.construct(stopped);
    pack(givenUp);
    if (total() == never) m_found.addNothing();
}

void Stream::run(std::int64_t rounds, const Cooling& cooling, const Stopped& stopped) {
    if (m_model->batches.empty()) {
        m_rounds += rounds;
        return;
    }
    const int cycle = cooling.cycle();
    if (cycle != m_cycle && cycle % 2 == 1 && total() < never) m_walk.restart(plans(), held());
    m_cycle = cycle;
    const Heat heat = cooling.heat(static_cast<double>(std::min(m_walk.bestCost(), m_model->worth)) /
                                   static_cast<double>(m_model->batches.size()));
    for (std::int64_t i = 0; i < rounds && !stopped(); ++i) {
        if (m_bins)
            roundOfBins();
        else
            m_walk.round(heat);
        if (++m_rounds % m_block == 0) pack(stopped);
    }
}

void Stream::roundOfBins() {
    m_bins->round();
    if (!m_bins->fits() || m_bins->cost() >= m_walk.bestCost()) return;
    m_walk.restart(m_bins->plans(), std::vector<int>(m_model->zones.size(), 0));
}

void Stream::finish(const Stopped& stopped) {
    if (stopped() && total() < never) return;
    pack(stopped);
    m_found.addWithCare(m_walk.best(), m_walk.bestHeld(), m_walk.bestCost(), stopped);
}

void Stream::pack(const Stopped& stopped) {
    m_found.add(m_walk.best(), m_walk.bestHeld(), m_walk.bestCost(), stopped);
}

void Stream::adopt(const Stream& other) {
    m_walk.restart(other.plans(), other.held());
}

} // namespace warmbench::planner::search
