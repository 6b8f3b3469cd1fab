#pragma once

#include "core/planner/index.h"
#include "core/planner/search/random.h"
#include "core/planner/search/state.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace warmbench::planner::search {

/// Bin packing: where every batch has one stay, on the same days, in any of a number of equal empty zones,
/// and neither hands nor stock are short, only the number of zones that run matters. Takes a few zones at a
/// time, the emptier ones rather, and fills them anew, each as full as a choice of batches can make it (after
/// minimum bin slack, Gupta and Ho 1999), keeping what fills some zones more and others less.
/// Now and then it keeps what does so a little less (threshold accepting, Dueck and Scheuer 1990), without
/// which it stays one zone above the best where next to no slot may be left over.
class Bins {
public:
    /// Nothing where the problem is of another kind.
    [[nodiscard]] static std::optional<Bins> of(const Model& model, std::uint64_t seed);

    void round();
    /// Cost of the plans: zones that run, and what every batch costs wherever it stands.
    [[nodiscard]] std::int64_t cost() const {
        return m_fixedCost + m_zoneCost * static_cast<std::int64_t>(m_bins.size());
    }
    /// All batches can be placed: there are as many zones.
    [[nodiscard]] bool fits() const { return m_bins.size() <= m_zones.size(); }
    [[nodiscard]] std::vector<Plan> plans() const;

private:
    struct Bin {
        std::vector<int> batches;
        int used = 0;
    };

    Bins(const Model& model, std::uint64_t seed) : m_model(&model), m_random(seed) {}
    [[nodiscard]] int slotsOf(int batch) const { return m_model->batches[at(batch)].slots; }
    void chooseBins();
    /// Fills new bins with all of m_loose.
    void refill();
    /// Moves the fullest choice that holds the largest of m_loose into `bin`.
    void fill(Bin& bin);

    const Model* m_model;
    Random m_random;
    int m_capacity = 0;
    int m_mostLoss = 0; ///< of the sum of squares of the slots used, that is taken in one round
    Stand m_stand;      ///< of every batch but for the zone
    std::int64_t m_zoneCost = 0;
    std::int64_t m_fixedCost = 0;
    std::vector<std::int64_t> m_direct; ///< by batch
    std::vector<int> m_zones;
    std::vector<Bin> m_bins;
    std::vector<int> m_chosen; ///< bins being filled anew
    std::vector<int> m_loose;  ///< batches in no bin
    std::vector<Bin> m_fresh;
    std::vector<int> m_reached; ///< by number of slots: index in m_loose of the batch that first reached it
};

} // namespace warmbench::planner::search
