#pragma once

#include "core/planner/index.h"
#include "core/planner/search/random.h"
#include "core/planner/search/scope.h"
#include "core/planner/search/state.h"

#include <array>
#include <vector>

namespace warmbench::planner::search {

/// A large house cut in two, so that each half can be searched by itself: each has its part of every class of
/// zones, and the batches that are to stand in them. Batches of one stock are kept together where they are
/// few.
class Halves {
public:
    static constexpr int count = 2;

    Halves(const Model& model, Random& random);

    [[nodiscard]] int halfOf(int batch) const { return m_ofBatch[at(batch)]; }
    [[nodiscard]] const std::vector<int>& zonesOf(int half) const { return m_zones[at(half)]; }
    /// The zones of a half, and those of its batches that stand wholly in them or nowhere.
    [[nodiscard]] Scope scope(const State& state, int half) const;
    /// What each half is to set aside for the other of the hands and cuttings that are left: half of them,
    /// all, or nothing, as chance will have it; all of a stock that only the other needs.
    [[nodiscard]] std::array<Share, count> shares(const State& state, Random& random) const;

private:
    /// Batches that are given to a half together.
    using Lot = std::vector<int>;

    void shareZones(Random& random);
    void shareBatches(Random& random);
    [[nodiscard]] std::vector<Lot> lots(Random& random) const;
    /// Every stay has options in the half.
    [[nodiscard]] bool suits(int batch, int half) const;

    const Model* m_model;
    std::vector<int> m_ofBatch;
    std::vector<int> m_ofZone;
    std::array<std::vector<int>, count> m_zones;
    std::array<std::vector<char>, count> m_hasClass;
    std::vector<char> m_isShared; ///< by stock: both halves have batches of it
};

} // namespace warmbench::planner::search
