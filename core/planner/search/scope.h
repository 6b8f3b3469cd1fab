#pragma once

#include <vector>

namespace warmbench::planner::search {

struct Model;

/// The part of a house that a search keeps to: it moves these batches, and into these zones only.
struct Scope {
    std::vector<int> batches;
    std::vector<int> zones;
    std::vector<std::vector<int>> zonesOfClass; ///< by class of zones
    std::vector<char> holds;                    ///< by batch: it is one of `batches`

    /// All zones and batches of a model, in their order.
    [[nodiscard]] static Scope whole(const Model& model);
    /// No batches yet, and these zones.
    [[nodiscard]] static Scope ofZones(const Model& model, const std::vector<int>& zones);

    void add(int batch) {
        batches.push_back(batch);
        holds[static_cast<std::size_t>(batch)] = 1;
    }
};

} // namespace warmbench::planner::search
