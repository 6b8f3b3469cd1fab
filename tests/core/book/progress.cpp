#include "core/book/progress.h"

#include "core/book/command.h"
#include "core/book/query.h"
#include "tests/support/small_nursery.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::literals;

namespace {

const Batch& batchOf(const HouseBook& book, std::string_view taxon) {
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.taxon == findTaxon(book, taxon)->id) return batch;
    throw std::logic_error("no such batch");
}

Progress progressOf(const HouseBook& book, std::string_view taxon, Day day) {
    return progressOn(book, *stayOn(book, batchOf(book, taxon).id, day), day);
}

/// A batch of 8 pots in zone C, and a check of its first pot.
Progress afterCheck(int rooted, int callused) {
    HouseBook book = tests::smallNursery();
    const Batch& batch = batchOf(book, "Griselinia littoralis");
    const Day day = tests::smallNurseryToday();
    REQUIRE(book.perform({RecordCheck{
        {{}, batch.id, 1, day, 8, rooted, callused, 8 - rooted - callused, 0, std::nullopt, ""}}}));
    return progressOf(book, "Griselinia littoralis", day);
}

} // namespace

TEST_CASE("A batch goes from planned to ready to pot on") {
    const HouseBook book = tests::smallNursery();
    const Day today = tests::smallNurseryToday();
    CHECK(progressOf(book, "Osmanthus × burkwoodii", today + 1) == Progress::Planned);
    CHECK(progressOf(book, "Griselinia littoralis", today) == Progress::Struck);
    CHECK(progressOf(book, "Phlomis italica", today) == Progress::Weaning);
    CHECK(progressOf(book, "Weigela florida", today - 7) == Progress::Ready);
}

TEST_CASE("Half of the cuttings examined decide between struck, callused and rooted") {
    CHECK(afterCheck(4, 0) == Progress::Rooted);
    CHECK(afterCheck(3, 1) == Progress::Callused);
    CHECK(afterCheck(0, 4) == Progress::Callused);
    CHECK(afterCheck(1, 2) == Progress::Struck);
}

TEST_CASE("Growing on is weaning until the recipe's days are over") {
    const HouseBook book = tests::smallNursery();
    const Batch& batch = batchOf(book, "Weigela florida");
    const Day grown = batch.strikeDay + 40 + 14;
    CHECK(progressOf(book, "Weigela florida", grown + 9) == Progress::Weaning);
    CHECK(progressOf(book, "Weigela florida", grown + 10) == Progress::Ready);
}

TEST_CASE("A later check of the same container takes the place of an earlier one") {
    HouseBook book = tests::smallNursery();
    const Batch& batch = batchOf(book, "Griselinia littoralis");
    const Day today = tests::smallNurseryToday();
    REQUIRE(book.perform({RecordCheck{{{}, batch.id, 2, today, 8, 8, 0, 0, 0, 3, ""}}}));
    REQUIRE(book.perform({RecordCheck{{{}, batch.id, 2, today - 2, 8, 1, 7, 0, 0, 1, ""}}}));
    CHECK(latestChecks(book, batch.id, today).rooted == 8);
    CHECK(latestChecks(book, batch.id, today - 1).rooted == 1);
    CHECK(latestChecks(book, batch.id, today - 3).last == std::nullopt);
    CHECK(latestCheck(book, batch.id, 2, today)->rooted == 8);
    CHECK(latestCheck(book, batch.id, 3, today) == nullptr);
}

TEST_CASE("A root zone outside the recipe's bounds is trouble while a batch roots") {
    const HouseBook book = tests::smallNursery();
    const Day today = tests::smallNurseryToday();
    const Stay& cold = *stayOn(book, batchOf(book, "Pittosporum tobira").id, today + 2);
    CHECK(cold.stage == Stage::Rooting);
    for (const Trouble& trouble : troublesOn(book, cold, today + 2))
        CHECK(trouble.kind != TroubleKind::TooCold);
    const Day matOff = today + 55;
    HouseBook later = book;
    REQUIRE(later.perform({SetMatRuns{cold.zone, today - 80, matOff, {}}}));
    const auto troubles = troublesOn(later, later.get<Stay>(cold.id), today + 2);
    REQUIRE(!troubles.empty());
    CHECK(troubles.front().kind == TroubleKind::TooCold);
    CHECK(troubles.front().limit == 17_degC);
    CHECK(troubles.front().rootZone < 17_degC);
}

TEST_CASE("A quarter dead at the latest checks is trouble") {
    const HouseBook book = tests::smallNursery();
    const Day today = tests::smallNurseryToday();
    const Stay& stay = *stayOn(book, batchOf(book, "Ceanothus 'Concha'").id, today);
    const auto troubles = troublesOn(book, stay, today);
    REQUIRE(troubles.size() == 1);
    CHECK(troubles[0] == Trouble{TroubleKind::Dying, {}, {}, 6, 24});
    CHECK(troublesOn(book, stay, today - 8).empty());
}
