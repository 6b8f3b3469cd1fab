#include "core/book/progress.h"
#include "core/book/query.h"
#include "core/round/due.h"
#include "core/round/weaning.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::round;
using namespace warmbench::tests;

namespace {

/// Hardwood struck in November on the unheated zone, to be potted on and grown on there until the next
/// November.
BatchId strikeHardwood(SmallBook& small) {
    Recipe recipe = plainRecipe(small.abelia);
    recipe.wood = Wood::Hardwood;
    recipe.season.value = {{11, 1}, {1, 31}};
    recipe.rootZoneLow.value = Celsius{20};
    recipe.rootZoneIdeal.value = Celsius{120};
    recipe.rootZoneHigh.value = Celsius{200};
    recipe.base.value = Celsius{20};
    recipe.daysToRoot.value = {90, 130};
    recipe.covers.value = {Cover::Open};
    recipe.weanDays.value = 14;
    recipe.growOnDays.value = 200;
    Batch batch;
    batch.taxon = small.abelia;
    batch.recipe = recipe;
    batch.strikeDay = day("2026-11-20");
    batch.containerType = small.pot;
    batch.containers.assign(3, {0, 5});
    batch.state = BatchState::Struck;
    const auto stay = [&](Stage stage, const char* from, const char* to) {
        return Stay{{}, {}, stage, small.cool, day(from), day(to), {{1, {3, 0}}, {2, {3, 1}}, {3, {3, 2}}}};
    };
    perform(small.book, {AddBatch{batch,
                                  {stay(Stage::Rooting, "2026-11-20", "2027-04-20"),
                                   stay(Stage::GrowingOn, "2027-04-20", "2027-11-20")}}});
    return small.book.all<Batch>().rbegin()->first;
}

bool isDue(const HouseBook& book, BatchId batch, const char* on, Task task) {
    for (const Due& due : dueOn(book, forecast::BookForecast(book, day(on))))
        if (due.batch == batch) return due.task == task;
    return false;
}

} // namespace

TEST_CASE("Hardwood that stays a year roots, is weaned and grown on by its own dates, and is potted on at "
          "its end") {
    SmallBook small = smallBook();
    const BatchId id = strikeHardwood(small);
    const forecast::BookForecast winter(small.book, day("2027-01-10"));
    // At 10.5 °C in place of 12 it takes longer than the 90 to 130 days of its recipe.
    REQUIRE(winter.batches().at(id).likelyReady);
    CHECK(*winter.batches().at(id).likelyReady > day("2027-03-20"));
    CHECK(*winter.batches().at(id).likelyReady < day("2027-06-01"));
    CHECK_FALSE(isDue(small.book, id, "2027-01-10", Task::Wean));
    for (int pot = 1; pot <= 3; ++pot)
        perform(small.book, {RecordCheck{{{}, id, pot, day("2027-04-19"), 5, 5, 0, 0, 0, 4, ""}}});
    CHECK(isDue(small.book, id, "2027-04-20", Task::PotOn) == false);
    REQUIRE(stayOn(small.book, id, day("2027-04-25")));
    CHECK(stayOn(small.book, id, day("2027-04-25"))->stage == Stage::GrowingOn);
    CHECK(progressOn(small.book, *stayOn(small.book, id, day("2027-08-01")), day("2027-08-01")) ==
          Progress::Weaning);
    CHECK_FALSE(isDue(small.book, id, "2027-08-01", Task::PotOn));
    // 214 days after it left its rooting stay: on 20 November.
    CHECK(isDue(small.book, id, "2027-11-20", Task::PotOn));
    // One pot is potted on in September already: its slot is free, the others stay.
    perform(small.book, {PotOn{id, day("2027-09-01"), {{1, 5, 0}}, ""}});
    CHECK(standing(small.book, small.book.get<Batch>(id), day("2027-09-01")) == 10);
    CHECK(stayOn(small.book, id, day("2027-09-02"))->places.size() == 2);
    CHECK(small.book.get<Batch>(id).state == BatchState::Struck);
    perform(small.book, {PotOn{id, day("2027-11-20"), {{2, 5, 0}, {3, 4, 1}}, ""}});
    CHECK(small.book.get<Batch>(id).state == BatchState::Ended);
    CHECK(pottedOn(small.book, id) == 14);
    CHECK_FALSE(stayOn(small.book, id, day("2027-11-20")));
}

TEST_CASE(
    "Hardwood that roots early leaves its rooting stay early and grows on until the day that was planned") {
    SmallBook small = smallBook();
    const BatchId id = strikeHardwood(small);
    perform(small.book, *weanCommand(small.book, id, day("2027-04-01")));
    const Stay* growing = stayOn(small.book, id, day("2027-04-01"));
    REQUIRE(growing);
    CHECK(growing->stage == Stage::GrowingOn);
    CHECK(growing->to == day("2027-04-01") + (day("2027-11-20") - day("2027-04-20")));
}
