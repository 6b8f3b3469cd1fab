#pragma once

#include "core/planner/search/state.h"

#include <span>
#include <vector>

/// The plan that was made before, as far as the new one can keep it.
namespace warmbench::planner::search {

/// Nothing in a batch's own rules forbids it to stand on the same days, zones and slots as before.
[[nodiscard]] bool canBeKept(const Problem& problem, const Batch& batch);

/// Whether a stay in this zone, from this day on, on this set of slots is as it was before.
[[nodiscard]] bool standsThere(const PlacedStay& before, int zone, int from, std::span<const SlotRect> slots);

/// States of zones at which all that stood there before can stand again together, as far as there are such.
struct KeptStates {
    static constexpr int any = -2; ///< nothing is agreed upon

    std::vector<int> ofStay;     ///< by stay, among all stays
    std::vector<int> heldChoice; ///< by zone
};

[[nodiscard]] KeptStates keptStates(const Model& model);

/// Days of a stay at one state from the day on which it began before; 0 where it cannot stand there like
/// that, or where the stay after it would not begin on the day on which it did.
[[nodiscard]] int keptLength(const BatchModel& batch, std::size_t stay, const StayOption& option);

/// The plan of a batch is its place in the plan that was made before. In zones where slots are counted only,
/// nothing stands as before, and a change costs nothing.
[[nodiscard]] bool standsAsBefore(const Model& model, const Plan& plan);

} // namespace warmbench::planner::search
