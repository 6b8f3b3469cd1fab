#include "core/season/coverage.h"

#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

std::vector<TargetCoverage> coverageOn(const SeasonBook& nursery, Day day) {
    PlanRequest request;
    request.from = day;
    return coverageOf(nursery.book, testing::builtIn(), request, forecastFor(nursery.book, request));
}

} // namespace

TEST_CASE("Targets in trouble stand first, each with what can still be done") {
    SeasonBook nursery;
    const TargetId later = nursery.want(5, *Day::make(2028, 12, 1));
    const TargetId now = nursery.want(20, on(12, 20));
    const TargetId tooLate = nursery.want(10, on(8, 30));
    const auto list = coverageOn(nursery, on(8, 2));
    REQUIRE(list.size() == 3);
    CHECK(list[0].target == tooLate);
    CHECK(list[0].state == CoverageState::Short);
    REQUIRE(list[0].remedies.size() == 1);
    // Struck at once, 86 days after 2 August.
    CHECK(list[0].remedies[0].text().find("give it a later date, 2027-10-27 at the earliest") !=
          std::string::npos);
    CHECK(list[1].target == now);
    CHECK(list[1].state == CoverageState::Short);
    CHECK(list[1].remedies[0].text().find("semi-ripe cuttings from 2027-08-02 to 2027-09-25") !=
          std::string::npos);
    CHECK(list[2].target == later);
    CHECK(list[2].state == CoverageState::Waiting);
    CHECK(list[2].remedies.empty());
}

TEST_CASE("Expected plants come with a band that holds what is sure and narrows as they are potted on") {
    SeasonBook nursery;
    const TargetId target = nursery.want(20, on(12, 20));
    const BatchId first = nursery.strike(on(8, 1), 30, 100, target);
    nursery.strike(on(8, 2), 10, 100, target);
    const auto before = coverageOn(nursery, on(8, 5)).front();
    CHECK(before.struck == 40);
    CHECK(before.expected > 25);
    CHECK(before.expected < 36);
    CHECK(before.band.low < before.expected);
    CHECK(before.band.high > before.expected);
    CHECK(before.band.high <= 40);
    REQUIRE(nursery.book.perform(Command{PotOn{first, on(10, 20), {{1, 22, 8}}, ""}}));
    const auto after = coverageOn(nursery, on(10, 21)).front();
    CHECK(after.state == CoverageState::Met);
    CHECK(after.potted == 22);
    CHECK(after.band.high - after.band.low < before.band.high - before.band.low);
    CHECK(after.remedies.empty());
}

TEST_CASE("A planned batch counts with its recipe's take and a band of its own") {
    SeasonBook nursery;
    const TargetId target = nursery.want(20, on(12, 20));
    Batch batch;
    batch.taxon = nursery.taxon;
    batch.recipe = testing::semiRipe(nursery.taxon);
    batch.target = target;
    batch.strikeDay = on(8, 10);
    batch.containerType = nursery.pot;
    batch.containers = {{1, 40}};
    REQUIRE(nursery.book.perform(Command{AddBatch{batch, {}}}));
    const auto coverage = coverageOn(nursery, on(8, 5)).front();
    CHECK(coverage.planned == 40);
    CHECK(coverage.struck == 0);
    CHECK(coverage.expected == Approx(40 * 0.78).margin(1.5)); // the middle of 65 to 90 %
    CHECK(coverage.band.low > 15);
    CHECK(coverage.band.low < 30);
    CHECK(coverage.band.high > 33);
    CHECK(coverage.state == CoverageState::OnCourse);
}

TEST_CASE("What nobody has weaned is potted on its recipe's days after today at the earliest") {
    SeasonBook nursery;
    const TargetId target = nursery.want(5, on(10, 10));
    const Batch& batch = nursery.book.get<Batch>(nursery.strike(on(8, 1), 10, 100, target));
    const int days = batch.recipe.weanDays.value + batch.recipe.growOnDays.value;
    const auto early = coverageOn(nursery, on(8, 2)).front();
    REQUIRE(early.ready);
    REQUIRE(*early.ready < on(11, 30) + days);
    CHECK(coverageOn(nursery, on(11, 30)).front().ready == on(11, 30) + days);
}

TEST_CASE("A late target says by how much, and which mat would bring it forward") {
    SeasonBook nursery;
    const TargetId target = nursery.want(5, on(10, 10));
    Batch batch;
    batch.taxon = nursery.taxon;
    batch.recipe = testing::semiRipe(nursery.taxon);
    batch.target = target;
    batch.strikeDay = on(8, 1);
    batch.containerType = nursery.pot;
    batch.containers = {{1, 20}};
    batch.state = BatchState::Struck;
    Stay stay;
    stay.zone = nursery.warm;
    stay.from = on(8, 1);
    stay.to = on(9, 20);
    stay.places = {{1, {0, 0, 1, 1}}};
    REQUIRE(nursery.book.perform(Command{AddBatch{batch, {stay}}}));
    REQUIRE(nursery.book.perform(Command{
        SetMatRuns{nursery.warm, on(8, 1), on(10, 1), {{{}, {}, on(8, 1), on(10, 1), Celsius{150}}}}}));
    const auto coverage = coverageOn(nursery, on(8, 5)).front();
    CHECK(coverage.state == CoverageState::Late);
    CHECK(coverage.lateDays > 0);
    REQUIRE(coverage.remedies.size() == 2);
    CHECK(coverage.remedies[0].text().find(
              "set the mat of Bench 1 · A to 18 °C: 27-213-A is likely to be ready ") == 0);
    CHECK(coverage.remedies[1].text().find(" late, by 2027-") != std::string::npos);
}
