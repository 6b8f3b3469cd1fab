#pragma once

#include "core/exchange/logger/clock.h"
#include "core/exchange/logger/logger_shape.h"

namespace warmbench::exchange {

struct LoggerReading {
    std::int64_t second = 0; ///< since 1970-01-01 00:00 UTC
    double celsius = 0;
    std::optional<double> humidity; ///< per cent
};

/// A logger's readings in order, each moment once, and what was amiss with the file: to be shown before
/// anything is done with them.
struct LoggerFile {
    LoggerShape shape;
    std::vector<LoggerReading> readings; ///< at least one
    std::size_t lines = 0;               ///< read, from the first reading on
    std::size_t duplicates = 0;          ///< left out: a reading of the same moment was there
    std::size_t contradictions = 0;      ///< of those, with another temperature; the first one counts
    std::size_t outOfOrder = 0;          ///< put in their places
    std::size_t missing = 0;             ///< lines without a temperature
    std::vector<std::string> wrong;      ///< the first few lines that can't be read, in words
    std::size_t wrongLines = 0;
    std::size_t gaps = 0; ///< longer than climate::longestStep
    double gapHours = 0;
};

/// Reads a whole file. Lines that can't be read are left out and counted; refused where more than half can't
/// be.
[[nodiscard]] Result<LoggerFile> readLogger(const std::string& name, std::string_view text,
                                            const Clock& clock, const LoggerHints& hints = {});

} // namespace warmbench::exchange
