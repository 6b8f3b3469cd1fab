#include "core/round/results.h"

#include "core/book/command.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::round;
using namespace warmbench::tests;

namespace {

Results read(const SmallBook& small, const std::string& rows) {
    const auto results = readResults(
        small.book, "results.csv",
        "batch,container,examined,rooted,callused,alive,dead,grade,day,note\n" + rows, day("2027-03-20"));
    REQUIRE(results);
    return *results;
}

} // namespace

TEST_CASE("A filled-in sheet becomes checks, in its order; rows left empty were not looked at") {
    const SmallBook small = smallBook();
    const Results found = read(small, "27-046-A,2,5,3,1,,1,4,,\"white tips, firm\"\n"
                                      "27-046-A,1,,,,,,,,\n"
                                      "27-046-A,3,4,0,,,,,2027-03-19,\n");
    CHECK(found.wrong.empty());
    CHECK(found.questions.empty());
    REQUIRE(found.checks.size() == 2);
    CHECK(found.checks[0] ==
          RootCheck{{}, small.struck, 2, day("2027-03-20"), 5, 3, 1, 0, 1, 4, "white tips, firm"});
    CHECK(found.checks[1] ==
          RootCheck{{}, small.struck, 3, day("2027-03-19"), 4, 0, 0, 4, 0, std::nullopt, ""});
}

TEST_CASE("Every wrong row is named, one by one") {
    const SmallBook small = smallBook();
    const Results found = read(small, "27-046-B,1,5,3,,,,,,\n"
                                      "27-046-A,1,5,6,,,,,,\n"
                                      "27-046-A,1,5,x,,,,,,\n"
                                      "27-046-A,1,5,3,,,,7,,\n"
                                      "27-046-A,1,5,3,1,3,,,,\n"
                                      "27-046-A,1,5,3,,,,,2027-03-21,\n"
                                      "27-046-A,4,5,3,,,,,,\n");
    CHECK(found.checks.size() == 1);
    REQUIRE(found.wrong.size() == 6);
    CHECK(found.wrong[0].text() ==
          "results.csv: line 2, batch: found '27-046-B', expected the code of a batch in this book");
    CHECK(found.wrong[1].text() == "results.csv: line 3: 27-046-A/01: 6 rooted, but only 5 examined");
    CHECK(found.wrong[2].text() == "results.csv: line 4, rooted: found 'x', expected a whole number");
    CHECK(found.wrong[3].text() ==
          "results.csv: line 5, grade: found '7', expected a root grade from 0 to 5");
    CHECK(found.wrong[4].text().find("line 6") != std::string::npos);
    CHECK(found.wrong[5].text().find("expected a day up to 2027-03-20") != std::string::npos);
}

TEST_CASE("A container that stands in the file twice, or whose roots vanish, is asked about") {
    SmallBook small = smallBook();
    perform(small.book,
            {RecordCheck{{{}, small.struck, 1, day("2027-03-15"), 5, 4, 0, 1, 0, std::nullopt, ""}}});
    const Results found = read(small, "27-046-A,1,5,1,,,,,,\n27-046-A,2,5,1,,,,,,\n27-046-A,2,5,2,,,,,,\n");
    CHECK(found.checks.size() == 3);
    REQUIRE(found.questions.size() == 2);
    CHECK(found.questions[0].find("have roots vanished?") != std::string::npos);
    CHECK(found.questions[1].find("line 4") != std::string::npos);
}
