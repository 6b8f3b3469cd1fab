#include "core/season/report/season_report.h"

#include "core/take/take_table.h"
#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

const ReportSpan year{on(1, 1), on(12, 31), on(12, 31)};

void must(HouseBook& book, const Command& command) {
    const auto change = book.perform(command);
    INFO((change ? std::string() : change.refusal().text()));
    REQUIRE(change);
}

/// A batch of one pot that is potted on whole after so many days.
BatchId finish(SeasonBook& nursery, Day struck, int cuttings, int days, int plants,
               std::optional<TargetId> target = {}) {
    const BatchId id = nursery.strike(struck, cuttings, days + 10, target);
    must(nursery.book, Command{PotOn{id, struck + days, {{1, plants, cuttings - plants}}, ""}});
    return id;
}

} // namespace

TEST_CASE("What was wanted and made is counted target by target, in time and late") {
    SeasonBook nursery;
    const TargetId met = nursery.want(6, on(9, 30));
    const TargetId late = nursery.want(4, on(9, 10));
    const TargetId shortOf = nursery.want(50, on(10, 30));
    const TargetId outside = nursery.want(5, *Day::make(2029, 5, 1));
    finish(nursery, on(8, 1), 5, 50, 4, met);
    finish(nursery, on(8, 2), 5, 55, 3, met);
    finish(nursery, on(8, 3), 5, 45, 5, late);
    nursery.strike(on(8, 4), 5, 90, shortOf);
    const SeasonReport report = seasonReport(nursery.book, year);
    REQUIRE(report.targets.size() == 3);
    CHECK(report.targets[0].target == late);
    CHECK(report.targets[0].metOn == on(9, 17));
    CHECK(report.targets[0].inTime == 0);
    CHECK(report.targets[1].target == met);
    CHECK(report.targets[1].struck == 10);
    CHECK(report.targets[1].potted == 7);
    CHECK(report.targets[1].inTime == 7);
    CHECK(report.targets[1].metOn == on(9, 26));
    CHECK(report.targets[2].target == shortOf);
    CHECK_FALSE(report.targets[2].met());
    CHECK(report.targets[2].missing() == 50);
    CHECK(report.targets[2].standing == 5);
    CHECK(report.struck == 20);
    CHECK(report.potted == 12);
    CHECK(report.lost == 3);
    CHECK(report.standing == 5);
    for (const TargetResult& result : report.targets) CHECK(result.target != outside);
}

TEST_CASE("A season seen in its middle knows nothing of what came after") {
    SeasonBook nursery;
    const TargetId target = nursery.want(6, on(9, 30));
    finish(nursery, on(8, 1), 5, 50, 4, target);
    const SeasonReport report = seasonReport(nursery.book, {on(1, 1), on(12, 31), on(9, 1)});
    REQUIRE(report.targets.size() == 1);
    CHECK(report.targets[0].potted == 0);
    CHECK(report.targets[0].standing == 5);
    CHECK(report.groups.at(0).take.batches.empty());
    CHECK_FALSE(report.groups.at(0).slotDaysEach());
}

TEST_CASE("Losses stand under their reasons, and the take counts batches that have ended") {
    SeasonBook nursery;
    finish(nursery, on(8, 1), 5, 50, 3);
    const BatchId rotten = nursery.strike(on(8, 2), 5, 60);
    must(nursery.book, Command{RecordLoss{{{}, rotten, 1, on(8, 20), 2, "rot"}}});
    const SeasonReport report = seasonReport(nursery.book, year);
    REQUIRE(report.groups.size() == 1);
    const GroupResult& group = report.groups.front();
    CHECK(group.batches == 2);
    CHECK(group.struck == 10);
    CHECK(group.potted == 3);
    CHECK(group.standing == 3);
    CHECK(group.lost == std::map<std::string, int>{{"rot", 2}, {"without roots at potting on", 2}});
    CHECK(group.take.take.rooted == 3);
    CHECK(group.take.take.struck == 5);
    CHECK(group.recipeLow == Approx(0.65));
    CHECK(group.recipeHigh == Approx(0.9));
}

TEST_CASE("Bench-days of a plant are slots times days of ended batches, over their plants") {
    SeasonBook nursery;
    finish(nursery, on(8, 1), 5, 50, 4); // one pot of one slot for 50 days
    finish(nursery, on(8, 2), 5, 40, 1); // and one for 40
    nursery.strike(on(8, 4), 5, 90);     // still standing: not counted
    const SeasonReport report = seasonReport(nursery.book, year);
    CHECK(report.slotDays == 90);
    CHECK(report.pottedOfEnded == 5);
    CHECK(report.groups.at(0).slotDaysEach() == Approx(18.0));
}

TEST_CASE("Heat is shared by the slots that batches take, and idle where nothing stands") {
    SeasonBook nursery;
    // The warm zone: 96 slots of 13 cm, 6.5 W/(m2 K), 3 K above the air of 15 C: 31.6 W, 0.759 kWh a day.
    const double daily = 96 * 0.13 * 0.13 * 6.5 * 3 * 24 / 1000;
    must(nursery.book, Command{SetMatRuns{
                           nursery.warm, on(8, 1), on(9, 1), {{{}, {}, on(8, 1), on(8, 31), Celsius{180}}}}});
    const auto stand = [&](Day from, Day to, int column, int pots) {
        const BatchId id = nursery.book.nextId<Batch>();
        Batch batch;
        batch.taxon = nursery.taxon;
        batch.recipe = testing::semiRipe(nursery.taxon);
        batch.stock = nursery.stock;
        batch.strikeDay = from;
        batch.containerType = nursery.pot;
        batch.state = BatchState::Struck;
        Stay stay;
        stay.zone = nursery.warm;
        stay.from = from;
        stay.to = to;
        for (int pot = 1; pot <= pots; ++pot) {
            batch.containers.push_back({pot, 5});
            stay.places.push_back({pot, {pot - 1, column, 1, 1}});
        }
        must(nursery.book, Command{AddBatch{batch, {stay}}});
        return id;
    };
    const BatchId one = stand(on(8, 1), on(8, 21), 0, 1); // alone for 10 days, then beside three for 10
    const BatchId three = stand(on(8, 11), on(8, 21), 1, 3);
    const HeatShares shares = heatShares(nursery.book, year);
    CHECK(shares.all.kilowattHours == Approx(30 * daily));
    CHECK(shares.all.idle == Approx(10 * daily)); // 21 to 30 August
    CHECK(shares.all.idleByZone.at(nursery.warm) == Approx(10 * daily));
    CHECK(shares.byBatch.at(one) == Approx(10 * daily + 10 * daily / 4));
    CHECK(shares.byBatch.at(three) == Approx(10 * daily * 3 / 4));
    must(nursery.book, Command{PotOn{one, on(8, 20), {{1, 4, 1}}, ""}});
    const SeasonReport report = seasonReport(nursery.book, year);
    // Potted on a day earlier: the others have that day's heat to themselves.
    CHECK(report.groups.at(0).kilowattHoursEach() == Approx((10 * daily + 9 * daily / 4) / 4));
}

TEST_CASE("A stock's yield stands beside what its flushes could give") {
    SeasonBook nursery;
    finish(nursery, on(8, 1), 5, 50, 3);
    nursery.strike(on(8, 9), 4, 60);
    const SeasonReport report = seasonReport(nursery.book, year);
    REQUIRE(report.stocks.size() == 1);
    CHECK(report.stocks[0].taken == 9);
    CHECK(report.stocks[0].potted == 3);
    // 20 plants of 10 cuttings from 15 July to 30 September, every 30 days: 15 July, 14 August, 13 September.
    CHECK(report.stocks[0].couldGive == 600);
    CHECK(report.stocks[0].take.take.struck == 5);
}

TEST_CASE("Evidence counts fewer cuttings than were struck, as those of a batch are alike") {
    SeasonBook nursery;
    const BatchId first = finish(nursery, on(8, 1), 40, 50, 30);
    const BatchId second = finish(nursery, on(8, 2), 40, 50, 20);
    const Evidence evidence = evidenceOf(nursery.book, {first, second});
    CHECK(evidence.take.rooted == 50);
    CHECK(evidence.take.struck == 80);
    CHECK(evidence.counts == Approx(80 / (1 + 39 * 0.03)));
    // Wilson's formula by hand: share 0.625, 36.87 cuttings, z^2 = 3.8415.
    CHECK(evidence.interval.low == Approx(0.4636).margin(5e-4));
    CHECK(evidence.interval.high == Approx(0.7625).margin(5e-4));
    // The take table says the same of the same cuttings.
    const auto rows = take::takeTable(nursery.book, take::Grouping::Taxon, reportLevel, on(1, 1), on(12, 31));
    REQUIRE(rows.size() == 1);
    CHECK(evidence.wilson.low == rows[0].interval.low);
    CHECK(evidence.wilson.high == rows[0].interval.high);
    CHECK(evidence.thin());
    CHECK(evidence.words() ==
          "50 of 80 potted on from 2 batches, 63 %: 46 to 76 % at 95 %, as batches differ");
    CHECK(evidenceOf(nursery.book, {}).words() == "no batch has ended yet");
}
