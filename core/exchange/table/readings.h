#pragma once

#include "core/climate/thermal_time.h"
#include "core/quantity/result.h"

#include <string>
#include <vector>

namespace warmbench::exchange {

/// A temperature logger's readings.
struct ReadingTable {
    std::vector<climate::Reading> readings; ///< hours since the first of them, in order, at least one
    std::string from;                       ///< the first moment as the file writes it
    std::string to;                         ///< the last
};

/// Reads a CSV text with the columns `time` (ISO 8601, all with an offset from UTC or all without) and
/// `celsius`. Times may not go backwards; two readings of one time are a sudden step. `name` is the file's,
/// for refusals.
Result<ReadingTable> readReadings(const std::string& name, std::string text);

} // namespace warmbench::exchange
