#pragma once

#include "core/planner/search/cooling.h"
#include "core/planner/search/found.h"
#include "core/planner/search/halves.h"
#include "core/planner/search/walk.h"

#include <array>
#include <cstdint>
#include <functional>
#include <vector>

namespace warmbench::planner::search {

/// Two walks that search a large house together, each in its half. After each leg they take over what the
/// other has moved and share what is left of hands and stock anew.
class Team {
public:
    /// The house is large enough, and of a kind that is walked through.
    [[nodiscard]] static bool suits(const Model& model);

    Team(const Model& model, std::uint64_t seed);

    /// How far a leg goes, and who walks it.
    struct Leg {
        /// How far along the whole search is, 0 to 1, after so many rounds of one walk in this leg.
        std::function<double(std::int64_t rounds)> along;
        double until = 1;     ///< ends when it is so far along
        bool isAlone = false; ///< one walk goes through both halves, one after the other
        bool inThreads = true;
    };

    /// Makes the first plan, half by half, and gives it slots; soon ended by `stopped`, with what was placed
    /// by then. Once `givenUp` nothing is placed.
    void begin(const Stopped& stopped, const Stopped& givenUp);
    /// One leg; what it finds is given slots where it is better by enough. Once `givenUp` it is forgotten.
    void walk(const Leg& leg, const Cooling& cooling, const Stopped& stopped, const Stopped& givenUp);
    /// Gives slots to the last that was found, with more care.
    void finish(const Stopped& stopped);

    [[nodiscard]] bool leavesPinnedOut() const;
    [[nodiscard]] std::int64_t rounds() const { return m_rounds; }
    [[nodiscard]] Found& found() { return m_found; }

private:
    /// Rounds of a walk through one half; `done` before them in this leg.
    void walkThrough(Walk& walk, int half, double until, const Leg& leg, Cooling cooling, std::int64_t& done,
                     const Stopped& stopped);
    void together(const Leg& leg, const Cooling& cooling, const Stopped& stopped);
    void alone(const Leg& leg, const Cooling& cooling, const Stopped& stopped);
    void exchange(const Leg& leg, const Stopped& givenUp);
    void goOnFromBest();
    [[nodiscard]] const State& state() const { return m_walks[0].state(); }

    const Model* m_model;
    Random m_random;
    Halves m_halves;
    std::array<Walk, Halves::count> m_walks;
    Found m_found;
    int m_cycle = 0;
    std::int64_t m_rounds = 0;
};

} // namespace warmbench::planner::search
