#include "core/planner/packing/refill_greedy.h"

#include "core/planner/packing/placement.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <random>

namespace warmbench::planner::packing {

namespace {

class Greedy {
public:
    Greedy(const Occupancy& zone, std::span<const Candidate> candidates)
        : m_zone(zone), m_candidates(candidates), m_order(candidates.size()), m_slots(candidates.size()) {
        std::iota(m_order.begin(), m_order.end(), std::size_t{0});
        std::sort(m_order.begin(), m_order.end(), [&](std::size_t a, std::size_t b) {
            return std::pair{-density(a), a} < std::pair{-density(b), b};
        });
        m_best.slots.resize(candidates.size());
        m_bestOrder = m_order;
    }

    Refill run(long rounds, std::uint64_t seed, const std::stop_token& stop) {
        std::minstd_rand random(static_cast<std::minstd_rand::result_type>(seed % 2147483646 + 1));
        const std::int64_t all = valueOfAll();
        for (; m_best.steps < rounds && !stop.stop_requested(); ++m_best.steps) {
            round();
            if (m_best.value == all) break;
            m_order = m_bestOrder;
            for (int swaps = 0; swaps < 2; ++swaps)
                std::swap(m_order[random() % m_order.size()], m_order[random() % m_order.size()]);
        }
        m_best.proven = m_best.value == all;
        return m_best;
    }

private:
    [[nodiscard]] double density(std::size_t index) const {
        const Candidate& one = m_candidates[index];
        return static_cast<double>(one.value) /
               (1.0 * one.containers * one.footprint.height * one.footprint.width * (one.to - one.from + 1));
    }

    [[nodiscard]] std::int64_t valueOfAll() const {
        std::int64_t sum = 0;
        std::map<int, std::int64_t> bestOfChoice;
        for (const Candidate& one : m_candidates) {
            if (one.choice < 0)
                sum += one.value;
            else
                bestOfChoice[one.choice] = std::max(bestOfChoice[one.choice], one.value);
        }
        for (const auto& [choice, value] : bestOfChoice) sum += value;
        return sum;
    }

    void round() {
        m_taken = m_zone;
        std::int64_t value = 0;
        for (auto& slots : m_slots) slots.clear();
        for (const std::size_t index : m_order) {
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

Refill refillGreedily(const Occupancy& zone, std::span<const Candidate> candidates, long rounds,
                      std::uint64_t seed, const std::stop_token& stop) {
    if (candidates.empty()) return {{}, 0, true, 0};
    return Greedy(zone, candidates).run(rounds, seed, stop);
}

} // namespace warmbench::planner::packing
