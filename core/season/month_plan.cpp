#include "core/season/month_plan.h"

#include "core/book/progress.h"
#include "core/book/query.h"
#include "core/season/stock_calendar.h"

#include <algorithm>
#include <tuple>

namespace warmbench::season {
namespace {

/// A season's window is looked for so far round a batch's day.
constexpr int daysRound = 200;

std::optional<Day> readyDayOf(const HouseBook& book, BatchId batch) {
    const std::vector<const Stay*> stays = staysInOrder(book, batch);
    if (stays.empty()) return std::nullopt;
    Day last = stays.front()->to;
    for (const Stay* stay : stays) last = std::max(last, stay->to);
    return last;
}

/// The season that a day lies in, or the day alone where it lies in none.
StrikeWindow seasonRound(const HouseBook& book, const Recipe& recipe, Day day) {
    const Nursery& nursery = book.nursery();
    const Season local = seasonFor(recipe.season.value, nursery.latitude.units(), nursery.seasonShiftDays);
    for (const StrikeWindow& window : strikeWindows(local, day - daysRound, day + daysRound))
        if (window.holds(day)) return window;
    return {day, day};
}

MonthBatch monthBatch(const HouseBook& book, const Batch& batch) {
    MonthBatch one;
    one.batch = batch.id;
    one.window = seasonRound(book, batch.recipe, batch.strikeDay);
    one.ready = readyDayOf(book, batch.id);
    if (batch.target) one.due = book.get<Target>(*batch.target).due;
    if (one.due && one.ready) {
        const int takes = *one.ready - batch.strikeDay;
        one.window.last = std::max(one.window.first, std::min(one.window.last, *one.due - takes));
    }
    return one;
}

void warnOfSeason(BatchMove& move, const HouseBook& book, const Batch& batch, Day day) {
    const StrikeWindow now = seasonRound(book, batch.recipe, batch.strikeDay);
    const StrikeWindow then = seasonRound(book, batch.recipe, day);
    if (then.first == then.last && now.first != now.last)
        move.warnings.push_back(phrase("its %1 is right from %2 to %3 only",
                                       Phrase(woodNames[static_cast<std::size_t>(batch.recipe.wood)]),
                                       now.first, now.last));
}

void warnOfLate(BatchMove& move, const HouseBook& book, const Batch& batch) {
    if (!batch.target || !move.ready) return;
    const Target& target = book.get<Target>(*batch.target);
    if (const int late = *move.ready - target.due; late > 0)
        move.warnings.push_back(late == 1 ? phrase("%1 would be 1 day late", target.name)
                                          : phrase("%1 would be %2 days late", target.name, late));
}

void warnOfHands(BatchMove& move, const HouseBook& after, Day day) {
    const DayHands hands = handsOn(after, day);
    if (hands.over())
        move.warnings.push_back(
            phrase("%1 cuttings on a day with hands for %2", hands.cuttings, hands.hands));
}

void warnOfStock(BatchMove& move, const HouseBook& before, const HouseBook& after, const Batch& batch) {
    if (!batch.stock) return;
    const std::vector<Overcut> old = overcuts(before, before.get<Stock>(*batch.stock), Day::first());
    for (const Overcut& one : overcuts(after, after.get<Stock>(*batch.stock), Day::first())) {
        if (std::find(old.begin(), old.end(), one) != old.end()) continue;
        move.warnings.push_back(
            phrase(one.taken == 1 ? pattern("on %1 %2 cutting would be taken from %3, and %4 stand on it")
                                  : pattern("on %1 %2 cuttings would be taken from %3, and %4 stand on it"),
                   one.day, one.taken, after.get<Stock>(one.stock).name, one.stands));
        return;
    }
}

void warnOfHeat(BatchMove& move, const HouseBook& after, BatchId id) {
    for (const Stay* stay : staysInOrder(after, id)) {
        if (stay->stage != Stage::Rooting) continue;
        for (Day day = stay->from; day < stay->to; day = day + 1) {
            for (const Trouble& trouble : troublesOn(after, *stay, day)) {
                const bool cold = trouble.kind == TroubleKind::TooCold;
                if (!cold && trouble.kind != TroubleKind::TooWarm) continue;
                move.warnings.push_back(
                    phrase(cold ? pattern("from %1 %2 is too cold for it; plan again to have the mat set")
                                : pattern("from %1 %2 is too warm for it; plan again to have the mat set"),
                           day, zoneTitle(after, stay->zone)));
                return;
            }
        }
    }
}

} // namespace

DayHands handsOn(const HouseBook& book, Day day) {
    DayHands hands;
    hands.day = day;
    hands.hands = book.nursery().strikesByWeekday[static_cast<std::size_t>(day.weekday())];
    for (const HandDayId id : book.withKey<HandDay>(day)) {
        const HandDay& special = book.get<HandDay>(id);
        hands.hands = special.cuttings;
        hands.special = true;
        hands.note = special.note;
    }
    for (const BatchId id : book.batchesStruckOn(day)) hands.cuttings += book.get<Batch>(id).cuttings();
    return hands;
}

Command setHands(const HouseBook& book, Day day, std::optional<int> cuttings, const std::string& note) {
    const auto& found = book.withKey<HandDay>(day);
    if (!cuttings && !found.empty()) return Command{Remove<HandDay>{*found.begin()}};
    HandDay special;
    if (!found.empty()) special.id = *found.begin();
    special.day = day;
    special.cuttings =
        cuttings.value_or(book.nursery().strikesByWeekday[static_cast<std::size_t>(day.weekday())]);
    special.note = note;
    return Command{Put<HandDay>{special}};
}

MonthPlan monthPlan(const HouseBook& book, const std::vector<TargetNeed>& needs, Day from, int days) {
    MonthPlan plan;
    plan.from = from;
    plan.days = days;
    for (int i = 0; i < days; ++i) {
        plan.hands.push_back(handsOn(book, from + i));
        for (const BatchId id : book.batchesStruckOn(from + i)) {
            const Batch& batch = book.get<Batch>(id);
            plan.batches.push_back(monthBatch(book, batch));
            if (batch.state != BatchState::Planned) continue;
            plan.cuttings += batch.cuttings();
            plan.materials.add(book, batch);
        }
    }
    std::stable_sort(plan.batches.begin(), plan.batches.end(), [&](const MonthBatch& a, const MonthBatch& b) {
        const Batch& one = book.get<Batch>(a.batch);
        const Batch& other = book.get<Batch>(b.batch);
        return std::tie(one.strikeDay, one.code) < std::tie(other.strikeDay, other.code);
    });
    for (const TargetNeed& need : needs)
        if (need.way)
            plan.wants.push_back({need.target, need.way->window, need.way->cuttings, need.way->late});
    std::stable_sort(plan.wants.begin(), plan.wants.end(),
                     [](const MonthWant& a, const MonthWant& b) { return a.window.first < b.window.first; });
    return plan;
}

BatchMove moveBatch(const HouseBook& book, BatchId id, Day day) {
    const Batch& batch = book.get<Batch>(id);
    const int by = day - batch.strikeDay;
    PlanBatch plan{id, day, {}};
    for (const Stay* stay : staysInOrder(book, id)) {
        plan.stays.push_back(*stay);
        plan.stays.back().from = stay->from + by;
        plan.stays.back().to = stay->to + by;
    }
    BatchMove move{Command{plan}, {}, {}, {}};
    HouseBook after = book;
    if (auto change = after.perform(move.command); !change) {
        move.refusal = change.refusal();
        return move;
    }
    move.ready = readyDayOf(after, id);
    warnOfSeason(move, book, batch, day);
    warnOfLate(move, book, batch);
    warnOfHands(move, after, day);
    warnOfStock(move, book, after, batch);
    warnOfHeat(move, after, id);
    return move;
}

} // namespace warmbench::season
