#pragma once

#include "core/planner/problem.h"

#include <optional>

namespace warmbench::speed {

/// What CBC makes of a problem within a time.
struct CbcRun {
    double seconds = 0;
    std::optional<double> total; ///< currency units, of the best solution found
    double bound = 0;            ///< currency units
    bool proven = false;
    int columns = 0;
    int rows = 0;
};

/// Solves `problem` as an integer program with CBC, on one thread: a variable for each way in which each stay
/// can be had, each zone's set-point of each day, and each batch's staying out. Space is counted in slots,
/// and scatter is left out, so it is an easier problem than the planner's; but for one zone and one day each
/// container has a variable for each place. Nothing where the program would have more than `mostColumns`. CBC
/// tells on standard output what it finds.
[[nodiscard]] std::optional<CbcRun> solveByCbc(const planner::Problem& problem, double seconds,
                                               std::size_t mostColumns = 200'000);

} // namespace warmbench::speed
