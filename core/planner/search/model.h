#pragma once

#include "core/planner/problem.h"
#include "core/planner/search/scope.h"

#include <algorithm>
#include <cstdint>
#include <functional>
#include <limits>
#include <vector>

/// The problem as the search works on it: everything that can be known beforehand is in tables. Money is in
/// thousandths, slots are counted, days count from `start`. A state of a zone is the index of its set-point,
/// or `off`.
namespace warmbench::planner::search {

inline constexpr int off = -1;
inline constexpr std::int64_t never = std::numeric_limits<std::int64_t>::max() / 4;

/// Between which temperatures a zone's root zone is on all days, at one state; tenths.
struct StateWarmth {
    std::int64_t least = 0;
    std::int64_t most = 0;
};

/// Zones that differ at most in their grids: one cover, one floor, one mat.
struct ZoneClass {
    std::vector<int> zones;
    bool hasMat = false;
    std::vector<std::int64_t> matCost; ///< a day, by set-point
    std::vector<StateWarmth> warmth;   ///< off first, then by set-point

    [[nodiscard]] std::int64_t costAt(int state) const {
        return state == off ? 0 : matCost[static_cast<std::size_t>(state)];
    }
};

/// What a stay costs and how long it lasts when it begins on one day, in eight bytes: there are millions.
class StayTerms {
public:
    StayTerms() = default;
    /// Off ideal by `degrees` (tenths, all days together) at `rate` (hundredths for a degree and day); beyond
    /// 10^13 currency units it counts as that.
    [[nodiscard]] static StayTerms of(std::int64_t degrees, std::int64_t rate, int length) {
        StayTerms terms;
        const bool isBeyond = rate > 0 && degrees > mostOffIdeal / rate;
        terms.m_packed = (isBeyond ? mostOffIdeal : degrees * rate) << lengthBits | length;
        return terms;
    }

    [[nodiscard]] std::int64_t offIdeal() const { return m_packed >> lengthBits; }
    /// Days; 0: not allowed.
    [[nodiscard]] int length() const { return static_cast<int>(m_packed & ((1 << lengthBits) - 1)); }

private:
    static constexpr int lengthBits = 9; // longestStay is below 512
    static constexpr std::int64_t mostOffIdeal = 10'000'000'000'000'000;

    std::int64_t m_packed = 0;
};

/// One way in which a stay can stand: in a zone of one class, at one state.
struct StayOption {
    int zoneClass = 0;
    std::int16_t state = off;
    bool steady = false;          ///< the same terms whatever the day: they are given once
    std::uint32_t firstTerms = 0; ///< index in StayModel::allTerms of those of its first start
    std::int64_t least = 0;       ///< off ideal on the day on which that is least
};

struct StayModel {
    int firstStart = 0; ///< days on which it can begin at all
    int lastStart = -1;
    std::vector<StayOption> options;
    std::vector<StayTerms> allTerms; ///< option by option, day by day

    /// It can stand in zones of the class, on some days at least.
    [[nodiscard]] bool suits(int zoneClass) const {
        return std::any_of(options.begin(), options.end(),
                           [&](const StayOption& option) { return option.zoneClass == zoneClass; });
    }
    [[nodiscard]] const StayTerms& terms(const StayOption& option, int day) const {
        return allTerms[option.firstTerms + (option.steady ? 0U : static_cast<unsigned>(day - firstStart))];
    }
};

struct BatchModel {
    int strikeFirst = 0;
    int strikeLast = -1; ///< before strikeFirst where no day is possible
    int slots = 0;       ///< taken by all containers
    int size = 0;        ///< index in Model::sizes of the largest that is not above `slots`
    int firstStay = 0;   ///< index of its first stay among all stays
    int firstSlot = 0;   ///< index of its first container's place among all places of all stays
    bool single = true;  ///< each container takes one slot
    bool pinned = false;
    int pinnedZone = -1;
    const std::vector<PlacedStay>* previous = nullptr; ///< of a batch that stood somewhere before
    bool isKeepable = false;                           ///< its own rules allow it to stand as before
    std::int64_t changeCost = 0;                       ///< of not standing as before
    std::int64_t value = 0; ///< of leaving it out, a change with it; beyond all money for a pinned one
    std::int64_t latePerDay = 0;
    std::int64_t due = never;
    std::int64_t moveCost = 0;
    std::int64_t least = 0; ///< standing anywhere costs so much at least, mats aside
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

/// Asked often; true ends the work soon.
using Stopped = std::function<bool()>;

struct Making {
    int threads = 1;       ///< up to two; the model is the same
    int firstSearched = 0; ///< batches before it are only stood where a plan has them: they have no options
    Stopped stopped = [] { return false; }; ///< asked on every thread; then ways to stand may be missing
};

struct Model {
    explicit Model(const Problem& problem, const Making& making = {});

    const Problem* problem;
    int days = 0;
    int stayCount = 0;
    int placeCount = 0;     ///< containers of all stays
    bool anyPlaced = false; ///< some zone is `placed`
    std::int64_t scatterCost = 0;
    std::int64_t worth = 0; ///< value of all batches that are not pinned
    std::vector<ZoneClass> classes;
    Scope whole; ///< all zones and batches
    std::vector<ZoneModel> zones;
    std::vector<BatchModel> batches;
    std::vector<int> batchOfStay;
    std::vector<int> sizes;   ///< numbers of slots that batches take, rising: all of them, or every so many
    std::vector<int> fitting; ///< by number of free slots: how many of the sizes fit
    int states = 1;           ///< the most that a zone has, off with them
    std::vector<std::int64_t> hands;              ///< cuttings that can be struck, by day
    std::vector<std::vector<std::int64_t>> yield; ///< cuttings there are up to each day, by stock and day

    /// Lets a batch take so many slots.
    void setSlots(int batch, int slots);
    /// The grid of `zone` is large enough for one container of the batch, blocked slots aside.
    [[nodiscard]] bool fitsGrid(int batch, int zone) const;

private:
    void makeBatches(const Making& making);
    void makeSizes();
};

} // namespace warmbench::planner::search
