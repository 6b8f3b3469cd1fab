#pragma once

#include "core/house/slot.h"
#include "core/quantity/day.h"
#include "core/quantity/id.h"
#include "core/quantity/quantity.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <vector>

namespace warmbench {

/// Mean temperatures at the middle of each month, January first; days between are interpolated.
using MonthlyCelsius = std::array<Celsius, 12>;

/// The temperature on `day`, on the straight line between the middles of the months round it.
[[nodiscard]] Celsius onDay(const MonthlyCelsius& byMonth, Day day);

enum class HouseKind : std::uint8_t { Glass, Tunnel, Room };
inline constexpr std::array<const char*, 3> houseKindNames{"glass", "tunnel", "room"};

/// A propagation house in plan: x runs along its length, y from the back (north) wall.
struct House {
    HouseId id;
    std::string name;
    HouseKind kind = HouseKind::Glass;
    Millimetres length{};
    Millimetres width{};
    MonthlyCelsius air{};              ///< mean air temperature in the house
    MonthlyCelsius unheatedRootZone{}; ///< root zone on a bench with no mat running
    friend bool operator==(const House&, const House&) = default;
};

/// A table in a house with a grid of square slots; (x, y) is the corner of row 0, column 0.
struct Bench {
    BenchId id;
    HouseId house;
    std::string name;
    Millimetres x{};
    Millimetres y{};
    int rows = 1;
    int cols = 1;
    Millimetres slot{130}; ///< side of a slot; 130 mm takes a 1-litre pot of 13 cm
    friend bool operator==(const Bench&, const Bench&) = default;
};

/// Loss of heat by each square metre of mat for each kelvin above the air, in hundredths of W/(m2 K).
using HeatLoss = Amount<struct HeatLossTag, 100>;

/// A heated mat under a zone, with its thermostat.
struct Mat {
    std::string name;
    Watts rated{};                  ///< of the whole mat
    HeatLoss loss{};                ///< of the bench above it
    std::vector<Celsius> setPoints; ///< at which it may be run, rising
    /// From this day on it heats no more: broken, or taken away. What it did before stands in its runs.
    std::optional<Day> outOfOrderFrom{};
    friend bool operator==(const Mat&, const Mat&) = default;
};

/// A rectangle of a bench with one cover and at most one mat.
struct Zone {
    ZoneId id;
    BenchId bench;
    std::string name;
    int row = 0; ///< of its first slot on the bench
    int col = 0;
    int rows = 1;
    int cols = 1;
    Cover cover = Cover::Open;
    std::vector<Slot> blocked; ///< slots of the zone (its own rows and columns) that take no container
    std::optional<Mat> mat;
    friend bool operator==(const Zone&, const Zone&) = default;

    /// The mat, where it can be run on every day from <= day < to; null where there is none, or where it is
    /// out of order by then.
    [[nodiscard]] const Mat* matDuring(Day from, Day to) const {
        const bool out = mat && mat->outOfOrderFrom && *mat->outOfOrderFrom < std::max(to, from + 1);
        return mat && !out ? &*mat : nullptr;
    }
    [[nodiscard]] const Mat* matOn(Day day) const { return matDuring(day, day + 1); }
    [[nodiscard]] SlotRect onBench() const { return {row, col, rows, cols}; }
    [[nodiscard]] int usableSlots() const { return rows * cols - static_cast<int>(blocked.size()); }
};

/// Days on which a zone's mat runs at one set-point.
struct MatRun {
    MatRunId id;
    ZoneId zone;
    Day from;
    Day to; ///< first day after
    Celsius setPoint{};
    friend bool operator==(const MatRun&, const MatRun&) = default;
};

} // namespace warmbench
