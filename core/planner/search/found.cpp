#include "core/planner/search/found.h"

namespace warmbench::planner::search {

namespace {

/// Rounds of packing a zone that scatters: none at a glance, more at the end.
constexpr long glance = 0;
constexpr long care = 20;

} // namespace

void Found::add(const std::vector<Plan>& plans, const std::vector<int>& held, std::int64_t cost,
                const Stopped& stopped) {
    if (cost >= m_total || cost == m_lastCost) return;
    m_lastCost = cost;
    pack(plans, held, glance, stopped);
}

void Found::addWithCare(const std::vector<Plan>& plans, const std::vector<int>& held, std::int64_t cost,
                        const Stopped& stopped) {
    if (cost >= m_total) return;
    m_lastCost = cost;
    pack(plans, held, care, stopped);
}

void Found::takeCare(const Stopped& stopped) {
    if (m_total < never) pack(m_plans, m_held, care, stopped);
}

void Found::addNothing() {
    const std::vector<Plan> none(m_model->batches.size());
    pack(none, std::vector<int>(m_model->zones.size(), 0), glance, [] { return false; });
}

void Found::pack(const std::vector<Plan>& plans, const std::vector<int>& held, long rounds,
                 const Stopped& stopped) {
    const std::int64_t total = m_assembly.pack(plans, held, rounds, stopped);
    if (total >= m_total) return;
    m_total = total;
    m_answer = m_assembly.answer(plans, held);
    m_plans = plans;
    m_held = held;
}

} // namespace warmbench::planner::search
