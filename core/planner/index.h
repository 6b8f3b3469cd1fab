#pragma once

#include <cstddef>
#include <limits>

namespace warmbench::planner {

/// What the planner counts in `int` (batches, zones, days), as the index of a vector; never below 0.
inline std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

inline constexpr double infinity = std::numeric_limits<double>::infinity();

} // namespace warmbench::planner
