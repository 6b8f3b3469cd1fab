#include "core/season/month_plan.h"

#include "core/book/query.h"
#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

BatchId planWarm(SeasonBook& nursery, Day day, int cuttings, int row, std::optional<TargetId> target = {}) {
    const BatchId id = nursery.book.nextId<Batch>();
    Batch batch;
    batch.taxon = nursery.taxon;
    batch.recipe = testing::semiRipe(nursery.taxon);
    batch.stock = nursery.stock;
    batch.target = target;
    batch.strikeDay = day;
    batch.containerType = nursery.pot;
    batch.containers = {{1, cuttings}};
    Stay stay;
    stay.zone = nursery.warm;
    stay.from = day;
    stay.to = day + 40;
    stay.places = {{1, {row, 0, 1, 1}}};
    const auto change = nursery.book.perform(Command{AddBatch{batch, {stay}}});
    INFO((change ? std::string() : change.refusal().text()));
    REQUIRE(change);
    return id;
}

void heat(SeasonBook& nursery, Day from, Day to) {
    REQUIRE(nursery.book.perform(
        Command{SetMatRuns{nursery.warm, from, to, {{{}, {}, from, to, Celsius{180}}}}}));
}

bool warns(const BatchMove& move, const std::string& part) {
    for (const Phrase& warning : move.warnings)
        if (warning.text().find(part) != std::string::npos) return true;
    return false;
}

} // namespace

TEST_CASE("A month shows hands against what is planned, batches with their windows, and what they take") {
    SeasonBook nursery;
    const TargetId target = nursery.want(5, on(10, 20));
    const BatchId planned = planWarm(nursery, on(8, 4), 5, 0, target);
    nursery.strike(on(8, 5), 7, 60);
    REQUIRE(nursery.book.perform(setHands(nursery.book, on(8, 5), 6, "half a day")));
    const MonthPlan plan = monthPlan(nursery.book, {}, on(8, 2), 7);
    REQUIRE(plan.hands.size() == 7);
    CHECK(plan.hands[0].hands == 400); // a Monday
    CHECK(plan.hands[2].cuttings == 5);
    CHECK(plan.hands[3].over());
    CHECK(plan.hands[3].note == "half a day");
    CHECK(plan.hands[6].hands == 0); // a Sunday
    REQUIRE(plan.batches.size() == 2);
    CHECK(plan.batches[0].batch == planned);
    CHECK(plan.batches[0].ready == on(9, 13));
    // In its season, and no later than 40 days before the target's day.
    CHECK(plan.batches[0].window == StrikeWindow{on(7, 15), on(9, 10)});
    CHECK(plan.cuttings == 5);
    CHECK(plan.materials.containers.at("1-litre pot") == 1);
    CHECK(plan.materials.componentMillilitres.at("coir") == 500);
}

TEST_CASE("A day's own hands are set, changed and taken back, each as one step") {
    SeasonBook nursery;
    HouseBook& book = nursery.book;
    const HouseBook before = book;
    const auto set = book.perform(setHands(book, on(8, 2), 0, "holiday"));
    REQUIRE(set);
    CHECK(handsOn(book, on(8, 2)).hands == 0);
    CHECK(handsOn(book, on(8, 2)).special);
    REQUIRE(book.perform(setHands(book, on(8, 2), 150, "half a day")));
    CHECK(handsOn(book, on(8, 2)).hands == 150);
    CHECK(book.all<HandDay>().size() == 1);
    REQUIRE(book.perform(setHands(book, on(8, 2), {}, "")));
    CHECK(handsOn(book, on(8, 2)).hands == 400);
    CHECK(book == before);
}

TEST_CASE("A batch moved within its season takes its stays along and warns of nothing") {
    SeasonBook nursery;
    heat(nursery, on(8, 1), on(10, 30));
    const BatchId id = planWarm(nursery, on(8, 4), 5, 0);
    const BatchMove move = moveBatch(nursery.book, id, on(8, 9));
    CHECK_FALSE(move.refusal);
    INFO((move.warnings.empty() ? std::string() : move.warnings.front().text()));
    CHECK(move.warnings.empty());
    CHECK(move.ready == on(9, 18));
    REQUIRE(nursery.book.perform(move.command));
    CHECK(nursery.book.get<Batch>(id).strikeDay == on(8, 9));
    CHECK(staysInOrder(nursery.book, id).front()->from == on(8, 9));
}

TEST_CASE("What a move would spoil is said before it is done") {
    SeasonBook nursery;
    heat(nursery, on(8, 1), on(9, 30));
    const TargetId target = nursery.want(5, on(9, 20));
    const BatchId id = planWarm(nursery, on(8, 4), 5, 0, target);
    CHECK(warns(moveBatch(nursery.book, id, on(8, 14)), "T1 would be 3 days late"));
    CHECK(warns(moveBatch(nursery.book, id, on(8, 15)), "5 cuttings on a day with hands for 0"));
    CHECK(
        warns(moveBatch(nursery.book, id, on(6, 1)), "its semi-ripe is right from 2027-07-15 to 2027-09-30"));
    // The unheated root zone is 12 °C, the recipe's lowest 14.
    CHECK(warns(moveBatch(nursery.book, id, on(9, 1)), "from 2027-09-30 Bench 1 · A is too cold"));
    nursery.strike(on(8, 10), 198, 60);
    CHECK(warns(moveBatch(nursery.book, id, on(8, 12)), "5 cuttings would be taken from Row 2, and 2 stand"));
}

TEST_CASE("A move onto slots that are taken is refused in words, and nothing changes") {
    SeasonBook nursery;
    const BatchId first = planWarm(nursery, on(7, 20), 5, 0);
    planWarm(nursery, on(9, 1), 5, 0);
    const BatchMove move = moveBatch(nursery.book, first, on(8, 10));
    REQUIRE(move.refusal);
    CHECK_FALSE(move.refusal->text().empty());
    CHECK(nursery.book.get<Batch>(first).strikeDay == on(7, 20));
    const BatchId struck = nursery.strike(on(8, 3), 4, 30);
    CHECK(moveBatch(nursery.book, struck, on(8, 4)).refusal);
}
