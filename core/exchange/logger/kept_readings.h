#pragma once

#include "core/book/command.h"
#include "core/exchange/logger/logger_file.h"

namespace warmbench::exchange {

/// A logger's readings as a book keeps them.
struct KeptReadings {
    std::vector<ChannelReadings> channels; ///< the temperature's, and humidity where the file has it
    std::size_t sameMinute = 0;            ///< left out: there was one in the same minute
};

/// To whole minutes of the place's winter time, which is `offsetMinutes` ahead of UTC, and hundredths. Of
/// several readings in one minute the first is kept. `temperature` is RootZone or Air.
[[nodiscard]] KeptReadings keptReadings(const LoggerFile& file, int offsetMinutes, Channel temperature);

} // namespace warmbench::exchange
