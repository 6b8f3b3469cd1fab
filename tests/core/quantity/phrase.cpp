#include "core/quantity/result.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::literals;

TEST_CASE("A phrase is its pattern in English with its arguments in their places") {
    const Day day = *Day::make(2027, 2, 4);
    CHECK(phrase("%1 stands in %2", "27-048-A", std::string("Bench 1")).text() ==
          "27-048-A stands in Bench 1");
    CHECK(phrase("%2 before %1", 3, day).text() == "2027-02-04 before 3");
    CHECK(phrase("set to %1 and %1", 18.5_degC).text() == "set to 18.5 °C and 18.5 °C");
    CHECK(phrase("%1 of 100 %", std::int64_t{-12}).text() == "-12 of 100 %");
}

TEST_CASE("Phrases stand in phrases, one or several") {
    CHECK(phrase("add %1 %2", Phrase("zone"), "A").text() == "add zone A");
    CHECK(phrase("under %1", std::vector<Phrase>{"mist", phrase("fog of %1", 2)}).text() ==
          "under mist, fog of 2");
}

TEST_CASE("What an argument says is never taken for a place, and a place without an argument stays") {
    CHECK(phrase("%1 and %2", "100%2", "b").text() == "100%2 and b");
    CHECK(phrase("%1 and %2 %", "a").text() == "a and %2 %");
    CHECK(Phrase("as it is: 5 %1").text() == "as it is: 5 %1");
}

TEST_CASE("A refusal names its place before what is wrong") {
    CHECK(Refusal{"zone A", phrase("it leaves the %1", "bench")}.text() == "zone A: it leaves the bench");
    CHECK(Refusal{"", "nothing is there"}.text() == "nothing is there");
    CHECK(Refusal{"a", "b"} == Refusal{"a", phrase("%1", "b")});
    CHECK_FALSE(Refusal{"a", "b"} == Refusal{"a", "c"});
}
