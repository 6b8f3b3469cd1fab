#include "core/quantity/day.h"

#include <catch2/catch.hpp>

using warmbench::Day;
using warmbench::MonthDay;

TEST_CASE("A day is read from its ISO date and from nothing else") {
    REQUIRE(Day::fromIso("2027-02-01"));
    CHECK(Day::fromIso("2027-02-01")->iso() == "2027-02-01");
    CHECK(Day::fromIso("2028-02-29"));
    for (const char* wrong : {"2027-02-29", "2027-13-01", "2027-2-1", "27-02-01", "2027-02-01 ", "",
                              "2027/02/01", "0000-01-01", "2027-00-10", "2027-01-00", "+027-01-01"})
        CHECK_FALSE(Day::fromIso(wrong));
}

TEST_CASE("Days count, and know their place in the year and the week") {
    const Day day = *Day::make(2027, 2, 17);
    CHECK(day.dayOfYear() == 48);
    CHECK(day.weekday() == 2); // 17 February 2027 is a Wednesday
    CHECK((day + 14).iso() == "2027-03-03");
    CHECK(*Day::make(2028, 3, 1) - *Day::make(2028, 2, 1) == 29);
    CHECK(Day::make(2028, 12, 31)->dayOfYear() == 366);
    CHECK(Day::fromNumber(0).iso() == "1970-01-01");
    CHECK(Day::last().iso() == "9999-12-31");
}

TEST_CASE("29 February is the 28th in a year without one") {
    const auto leap = MonthDay::fromIso("02-29");
    REQUIRE(leap);
    CHECK(leap->in(2027).iso() == "2027-02-28");
    CHECK(leap->in(2028).iso() == "2028-02-29");
    CHECK_FALSE(MonthDay::fromIso("02-30"));
    CHECK_FALSE(MonthDay::fromIso("2-3"));
}
