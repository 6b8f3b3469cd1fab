#pragma once

#include "core/placing/heat_there.h"
#include "core/planner/answer.h"

#include <set>

namespace warmbench::placing {

/// What the plan costs for a batch as it stands in the book, and with part of it elsewhere: by the planner's
/// own cost (resources/doc/planning-problem.md), in thousandths. The mats are those of the zones of both,
/// over the days of both; other batches and zones, which no move of this one changes, are left out.
struct CostChange {
    planner::Cost now;
    planner::Cost after;
    [[nodiscard]] std::int64_t difference() const { return after.total() - now.total(); }
};

/// Costs of one batch at different places, over the days from the day on which it is carried. Containers that
/// go different ways count as batches of their own.
class CostOfBatch {
public:
    CostOfBatch(const HouseBook& book, const Carried& carried);

    /// From its stays as they are to `after`, with the mat of `there` run as `heat` says. Nothing where its
    /// recipe's figures can't be.
    [[nodiscard]] std::optional<CostChange> change(const std::vector<Stay>& after, const Zone& there,
                                                   const HeatThere& heat) const;

private:
    /// What both sides of a change are reckoned over, so that only what is changed differs.
    struct Frame {
        std::set<ZoneId> zones;
        Day end;
    };
    /// `there` with its mat set by `heat`; null: as the book runs it.
    [[nodiscard]] planner::Cost reckon(const std::vector<Stay>& stays, const Frame& frame, ZoneId there,
                                       const HeatThere* heat) const;

    const HouseBook& m_book;
    const Carried& m_carried;
    double m_valueOfOne = 0; ///< of one cutting, hundredths
    bool m_known = false;
};

} // namespace warmbench::placing
