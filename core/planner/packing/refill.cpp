#include "core/planner/packing/refill.h"

#include "core/planner/packing/placement.h"

#include <algorithm>
#include <numeric>
#include <random>

namespace warmbench::planner::packing {

namespace {

/// Greedy choices in orders that change a little from round to round.
class Rounds {
public:
    Rounds(const Occupancy& zone, std::span<const Candidate> candidates)
        : m_zone(zone), m_candidates(candidates), m_slots(candidates.size()) {
        m_order.resize(candidates.size());
        std::iota(m_order.begin(), m_order.end(), std::size_t{0});
        std::sort(m_order.begin(), m_order.end(), [&](std::size_t a, std::size_t b) {
            return std::pair{-density(a), a} < std::pair{-density(b), b};
        });
    }

    Refill run(const RefillLimits& limits, const std::stop_token& stop) {
        std::minstd_rand random(static_cast<std::minstd_rand::result_type>(limits.seed % 2147483646 + 1));
        m_best.slots.resize(m_candidates.size());
        m_bestOrder = m_order;
        const std::int64_t all = most();
        while (m_best.steps < limits.steps && !stop.stop_requested()) {
            round();
            if (m_best.value >= all) break;
            m_order = m_bestOrder;
            for (int swaps = 0; swaps < 2; ++swaps)
                std::swap(m_order[random() % m_order.size()], m_order[random() % m_order.size()]);
        }
        m_best.proven = m_best.value >= all || all <= limits.atLeast;
        return m_best;
    }

private:
    [[nodiscard]] double density(std::size_t index) const {
        const Candidate& one = m_candidates[index];
        return static_cast<double>(one.value) /
               (1.0 * one.containers * one.footprint.height * one.footprint.width * (one.to - one.from));
    }

    /// The value of all that exclude nothing, and of the best of each choice.
    [[nodiscard]] std::int64_t most() const {
        std::vector<std::int64_t> best(m_candidates.size(), 0);
        for (std::size_t index = 0; index < m_candidates.size(); ++index) {
            std::size_t entry = index;
            for (std::size_t other = 0; other < index; ++other)
                if (m_candidates[index].choice >= 0 &&
                    m_candidates[other].choice == m_candidates[index].choice) {
                    entry = other;
                    break;
                }
            best[entry] = std::max(best[entry], m_candidates[index].value);
        }
        return std::accumulate(best.begin(), best.end(), std::int64_t{0});
    }

    void round() {
        m_taken = m_zone;
        std::int64_t value = 0;
        for (auto& slots : m_slots) slots.clear();
        for (const std::size_t index : m_order) {
            ++m_best.steps;
            const Candidate& one = m_candidates[index];
            if (choiceTaken(one.choice)) continue;
            const Stay stay{one.from, one.to, one.containers, one.footprint, one.turn, {}};
            if (!m_placer.placeQuickly(m_taken, stay, m_slots[index])) continue;
            m_taken.occupy(m_slots[index], one.from, one.to);
            value += one.value;
        }
        if (value < m_best.value) return;
        m_bestOrder = m_order;
        if (value == m_best.value) return;
        m_best.value = value;
        m_best.slots = m_slots;
    }

    [[nodiscard]] bool choiceTaken(int choice) const {
        if (choice < 0) return false;
        for (std::size_t index = 0; index < m_candidates.size(); ++index)
            if (m_candidates[index].choice == choice && !m_slots[index].empty()) return true;
        return false;
    }

    const Occupancy& m_zone;
    std::span<const Candidate> m_candidates;
    Occupancy m_taken;
    Placer m_placer;
    std::vector<std::size_t> m_order;
    std::vector<std::size_t> m_bestOrder;
    std::vector<std::vector<SlotRect>> m_slots;
    Refill m_best;
};

} // namespace

Refill refill(const Occupancy& zone, std::span<const Candidate> candidates, const RefillLimits& limits,
              const std::stop_token& stop) {
    if (candidates.empty()) return {{}, 0, true, 0};
    return Rounds(zone, candidates).run(limits, stop);
}

} // namespace warmbench::planner::packing
