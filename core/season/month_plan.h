#pragma once

#include "core/book/command.h"
#include "core/crop/season.h"
#include "core/season/materials.h"
#include "core/season/need.h"

namespace warmbench::season {

/// The hands of one day against what is to be struck on it.
struct DayHands {
    Day day;
    int hands = 0;        ///< cuttings that can be struck
    int cuttings = 0;     ///< planned and struck
    bool special = false; ///< other hands than its weekday's
    std::string note;     ///< of a special day
    [[nodiscard]] bool over() const { return cuttings > hands; }
};

/// A batch that is struck or to be struck in the days that are looked at.
struct MonthBatch {
    BatchId batch;
    StrikeWindow window;      ///< its wood's season, and the last day from which its target is met in time
    std::optional<Day> ready; ///< its slots are free; nothing while it has no place
    std::optional<Day> due;
};

/// A target that still wants striking in those days.
struct MonthWant {
    TargetId target;
    StrikeWindow window;
    std::int64_t cuttings = 0;
    bool late = false;
};

/// Days across, batches down.
struct MonthPlan {
    Day from;
    int days = 0;
    std::vector<DayHands> hands;     ///< one a day
    std::vector<MonthBatch> batches; ///< by strike day, then code
    std::vector<MonthWant> wants;    ///< by the first day of their windows
    int cuttings = 0;                ///< of planned batches
    Materials materials;             ///< that planned batches take
};

/// The days from <= day < from + days of a book. `needs` are of the same days.
[[nodiscard]] MonthPlan monthPlan(const HouseBook& book, const std::vector<TargetNeed>& needs, Day from,
                                  int days);

/// The hands of a day: a special one's, else its weekday's.
[[nodiscard]] DayHands handsOn(const HouseBook& book, Day day);

/// Gives a day other hands than its weekday's; the weekday's own where nothing is given.
[[nodiscard]] Command setHands(const HouseBook& book, Day day, std::optional<int> cuttings,
                               const std::string& note);

/// What moving a planned batch to another day does.
struct BatchMove {
    Command command;              ///< moves its strike day and all its stays
    Outcome refusal;              ///< why the book can't do that
    std::vector<Phrase> warnings; ///< what is against it all the same
    std::optional<Day> ready;     ///< its slots would be free
};

/// Moves a planned batch with its stays to another day, on a copy of the book. Warned of are the wood's
/// season, the target's day, the day's hands, the stock's shoots, and the root zone where it is to root.
[[nodiscard]] BatchMove moveBatch(const HouseBook& book, BatchId batch, Day day);

} // namespace warmbench::season
