#pragma once

#include <cstdint>

namespace warmbench::planner::packing {

/// What came of an attempt to pack.
enum class Verdict : std::uint8_t {
    Packed,
    Cannot, ///< proven: there is no packing
    Unknown ///< the steps are used up
};

} // namespace warmbench::planner::packing
