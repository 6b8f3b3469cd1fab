#pragma once

#include "core/book/command.h"
#include "core/placing/heat_there.h"
#include "core/placing/place_cost.h"
#include "core/placing/stay_moves.h"
#include "core/planner/packing/placement.h"

namespace warmbench::placing {

/// Why a zone does not suit.
enum class Hindrance : std::uint8_t {
    Cover,   ///< the recipe names others
    TooCold, ///< and no set-point of a mat helps
    TooWarm,
    Others,    ///< the heat that it needs would harm a batch there
    NoRoom,    ///< too few slots free, even on its first day
    NotSoLong, ///< room at first, but not until it leaves
    Following, ///< the place that it goes to afterwards is taken when it would come
};

/// One zone as a place for what is carried.
struct ZoneVerdict {
    ZoneId zone;
    std::vector<Hindrance> hindrances; ///< empty: it suits
    HeatThere heat;
    int freeSlots = 0;               ///< on all the days that it would stand there
    int wantedSlots = 0;             ///< that its containers cover
    Day freeUntil;                   ///< of NotSoLong: so long there is room
    std::optional<BatchId> follower; ///< of Following: the batch that stands there
    std::vector<SlotRect> best;      ///< slots for all of them as the planner would choose; empty: no room
    std::optional<CostChange> cost;  ///< where it suits

    [[nodiscard]] bool suits() const { return hindrances.empty(); }
};

/// Every zone of a book as a place for what is carried: worked out once when it is taken up. While it is
/// carried only the slots at the place aimed at are asked for. Holds a reference to the book, which must not
/// change meanwhile.
class Suitability {
public:
    Suitability(const HouseBook& book, Carried carried);

    [[nodiscard]] const Carried& carried() const { return m_carried; }
    /// In the order of the zones' ids.
    [[nodiscard]] const std::vector<ZoneVerdict>& zones() const { return m_zones; }
    [[nodiscard]] const ZoneVerdict* find(ZoneId zone) const;

    /// The slots that it would take round one that is aimed at: connected and compact. Fewer than there are
    /// containers where there is no room for all.
    [[nodiscard]] std::vector<SlotRect> slotsAt(ZoneId zone, Slot aim, bool turned) const;

    /// The command that puts it there, as one step: its mat is set where it has to be. `slots` for all of
    /// them, in the order of its containers. Nothing where there are too few.
    [[nodiscard]] std::optional<Command> placing(ZoneId zone, const std::vector<SlotRect>& slots) const;

private:
    void judge(const Zone& zone, const CostOfBatch& costs);
    void judgeRoom(const Zone& zone, ZoneVerdict& verdict);
    [[nodiscard]] std::vector<Stay> staysAfter(const Move& move) const;
    [[nodiscard]] std::optional<BatchId> inTheWay(const std::vector<Stay>& stays) const;
    [[nodiscard]] Move moveTo(ZoneId zone, const HeatThere& heat, const std::vector<SlotRect>& slots) const;
    [[nodiscard]] planner::packing::Occupancy standing(const Zone& zone, Day to) const;

    const HouseBook& m_book;
    Carried m_carried;
    std::vector<ZoneVerdict> m_zones;
    std::vector<planner::packing::Cells> m_free; ///< by zone, over the days that it would stand there
    planner::packing::Placer m_placer;
};

} // namespace warmbench::placing
