#include "core/planner/packing/repack.h"

#include "core/planner/packing/placement.h"

#include <algorithm>
#include <numeric>
#include <random>

namespace warmbench::planner::packing {

namespace {

std::int64_t volume(const Load& load) {
    return std::int64_t{1} * load.containers * load.footprint.height * load.footprint.width *
           (load.to - load.from);
}

/// All loads of a zone, placed one after the other in an order that learns from what did not fit.
class Repack {
public:
    Repack(const Zone& zone, int days, std::span<const Load> loads, std::int64_t scatterCost)
        : m_loads(loads), m_scatterCost(scatterCost), m_fixed(zone, days) {
        m_slots.resize(loads.size());
    }

    Packing run(const PackLimits& limits) {
        if (!placeFixed() || !areaSuffices()) {
            m_found.verdict = Verdict::Cannot;
            return m_found;
        }
        std::minstd_rand random(static_cast<std::minstd_rand::result_type>(limits.seed % 2147483646 + 1));
        for (m_found.steps = 0; m_found.steps < limits.steps; ++m_found.steps) {
            if (m_found.steps < startOrders)
                beginWith(static_cast<int>(m_found.steps));
            else if (m_found.verdict == Verdict::Packed)
                shuffleSome(random);
            round();
            if (m_found.verdict == Verdict::Packed && (!limits.improve || m_found.cost == 0)) break;
        }
        return m_found;
    }

private:
    static constexpr int startOrders = 3;

    bool placeFixed() {
        for (std::size_t index = 0; index < m_loads.size(); ++index) {
            const Load& load = m_loads[index];
            if (load.fixed.empty()) {
                m_order.push_back(index);
                continue;
            }
            for (const SlotRect& rect : load.fixed) {
                if (!rect.within(m_fixed.rows(), m_fixed.cols()) || !m_fixed.isFree(rect, load.from, load.to))
                    return false;
                m_fixed.occupy({&rect, 1}, load.from, load.to);
            }
            m_slots[index] = load.fixed;
        }
        return true;
    }

    [[nodiscard]] bool areaSuffices() const {
        std::vector<std::int64_t> change(static_cast<std::size_t>(m_fixed.days()) + 1, 0);
        for (const std::size_t index : m_order) {
            const Load& load = m_loads[index];
            const std::int64_t slots =
                std::int64_t{1} * load.containers * load.footprint.height * load.footprint.width;
            if (slots > m_fixed.capacity()) return false;
            change[static_cast<std::size_t>(std::clamp(load.from, 0, m_fixed.days()))] += slots;
            change[static_cast<std::size_t>(std::clamp(load.to, 0, m_fixed.days()))] -= slots;
        }
        std::int64_t wanted = 0;
        for (int day = 0; day < m_fixed.days(); ++day) {
            wanted += change[static_cast<std::size_t>(day)];
            if (wanted > m_fixed.freeOn(day)) return false;
        }
        return true;
    }

    /// Order 0 is by first day: for single slots that is interval colouring, which always fits.
    void beginWith(int order) {
        const auto key = [&](std::size_t index) {
            const Load& load = m_loads[index];
            const std::int64_t area = std::int64_t{1} * load.footprint.height * load.footprint.width;
            if (order == 0) return std::pair{std::int64_t{load.from}, -volume(load)};
            if (order == 1) return std::pair{-area, -volume(load)};
            return std::pair{-volume(load), std::int64_t{load.from}};
        };
        std::sort(m_order.begin(), m_order.end(), [&](std::size_t a, std::size_t b) {
            return std::pair{key(a), a} < std::pair{key(b), b};
        });
    }

    void shuffleSome(std::minstd_rand& random) {
        if (m_order.size() < 2) return;
        for (int swaps = 0; swaps < 2; ++swaps)
            std::swap(m_order[random() % m_order.size()], m_order[random() % m_order.size()]);
    }

    /// Places all in order. The first that does not fit moves to the front for the next round
    /// (squeaky wheel, Joslin and Clements 1999).
    void round() {
        m_taken = m_fixed;
        for (std::size_t at = 0; at < m_order.size(); ++at) {
            const std::size_t index = m_order[at];
            if (placeOne(index)) continue;
            std::rotate(m_order.begin(), m_order.begin() + static_cast<std::ptrdiff_t>(at),
                        m_order.begin() + static_cast<std::ptrdiff_t>(at) + 1);
            return;
        }
        keepBetter();
    }

    bool placeOne(std::size_t index) {
        const Load& load = m_loads[index];
        std::span<const SlotRect> prefer = load.preferred;
        if (load.follows >= 0) prefer = m_slots[static_cast<std::size_t>(load.follows)];
        const Stay stay{load.from, load.to, load.containers, load.footprint, load.turn, prefer};
        if (!m_placer.place(m_taken, stay, m_slots[index])) return false;
        m_taken.occupy(m_slots[index], load.from, load.to);
        return true;
    }

    void keepBetter() {
        std::int64_t cost = 0;
        for (std::size_t index = 0; index < m_loads.size(); ++index) {
            cost += m_scatterCost * (groups(m_slots[index]) - 1);
            cost += moveCost(index);
        }
        if (m_found.verdict == Verdict::Packed && cost >= m_found.cost) return;
        m_found.verdict = Verdict::Packed;
        m_found.cost = cost;
        m_found.slots = m_slots;
    }

    [[nodiscard]] std::int64_t moveCost(std::size_t index) const {
        const Load& load = m_loads[index];
        if (load.moveCost == 0) return 0;
        std::vector<SlotRect> stood =
            load.follows >= 0 ? m_slots[static_cast<std::size_t>(load.follows)] : load.preferred;
        std::vector<SlotRect> stands = m_slots[index];
        std::sort(stood.begin(), stood.end());
        std::sort(stands.begin(), stands.end());
        return stood == stands ? 0 : load.moveCost;
    }

    std::span<const Load> m_loads;
    std::int64_t m_scatterCost;
    Occupancy m_fixed; ///< fixed loads only
    Occupancy m_taken; ///< of the round
    Placer m_placer;
    std::vector<std::size_t> m_order; ///< loads that are not fixed
    std::vector<std::vector<SlotRect>> m_slots;
    Packing m_found;
};

} // namespace

Packing repack(const Zone& zone, int days, std::span<const Load> loads, std::int64_t scatterCost,
               const PackLimits& limits) {
    return Repack(zone, days, loads, scatterCost).run(limits);
}

} // namespace warmbench::planner::packing
