#pragma once

#include "core/planner/search/assembly.h"
#include "core/planner/search/bins.h"
#include "core/planner/search/walk.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <utility>
#include <vector>

namespace warmbench::planner::search {

/// A moment of a search that cools one or more times.
struct Cooling {
    double progress = 0; ///< 0 at the beginning to 1 at the end of all
    int cycles = 1;
    double warmth = 0.15; ///< of the first heat, 0 to 1: less when there is little time to cool down again
};

/// One independent stream of search from a first plan on: walks, cools, gives slots to what it finds, and
/// keeps the best plan whose slots are given.
class Stream {
public:
    Stream(const Model& model, std::uint64_t seed);

    /// Makes the first plan and gives it slots; soon ended by `stopped`, with what was placed by then. Once
    /// `givenUp` nothing is placed.
    void begin(const Stopped& stopped, const Stopped& givenUp);
    /// Up to `rounds` rounds at the heat that belongs to the moment of `cooling`.
    void run(std::int64_t rounds, const Cooling& cooling, const Stopped& stopped);
    /// The cooling that suits so many rounds, at its beginning.
    [[nodiscard]] Cooling coolingFor(double rounds) const;
    /// Gives slots to the last that was found, with more care.
    void finish(const Stopped& stopped);
    /// Goes on from the best plan of another stream.
    void adopt(const Stream& other);

    /// Total of the best plan with slots, `never` where there is none.
    [[nodiscard]] std::int64_t total() const { return m_total; }
    [[nodiscard]] std::int64_t rounds() const { return m_rounds; }
    /// The answer of that total, without reasons and bound.
    [[nodiscard]] const Answer& answer() const { return m_answer; }
    [[nodiscard]] Answer takeAnswer() { return std::move(m_answer); }
    [[nodiscard]] const std::vector<Plan>& plans() const { return m_plans; }
    [[nodiscard]] const std::vector<int>& held() const { return m_held; }

private:
    void roundOfBins();
    void pack(long rounds, const Stopped& stopped);
    /// Remembers what was packed last.
    void keep(const std::vector<Plan>& plans, const std::vector<int>& held, std::int64_t total);

    const Model* m_model;
    Walk m_walk;
    std::optional<Bins> m_bins; ///< searches instead of the walk where the problem is of its kind
    Assembly m_assembly;
    int m_block; ///< rounds between two looks at slots
    int m_cycle = 0;
    std::int64_t m_rounds = 0;
    std::int64_t m_total = never;
    std::int64_t m_lastPacked = never; ///< cost before packing of what was packed last
    Answer m_answer;
    std::vector<Plan> m_plans;
    std::vector<int> m_held;
};

} // namespace warmbench::planner::search
