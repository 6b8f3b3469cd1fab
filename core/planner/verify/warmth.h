#pragma once

#include "core/planner/problem.h"

#include <cstdint>
#include <optional>
#include <vector>

/// Rules 1 to 3: temperatures, set-points over time, lengths of stays. For core/planner/verify only.
namespace warmbench::planner::verify {

/// A mat's state: a set-point in tenths, or off.
using MatState = std::optional<std::int64_t>;

/// The states of one zone's mat on the days of the horizon. The last goes on for ever.
class MatStates {
public:
    explicit MatStates(int horizon) : m_horizon(horizon) {}

    /// The mat runs at `setPoint` on the days from <= day < to, which come after all runs so far.
    void addRun(std::int64_t from, std::int64_t to, std::int64_t setPoint) {
        m_runs.push_back({from, to, setPoint});
    }
    [[nodiscard]] MatState on(std::int64_t day) const;
    /// The first of the days from < day < to on which the state is not that of the day before.
    [[nodiscard]] std::optional<std::int64_t> firstChange(std::int64_t from, std::int64_t to) const;

private:
    struct Run {
        std::int64_t from;
        std::int64_t to;
        std::int64_t setPoint;
    };
    std::int64_t m_horizon;
    std::vector<Run> m_runs;
};

/// Root-zone temperature in tenths.
[[nodiscard]] std::int64_t temperature(const Zone& zone, MatState state, std::int64_t day);

/// Days of a stay from `from` on at one state; nothing where it would pass 400 days.
[[nodiscard]] std::optional<int> lengthOfStay(const Duration& duration, const Zone& zone, MatState state,
                                              std::int64_t from);

} // namespace warmbench::planner::verify
