#include "core/exchange/logger/kept_readings.h"

#include <cmath>

namespace warmbench::exchange {
namespace {

std::int32_t hundredths(double value) {
    return static_cast<std::int32_t>(std::lround(value * 100));
}

/// The whole minute that a second lies in, before 1970 too.
std::int32_t minuteOf(std::int64_t second) {
    return static_cast<std::int32_t>(second >= 0 ? second / 60 : (second + 1) / 60 - 1);
}

} // namespace

KeptReadings keptReadings(const LoggerFile& file, int offsetMinutes, Channel temperature) {
    KeptReadings kept;
    ChannelReadings warmth{temperature, {}};
    ChannelReadings humidity{Channel::Humidity, {}};
    warmth.readings.reserve(file.readings.size());
    if (file.shape.humidityColumn) humidity.readings.reserve(file.readings.size());
    for (const LoggerReading& one : file.readings) {
        const std::int32_t minute = minuteOf(one.second + std::int64_t{offsetMinutes} * 60);
        if (!warmth.readings.empty() && warmth.readings.back().minute == minute) {
            ++kept.sameMinute;
            continue;
        }
        warmth.readings.push_back({minute, hundredths(one.celsius)});
        if (one.humidity) humidity.readings.push_back({minute, hundredths(*one.humidity)});
    }
    kept.channels.push_back(std::move(warmth));
    if (!humidity.readings.empty()) kept.channels.push_back(std::move(humidity));
    return kept;
}

} // namespace warmbench::exchange
