#pragma once

#include "core/planner/problem.h"

#include <cstdint>
#include <limits>
#include <vector>

/// The problem as the search works on it: everything that can be known beforehand is in tables. Money is in
/// thousandths, slots are counted, days count from `start`. A state of a zone is the index of its set-point,
/// or `off`.
namespace warmbench::planner::search {

inline constexpr int off = -1;
inline constexpr std::int64_t never = std::numeric_limits<std::int64_t>::max() / 4;

/// Zones that differ at most in their grids: one cover, one floor, one mat.
struct ZoneClass {
    std::vector<int> zones;
    bool hasMat = false;
    std::vector<std::int64_t> matCost; ///< a day, by set-point

    [[nodiscard]] std::int64_t costAt(int state) const {
        return state == off ? 0 : matCost[static_cast<std::size_t>(state)];
    }
};

/// What a stay costs and how long it lasts when it begins on one day.
struct StayTerms {
    std::int64_t offIdeal = 0;
    int length = 0; ///< days; 0: not allowed
};

/// One way in which a stay can stand: in a zone of one class, at one state.
struct StayOption {
    int zoneClass = 0;
    int state = off;
    bool steady = false;          ///< the same terms whatever the day: `terms` has one entry
    std::vector<StayTerms> terms; ///< from StayModel::firstStart on
};

struct StayModel {
    int firstStart = 0; ///< days on which it can begin at all
    int lastStart = -1;
    std::vector<StayOption> options;
    int choices = 0; ///< zones of all options together

    [[nodiscard]] const StayTerms& terms(const StayOption& option, int day) const {
        return option.terms[option.steady ? 0 : static_cast<std::size_t>(day - firstStart)];
    }
};

struct BatchModel {
    int strikeFirst = 0;
    int strikeLast = -1; ///< before strikeFirst where no day is possible
    int slots = 0;       ///< taken by all containers
    int firstStay = 0;   ///< index of its first stay among all stays
    int firstSlot = 0;   ///< index of its first container's place among all places of all stays
    bool single = true;  ///< each container takes one slot
    bool pinned = false;
    int pinnedZone = -1;
    std::int64_t value = 0; ///< of leaving it out; beyond all money for a pinned one
    std::int64_t latePerDay = 0;
    std::int64_t due = never;
    std::int64_t moveCost = 0;
    std::vector<StayModel> stays;

    [[nodiscard]] std::int64_t late(int end) const { return end > due ? latePerDay * (end - due) : 0; }
};

/// What stands in a zone from day 0 on, for one state that suits all of it.
struct HeldChoice {
    int state = off;
    int days = 0;                ///< until the last is gone; 0 with nothing held
    std::vector<int> slotsByDay; ///< taken on each day of [0, days)
    std::vector<int> until;      ///< for each held thing of the zone, the first day after
};

struct ZoneModel {
    int zoneClass = 0;
    int slots = 0;       ///< not blocked
    bool placed = false; ///< containers must be placed on slots in the search: counting does not suffice
    std::vector<int> held;
    std::vector<HeldChoice> heldChoices; ///< one or more where something is held; else none
};

struct Model {
    explicit Model(const Problem& problem);

    const Problem* problem;
    int days = 0;
    int stayCount = 0;
    int placeCount = 0;     ///< containers of all stays
    bool anyPlaced = false; ///< some zone is `placed`
    std::int64_t scatterCost = 0;
    std::int64_t worth = 0; ///< value of all batches that are not pinned
    std::vector<ZoneClass> classes;
    std::vector<ZoneModel> zones;
    std::vector<BatchModel> batches;
    std::vector<int> batchOfStay;
    std::vector<std::int64_t> hands;              ///< cuttings that can be struck, by day
    std::vector<std::vector<std::int64_t>> yield; ///< cuttings there are up to each day, by stock and day

    /// The grid of `zone` is large enough for one container of the batch, blocked slots aside.
    [[nodiscard]] bool fitsGrid(int batch, int zone) const;
};

} // namespace warmbench::planner::search
