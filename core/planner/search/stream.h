#pragma once

#include "core/planner/search/bins.h"
#include "core/planner/search/cooling.h"
#include "core/planner/search/found.h"
#include "core/planner/search/walk.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <utility>
#include <vector>

namespace warmbench::planner::search {

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
    [[nodiscard]] Cooling coolingFor(double rounds) const {
        return Cooling::forRounds(rounds, m_model->batches.size());
    }
    /// Gives slots to the last that was found, with more care.
    void finish(const Stopped& stopped);
    /// Goes on from the best plan of another stream.
    void adopt(const Stream& other);

    /// Total of the best plan with slots, `never` where there is none.
    [[nodiscard]] std::int64_t total() const { return m_found.total(); }
    [[nodiscard]] std::int64_t rounds() const { return m_rounds; }
    [[nodiscard]] Found& found() { return m_found; }
    /// The answer of that total, without reasons and bound.
    [[nodiscard]] const Answer& answer() const { return m_found.answer(); }
    [[nodiscard]] Answer takeAnswer() { return m_found.takeAnswer(); }
    [[nodiscard]] const std::vector<Plan>& plans() const { return m_found.plans(); }
    [[nodiscard]] const std::vector<int>& held() const { return m_found.held(); }

private:
    void roundOfBins();
    void pack(const Stopped& stopped);

    const Model* m_model;
    Walk m_walk;
    std::optional<Bins> m_bins; ///< searches instead of the walk where the problem is of its kind
    Found m_found;
    int m_block; ///< rounds between two looks at slots
    int m_cycle = 0;
    std::int64_t m_rounds = 0;
};

} // namespace warmbench::planner::search
