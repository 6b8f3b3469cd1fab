#pragma once

#include "core/planner/search/insertion.h"

#include <vector>

namespace warmbench::planner {

/// Cuttings that hands and stock lack for striking a batch on a day; 0 or less where there are enough.
struct LackingSupply {
    std::int64_t hands = 0;
    std::int64_t stock = 0;
};

[[nodiscard]] LackingSupply lackingSupply(const search::State& house, const Batch& batch, int day);

/// The finished plan of a house, into which forms of a batch, added to its problem behind all others, are
/// placed by way of trial.
struct Rehearsal {
    /// `wider` is the planned problem with the forms; `plans` and `held` are those of the answer. Once
    /// `stopped`, what is found is of no use, and not all may stand.
    Rehearsal(Problem wider, const std::vector<search::Plan>& plans, const std::vector<int>& held,
              const search::Stopped& stopped);
    Rehearsal(const Rehearsal&) = delete;
    Rehearsal& operator=(const Rehearsal&) = delete;

    /// Of the cheapest way to place a form into `into`, left in `plan`; search::never where there is none, or
    /// once it was stopped.
    std::int64_t cost(const search::State& into, int batch);

    Problem problem;
    search::Model model;
    search::State finished;
    search::State empty; ///< nothing placed but what is held
    search::Plan plan;

private:
    search::Stopped m_stopped;
    search::Inserter m_inserter;
    search::Random m_random{1};
};

} // namespace warmbench::planner
