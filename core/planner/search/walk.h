#pragma once

#include "core/planner/index.h"
#include "core/planner/search/cooling.h"
#include "core/planner/search/insertion.h"
#include "core/planner/search/previous.h"
#include "core/planner/search/random.h"
#include "core/planner/search/ruin.h"
#include "core/planner/search/state.h"

#include <cstdint>
#include <span>
#include <vector>

namespace warmbench::planner::search {

/// One stream of search: takes a few batches out, places them anew, and goes on from there when that is
/// cheaper or dearer by no more than chance allows at the heat of the moment (simulated annealing on ruin and
/// recreate, Schrimpf and others 2000). In a small house it goes on excursions: one change of a mat's run is
/// taken whatever it costs, a number of cooler rounds settle what follows from it, and only then it is judged
/// as one step. Plans that differ in the runs of several mats are often many dear steps apart.
class Walk {
public:
    Walk(const Model& model, std::uint64_t seed);

    /// Moves only what a scope, which must live, holds, from now on; it must hold a batch.
    void keepTo(const Scope& scope);
    /// Places every batch that can be placed, one after the other, each in the zones of its scope, where
    /// scopes are given. Ends early, with a valid plan, once `stopped` says so.
    template <class Stopped>
    void construct(Stopped stopped, std::span<const Scope* const> scopes = {});
    /// One round of search at a heat.
    void round(Heat heat);

    [[nodiscard]] std::int64_t cost() const { return m_state.cost(); }
    [[nodiscard]] const State& state() const { return m_state; }
    [[nodiscard]] std::int64_t bestCost() const { return m_bestCost; }
    /// The best plans so far, by batch.
    [[nodiscard]] const std::vector<Plan>& best();
    [[nodiscard]] const std::vector<int>& bestHeld() const { return m_bestHeld; }
    /// Leaves it to others to remember the best from now on: they learn from `moved` what to look at.
    void leaveBest();
    /// Batches that were moved since `leaveBest` or since this was cleared.
    [[nodiscard]] const std::vector<int>& moved() const { return m_touched; }
    void clearMoved();
    /// Moves some batches to where they are in another walk, with the held choices of some zones. Once
    /// `stopped` says so it breaks off, and the walk is of no use any more.
    void takeOver(const State& other, std::span<const int> batches, std::span<const int> zones,
                  const Stopped& stopped);
    /// See State::setAside.
    void setAside(const Share& share) { m_state.setAside(share); }
    /// Goes on from these plans.
    void restart(const std::vector<Plan>& plans, const std::vector<int>& held);

private:
    void orderForPlacing(std::vector<int>& batches);
    /// Fills m_placing with what was taken out, but for what was left out before and still has no room.
    void choosePlacing();
    /// Lets m_batches begin with what is pinned and what stood somewhere before.
    void keepFirst();
    /// Finds a place for a batch in the first plan, left in m_plan: that in which it stood before, else
    /// another.
    bool placeFirst(int batch);
    void takeOut(const std::vector<int>& batches);
    /// Places m_placing where that is cheapest, wishes first; false as soon as the plan is seen to be judged
    /// dearer than `limit` whatever becomes of the rest.
    [[nodiscard]] bool placeAnew(Taste taste, std::int64_t limit);
    /// By how much the plan can be judged cheaper, at most, once the batch is placed.
    [[nodiscard]] std::int64_t hopeFor(int batch) const;
    /// Places what the inserter found last, in m_plan, and gives others the slots that it asks them to have.
    void placeFound();
    void undo();
    /// The zones that what was taken out stood in.
    void noteRoom();
    /// Remembers where an excursion begins.
    void setOut();
    /// Goes back to where the excursion began, unless it is cheap enough by now.
    void comeBack();
    /// The cost, those that are left out counted as firmly as the heat of the moment asks.
    [[nodiscard]] std::int64_t judged() const {
        return m_state.cost() + m_state.leftOutCost() * m_heat.firmness / wholeFirmness;
    }
    /// What is gone on from after a plan that is judged `before`.
    [[nodiscard]] std::int64_t limitAfter(std::int64_t before) {
        return before + ((m_heat.dearer * m_random.exponential()) >> 10);
    }
    static constexpr std::int64_t wholeFirmness = 1024;
    void rechooseHeld();
    void saveBest();
    void touch(int batch);

    const Model* m_model;
    const Scope* m_scope;
    Random m_random;
    State m_state;
    Inserter m_inserter;
    Ruin m_ruin;
    Heat m_heat; ///< of the moment
    std::vector<int> m_batches;
    std::vector<int> m_placing;
    std::vector<Wish> m_wishes;
    std::vector<Plan> m_before;    ///< plans of what was taken out, in the order of m_batches
    std::vector<char> m_wasPlaced; ///< by batch: before it was taken out
    std::vector<int> m_withRoom;
    std::vector<std::int64_t> m_order;
    int m_heldZone = -1; ///< zone whose held choice this round changed, and what it was
    int m_heldBefore = 0;
    Plan m_plan;
    bool m_mayRoam = false; ///< the house is small enough for excursions
    int m_roundsOut = 0;    ///< left of an excursion
    std::int64_t m_costAtHome = 0;
    std::vector<Plan> m_home; ///< where the excursion began
    std::vector<int> m_heldAtHome;
    std::vector<int> m_moved;
    int m_dearestSpace =
        1; ///< above the price of a slot and day in thousandths: the mean that all batches could pay
    KeptStates m_kept; ///< while the first plan is made
    std::int64_t m_bestCost = 0;
    bool m_keepsBest = true;
    bool m_atBest = false; ///< the state is the best, not yet saved
    std::vector<Plan> m_best;
    std::vector<int> m_bestHeld;
    std::vector<int> m_touched; ///< batches changed since the best was saved
    std::vector<char> m_isTouched;
};

template <class Stopped>
void Walk::construct(Stopped stopped, std::span<const Scope* const> scopes) {
    m_batches.clear();
    for (int batch = 0; batch < static_cast<int>(m_model->batches.size()); ++batch)
        if (!m_state.isPlaced(batch)) m_batches.push_back(batch);
    orderForPlacing(m_batches);
    keepFirst();
    for (const int batch : m_batches) {
        if (stopped()) break;
        if (!scopes.empty()) m_inserter.keepTo(*scopes[at(batch)]);
        bool isPlaced = placeFirst(batch);
        if (!isPlaced && m_model->batches[at(batch)].pinned) {
            m_inserter.keepTo(m_model->whole);
            isPlaced = placeFirst(batch);
        }
        if (!isPlaced) continue;
        m_state.place(m_plan);
        touch(batch);
    }
    m_inserter.keepTo(*m_scope);
    m_bestCost = m_state.cost();
    m_atBest = m_keepsBest;
}

} // namespace warmbench::planner::search
