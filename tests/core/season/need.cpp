#include "core/season/need.h"
#include "core/rooting/prior/recipe_prior.h"
#include "core/season/month_problem.h"
#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::builtIn;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;
using warmbench::testing::semiRipe;

namespace {

Day dated(int year, unsigned month, unsigned day) {
    return *Day::make(year, month, day);
}

TargetNeed onlyNeed(const SeasonBook& nursery, Day from, int days, int sure = 900) {
    const auto needs = targetNeeds(nursery.book, builtIn(), {from, days, sure});
    REQUIRE(needs.size() == 1);
    return needs.front();
}

} // namespace

TEST_CASE("A target in season is met by as many cuttings as its sureness asks for") {
    SeasonBook nursery;
    nursery.want(40, dated(2027, 12, 1));
    const TargetNeed need = onlyNeed(nursery, dated(2027, 8, 2), 28);
    REQUIRE(need.state == NeedState::Now);
    REQUIRE(need.way);
    // Take 65 to 90 % as the 10 % and 90 % points of a beta law: fewer than 40 / 0.65 would be unsure.
    CHECK(need.way->cuttings > 50);
    CHECK(need.way->cuttings < 75);
    CHECK(rooting::betaBinomialAtLeast(40, need.way->cuttings, need.way->take) >= 0.9);
    CHECK(rooting::betaBinomialAtLeast(40, need.way->cuttings - 1, need.way->take) < 0.9);
    CHECK_FALSE(need.way->late);
    const TargetNeed surer = onlyNeed(nursery, dated(2027, 8, 2), 28, 990);
    CHECK(surer.way->cuttings > need.way->cuttings);
}

TEST_CASE("The last strike day leaves time to root, wean and grow on") {
    SeasonBook nursery;
    nursery.want(40, dated(2027, 11, 10));
    const TargetNeed need = onlyNeed(nursery, dated(2027, 8, 2), 60);
    REQUIRE(need.way);
    // 90 % of those that root have rooted after 56 days at the ideal; 10 days of weaning and 20 of growing
    // on.
    CHECK(need.way->daysToReady == 86);
    CHECK(need.way->window.first == dated(2027, 8, 2));
    CHECK(need.way->window.last == dated(2027, 11, 10) - 86);
}

TEST_CASE("A target that can't be ready in time is struck late for four weeks, then no more") {
    SeasonBook nursery;
    const TargetId target = nursery.want(40, dated(2027, 10, 20));
    REQUIRE(onlyNeed(nursery, dated(2027, 8, 2), 28).way);
    CHECK(onlyNeed(nursery, dated(2027, 8, 2), 28).way->late);
    Target sooner = nursery.book.get<Target>(target);
    sooner.due = dated(2027, 9, 1);
    REQUIRE(nursery.book.perform(Command{Put<Target>{sooner}}));
    const TargetNeed need = onlyNeed(nursery, dated(2027, 8, 2), 28);
    CHECK(need.state == NeedState::TooLate);
    CHECK(need.why.text().find("2027-06-07") != std::string::npos); // 86 days before
}

TEST_CASE("A target whose season comes later is put off until then, in words") {
    SeasonBook nursery;
    nursery.want(40, dated(2027, 12, 1));
    const TargetNeed need = onlyNeed(nursery, dated(2027, 4, 1), 28);
    CHECK(need.state == NeedState::Later);
    CHECK(need.why.text().find("2027-07-15") != std::string::npos);
}

TEST_CASE("A target of a later season knows its way already, and the month is not to strike it") {
    SeasonBook nursery;
    nursery.want(40, dated(2027, 12, 1));
    const TargetNeed need = onlyNeed(nursery, dated(2027, 4, 1), 28);
    CHECK_FALSE(need.way);
    REQUIRE(need.ahead);
    CHECK(need.anyWay() == &*need.ahead);
    CHECK(need.ahead->window.first == dated(2027, 7, 15));
    CHECK(need.ahead->window.last == dated(2027, 12, 1) - 86);
    // As many as in its season.
    CHECK(need.ahead->cuttings == onlyNeed(nursery, dated(2027, 8, 2), 28).way->cuttings);
    const MonthProblem month = monthProblem(nursery.book, builtIn(), {dated(2027, 4, 1), 28, 900});
    CHECK(month.parts.empty());
    CHECK(month.problem.batches.empty());
    CHECK(month.shortfalls.empty());
    CHECK(month.cuttingsWanted() == 0);
}

TEST_CASE("A later season that leaves a few days only is better than none") {
    SeasonBook nursery;
    nursery.want(40, dated(2027, 7, 18) + 86);
    const TargetNeed need = onlyNeed(nursery, dated(2027, 4, 1), 28);
    CHECK(need.state == NeedState::Later);
    REQUIRE(need.ahead);
    CHECK(need.ahead->window.first == dated(2027, 7, 15));
    CHECK(need.ahead->window.last == dated(2027, 7, 18));
}

TEST_CASE("Where no season meets the date the next one is told, and from when its plants are ready") {
    SeasonBook nursery;
    nursery.want(40, dated(2028, 2, 1));
    const TargetNeed need = onlyNeed(nursery, dated(2027, 11, 1), 28);
    CHECK(need.state == NeedState::TooLate);
    CHECK_FALSE(need.way);
    REQUIRE(need.ahead);
    CHECK(need.ahead->late);
    CHECK(need.ahead->window.first == dated(2028, 7, 15));
    CHECK(need.ahead->window.last == dated(2028, 9, 30));
    CHECK(need.ahead->cuttings > 40);
    // 86 days before its date, which is still to come.
    CHECK(need.why.text().find("would have to be struck by 2027-11-07") != std::string::npos);
    CHECK(need.why.text().find("give it a later date, 2028-10-09 at the earliest") != std::string::npos);
    CHECK(monthProblem(nursery.book, builtIn(), {dated(2027, 11, 1), 28, 900}).problem.batches.empty());
}

TEST_CASE("A way in the days asked for tells how far its season reaches beyond them") {
    SeasonBook nursery;
    nursery.want(40, dated(2027, 12, 20));
    const TargetNeed need = onlyNeed(nursery, dated(2027, 8, 2), 28);
    REQUIRE(need.way);
    CHECK(need.way->window.last == dated(2027, 8, 29));
    CHECK(need.way->whole.first == dated(2027, 8, 2));
    CHECK(need.way->whole.last == dated(2027, 12, 20) - 86);
}

TEST_CASE("Batches that stand cover a target by what they will surely give") {
    SeasonBook nursery;
    const TargetId target = nursery.want(40, dated(2027, 12, 1));
    nursery.strike(dated(2027, 7, 20), 64, 80, target);
    const TargetNeed need = onlyNeed(nursery, dated(2027, 8, 2), 28);
    const int expected = need.expected;
    const auto share = rooting::takePrior(warmbench::testing::semiRipe(nursery.taxon))->share;
    CHECK(rooting::betaBinomialAtLeast(expected - 1, 64, share) >= 0.9);
    CHECK(rooting::betaBinomialAtLeast(expected + 2, 64, share) < 0.9);
    CHECK(need.missing == std::max(0, 40 - expected));
    nursery.strike(dated(2027, 7, 21), 64, 80, target);
    CHECK(onlyNeed(nursery, dated(2027, 8, 2), 28).state == NeedState::Covered);
}

TEST_CASE("A taxon that nobody knows how to strike says so; with a wood the general recipe is used") {
    SeasonBook nursery;
    const TaxonId unknown = nursery.add(Taxon{{}, "Incognita dubia", {}, {}, ""});
    nursery.add(Target{{}, "X1", unknown, 20, dated(2028, 6, 1), Money{100}, {}, ""});
    const TargetNeed none = onlyNeed(nursery, dated(2027, 8, 2), 28);
    CHECK(none.state == NeedState::NoRecipe);
    CHECK_FALSE(none.anyWay());
    nursery.add(Target{{}, "X2", unknown, 20, dated(2028, 1, 20), Money{100}, Wood::SemiRipe, ""});
    const auto needs = targetNeeds(nursery.book, builtIn(), {dated(2027, 8, 2), 28, 900});
    REQUIRE(needs.size() == 2);
    REQUIRE(needs.front().way);
    CHECK(needs.front().way->recipe.growOnDays.source == std::string(fromMemory));
}

TEST_CASE("In the southern hemisphere the season is half a year away") {
    SeasonBook nursery;
    Nursery south = nursery.book.nursery();
    south.latitude = Latitude{-340};
    REQUIRE(nursery.book.perform(Command{Put<Nursery>{south}}));
    nursery.want(40, dated(2027, 7, 1));
    CHECK(onlyNeed(nursery, dated(2027, 2, 1), 28).state == NeedState::Now);
}

TEST_CASE(
    "Of several woods the one that the stock gives is taken, though another is in season and roots better") {
    SeasonBook nursery;
    Recipe soft = semiRipe(nursery.taxon);
    soft.wood = Wood::Softwood;
    soft.name = "soft";
    soft.season.value = Season{{5, 1}, {7, 10}};
    soft.takePercent.value = {90, 95};
    nursery.add(semiRipe(nursery.taxon));
    nursery.add(soft);
    const TargetId id = nursery.want(40, on(12, 31));
    const auto needIn = [&] {
        const PlanRequest request{on(6, 1), 28, 900, {}};
        return targetNeed(nursery.book, builtIn(), request, forecastFor(nursery.book, request), id);
    };
    // The stock gives semi-ripe cuttings alone.
    TargetNeed need = needIn();
    CHECK(need.state == NeedState::Later);
    REQUIRE(need.anyWay());
    CHECK(need.anyWay()->recipe.wood == Wood::SemiRipe);

    Stock both = nursery.book.get<Stock>(nursery.stock);
    both.flushes.push_back(both.flushes.front());
    both.flushes.back().wood = Wood::Softwood;
    REQUIRE(nursery.book.perform({Put<Stock>{both}}));
    need = needIn();
    CHECK(need.state == NeedState::Now);
    CHECK(need.anyWay()->recipe.wood == Wood::Softwood);

    // With no stock at all, the wood in season is as good as any.
    REQUIRE(nursery.book.perform({Remove<Stock>{nursery.stock}}));
    CHECK(needIn().anyWay()->recipe.wood == Wood::Softwood);
}
