#include "core/book/weaned.h"

#include "core/book/progress.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

std::vector<StayId> byPlan(const SmallBook& small, const char* on) {
    std::vector<StayId> ids;
    for (const Stay* stay : weanedByPlan(small.book, small.struck, day(on))) ids.push_back(stay->id);
    return ids;
}

/// The stay in which the struck batch is grown on after its weaning; its id.
StayId growOn(SmallBook& small) {
    Stay grown = small.book.get<Stay>(small.weaning);
    grown.id = {};
    grown.stage = Stage::GrowingOn;
    grown.from = grown.to;
    grown.to = grown.from + 30;
    perform(small.book, {AddStay{grown}});
    return small.book.all<Stay>().rbegin()->first;
}

} // namespace

TEST_CASE("From the plan's day on a batch is weaned by the plan, and roots, until somebody weans it") {
    SmallBook small = smallBook();
    CHECK(byPlan(small, "2027-03-31").empty());
    CHECK(byPlan(small, "2027-04-01") == std::vector{small.weaning});
    CHECK(isRooting(small.book, small.struck, day("2027-03-31")));
    CHECK(isRooting(small.book, small.struck, day("2027-04-14")));
    perform(small.book, {WeanStay{small.weaning, day("2027-04-01")}});
    CHECK(byPlan(small, "2027-04-14").empty());
    CHECK(isRooting(small.book, small.struck, day("2027-03-31")));
    CHECK_FALSE(isRooting(small.book, small.struck, day("2027-04-01")));
}

TEST_CASE("What is grown on after a weaning of the plan alone was not weaned either") {
    SmallBook small = smallBook();
    const StayId grown = growOn(small);
    CHECK(byPlan(small, "2027-04-20") == std::vector{small.weaning, grown});
    CHECK(isRooting(small.book, small.struck, day("2027-04-20")));
    perform(small.book, {WeanStay{small.weaning, day("2027-04-01")}});
    CHECK(byPlan(small, "2027-04-20").empty());
    CHECK_FALSE(isRooting(small.book, small.struck, day("2027-04-20")));
}

TEST_CASE("What is grown on without weaning no longer roots, and neither does what was potted on in part") {
    SmallBook direct = smallBook();
    growOn(direct);
    perform(direct.book, {RemoveStay{direct.weaning}});
    CHECK(byPlan(direct, "2027-04-20").empty());
    CHECK(isRooting(direct.book, direct.struck, day("2027-04-14")));
    CHECK_FALSE(isRooting(direct.book, direct.struck, day("2027-04-15")));
    SmallBook potted = smallBook();
    perform(potted.book, {PotOn{potted.struck, day("2027-04-05"), {{1, 5, 0}}, ""}});
    CHECK_FALSE(byPlan(potted, "2027-04-04").empty());
    CHECK(byPlan(potted, "2027-04-05").empty());
    CHECK_FALSE(isRooting(potted.book, potted.struck, day("2027-04-05")));
}

TEST_CASE("Nothing of a batch that is only planned is weaned by the plan") {
    SmallBook small = smallBook();
    CHECK(weanedByPlan(small.book, small.planned, day("2027-06-01")).empty());
}

TEST_CASE("What the plan alone weaned goes on as it roots up to today, and as planned from then on") {
    SmallBook small = smallBook();
    const auto progress = [&](const char* on, std::optional<Day> today) {
        return progressOn(small.book, small.book.get<Stay>(small.weaning), day(on), today);
    };
    CHECK(progress("2027-04-05", day("2027-04-05")) == Progress::Struck);
    perform(small.book, {RecordCheck{{{}, small.struck, 1, day("2027-03-30"), 5, 5, 0, 0, 0, {}, ""}}});
    CHECK(progress("2027-04-05", day("2027-04-05")) == Progress::Rooted);
    CHECK(progress("2027-04-05", day("2027-04-04")) == Progress::Weaning);
    CHECK(progress("2027-04-05", std::nullopt) == Progress::Weaning);
    perform(small.book, {WeanStay{small.weaning, day("2027-04-01")}});
    CHECK(progress("2027-04-05", day("2027-04-05")) == Progress::Weaning);
}
