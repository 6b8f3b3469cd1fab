#pragma once

#include "core/house/slot.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// The planning problem, versions 1 and 2, as the planner works on it: indices instead of names, integers
/// only. Temperatures and degree-days are tenths, money is hundredths, days count from `start`.
namespace warmbench::planner {

using warmbench::Cover;
using warmbench::Footprint;
using warmbench::SlotRect;

/// No stay lasts longer, in days.
inline constexpr int longestStay = 400;

struct SetPoint {
    std::int64_t tenths = 0;     ///< temperature aimed at
    std::int64_t costPerDay = 0; ///< hundredths
};

struct Zone {
    std::string id;
    int rows = 1;
    int cols = 1;
    std::vector<char> blocked; ///< rows * cols, row by row; 1 takes no container
    Cover cover = Cover::Open;
    std::vector<std::int64_t> floor; ///< tenths by day; the last repeats
    bool hasMat = false;
    std::vector<SetPoint> setPoints; ///< in the order of the file; empty without a mat

    [[nodiscard]] std::int64_t floorAt(int day) const {
        return floor[static_cast<std::size_t>(day) < floor.size() ? static_cast<std::size_t>(day)
                                                                  : floor.size() - 1];
    }
};

struct StockStep {
    int day = 0;
    std::int64_t total = 0; ///< cuttings up to and including any day from `day` on
};

struct Stock {
    std::string id;
    std::vector<StockStep> steps; ///< day increasing, total not decreasing; 0 before the first
};

/// How long something stands: a number of days, or until it has its degree-days.
struct Duration {
    std::optional<int> days;         ///< 1 to longestStay
    std::int64_t degreeDays = 0;     ///< tenths; used when `days` is absent
    std::int64_t base = 0;           ///< tenths
    std::optional<std::int64_t> cap; ///< tenths
};

struct Held {
    std::string id;
    int zone = 0;
    std::vector<SlotRect> slots;
    std::int64_t low = 0;  ///< tenths
    std::int64_t high = 0; ///< tenths
    Duration duration;
};

struct StayRule {
    std::uint8_t covers = 0;   ///< bit 1 << Cover for each cover accepted
    std::int64_t low = 0;      ///< tenths
    std::int64_t ideal = 0;    ///< tenths
    std::int64_t high = 0;     ///< tenths
    std::int64_t offIdeal = 0; ///< hundredths for each degree and day
    Duration duration;

    [[nodiscard]] bool accepts(Cover cover) const { return (covers >> static_cast<int>(cover)) & 1; }
};

struct Pin {
    std::optional<int> strikeDay;
    std::optional<int> zone;
    std::vector<SlotRect> slots; ///< of the first stay; empty when not pinned
};

/// Where a batch stands during one of its stays: in an answer, or in the plan that was made before, where
/// days may lie before `start`.
struct PlacedStay {
    int zone = 0;
    int from = 0;
    int to = 0;                  ///< first day after
    std::vector<SlotRect> slots; ///< one for each container
};

struct Batch {
    std::string id;
    int containers = 1;
    Footprint footprint;
    bool turn = false;
    std::int64_t cuttings = 0;
    std::optional<int> stock;
    int strikeFirst = 0;
    int strikeLast = 0;
    std::optional<std::int64_t> due;
    std::int64_t value = 0;      ///< hundredths
    std::int64_t latePerDay = 0; ///< hundredths
    std::int64_t moveCost = 0;   ///< hundredths
    std::vector<StayRule> stays;
    std::optional<Pin> pin;
    /// Its stays in the plan that was made before; empty where it cannot stand like that any more; absent
    /// where it was not placed then.
    std::optional<std::vector<PlacedStay>> previous;
};

struct Problem {
    int version = 1;              ///< of the format; 2 has previous plans and a change cost
    std::string start;            ///< ISO date of day 0
    int days = 0;                 ///< horizon H
    std::int64_t scatterCost = 0; ///< hundredths
    std::int64_t changeCost = 0;  ///< hundredths for each batch that does not stand as in `previous`
    std::vector<Zone> zones;
    std::vector<Stock> stocks;
    std::vector<std::int64_t> strikeCapacity; ///< cuttings a day, repeated; empty is unlimited
    std::vector<Held> held;
    std::vector<Batch> batches;
};

/// Root-zone temperature in tenths of `zone` on `day`: setPoint -1 is off, else an index of zone.setPoints.
[[nodiscard]] inline std::int64_t rootZone(const Zone& zone, int setPoint, int day) {
    const std::int64_t floor = zone.floorAt(day);
    if (setPoint < 0) return floor;
    const std::int64_t aimed = zone.setPoints[static_cast<std::size_t>(setPoint)].tenths;
    return aimed > floor ? aimed : floor;
}

/// Days that `duration` takes in `zone` at one set-point (-1: off) from `from` on;
/// nothing where it would pass longestStay.
[[nodiscard]] std::optional<int> stayLength(const Duration& duration, const Zone& zone, int setPoint,
                                            int from);

} // namespace warmbench::planner
