#pragma once

#include "core/quantity/day.h"
#include "core/quantity/id.h"

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>

namespace warmbench {

/// What a logger measures.
enum class Channel : std::uint8_t { RootZone, Air, Humidity };
inline constexpr std::array<const char*, 3> channelNames{"root zone", "air", "humidity"};

/// Where a logger is: in one zone of a bench, or in a house. Exactly one of them is there.
struct ReadingPlace {
    std::optional<ZoneId> zone;
    std::optional<HouseId> house;
    friend auto operator<=>(const ReadingPlace&, const ReadingPlace&) = default;
};

/// One channel's readings of a calendar month in one place, packed (core/climate/packed_readings.h). Moments
/// are whole minutes of the place's winter time, at most one reading each.
struct ReadingMonth {
    ReadingMonthId id;
    std::optional<ZoneId> zone;
    std::optional<HouseId> house;
    Channel channel = Channel::RootZone;
    Day month; ///< its first day
    std::string packed;
    friend bool operator==(const ReadingMonth&, const ReadingMonth&) = default;

    [[nodiscard]] ReadingPlace place() const { return {zone, house}; }
};

} // namespace warmbench
