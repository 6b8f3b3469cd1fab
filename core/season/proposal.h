#pragma once

#include "core/book/command.h"
#include "core/planner/answer.h"
#include "core/season/materials.h"
#include "core/season/month_problem.h"

namespace warmbench::season {

/// What a plan does with a batch.
enum class LineChange : std::uint8_t {
    New,   ///< it is not in the book yet
    Moved, ///< planned before, and now for other days or another place
    Kept,  ///< planned before, and as before
};

inline constexpr std::array<const char*, 3> lineChangeNames{"new", "moved", "kept"};

/// One line of a strike list: a batch to strike on a day, and where it is to stand.
struct StrikeLine {
    std::string id; ///< of the problem's batch
    LineChange change = LineChange::New;
    Batch batch;             ///< planned, with its recipe and containers; a new one has no code and id yet
    std::vector<Stay> stays; ///< rooting first
    std::optional<Celsius> setPoint; ///< of the zone in which it roots; nothing when its mat is off
    bool late = false;               ///< potted on after the target's date
    std::vector<std::string> why;    ///< what it loses by being late or off its ideal heat, and why, in words
    Phrase moved; ///< why it is moved; empty where its day was over, or not all of it had a place
};

/// Something that was wanted, or planned before, and has no place in the plan.
struct NotPlaced {
    std::optional<TargetId> target;
    std::optional<Batch> planned; ///< the batch of the book, which loses its places and stays planned
    std::int64_t cuttings = 0;    ///< of all batches of which the same is to be said
    Phrase why;
    Phrase hint; ///< what would bring it in, where it is its target's worth; else empty
};

/// A plan for people: what to strike when and where, mats to set, what does not fit and why. Nothing of it is
/// in the book until its command is performed.
struct Proposal {
    Day from;
    int strikeDays = 0;
    std::vector<StrikeLine> lines; ///< by day, then by zone
    std::vector<std::pair<ZoneId, std::vector<MatRun>>> mats;
    std::vector<NotPlaced> notPlaced;
    /// Targets that want plants and of which nothing can be struck in these days, by the first day on which
    /// something can; those that no day is known for last.
    std::vector<TargetNeed> waiting;
    std::vector<Stay> early; ///< stays of struck batches, with the earlier ends that the plan counts on
    std::int64_t cuttingsWanted = 0;
    std::int64_t cuttingsPlaced = 0;
    Materials materials;
    planner::Cost cost;
    std::int64_t bound = 0; ///< thousandths

    /// `at most 1.3 % from the best possible`; empty when no bound is known.
    [[nodiscard]] Phrase quality() const;
    /// How many lines change something.
    [[nodiscard]] std::size_t changes() const;
    /// The same with only some of its lines and of what has no place: those that `taken`, by place in `lines`
    /// and then in `notPlaced`, is true of. Where a batch of the book that is left out stays, and nothing of
    /// what is taken is to stand, the mat stays as it is too.
    [[nodiscard]] Proposal only(const HouseBook& book, const std::vector<bool>& taken) const;
    /// One command that plans all batches, takes those off their places that have none any more, and sets all
    /// mats.
    [[nodiscard]] Command command() const;
};

/// What has no place: its target and taxon, or the code of a batch planned before.
[[nodiscard]] std::string title(const HouseBook& book, const NotPlaced& one);

/// Reads the planner's answer to a month's problem back into the book's terms.
[[nodiscard]] Proposal proposalFrom(const HouseBook& book, const MonthProblem& month,
                                    const planner::Answer& answer,
                                    const std::vector<planner::Compromise>& compromises = {});

} // namespace warmbench::season
