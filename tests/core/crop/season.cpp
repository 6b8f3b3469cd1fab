#include "core/crop/season.h"

#include <catch2/catch.hpp>

using namespace warmbench;

namespace {

Season season(const char* from, const char* to) {
    return {*MonthDay::fromIso(from), *MonthDay::fromIso(to)};
}

std::vector<StrikeWindow> windows(const Season& of, const char* from, const char* to) {
    return strikeWindows(of, *Day::fromIso(from), *Day::fromIso(to));
}

StrikeWindow window(const char* first, const char* last) {
    return {*Day::fromIso(first), *Day::fromIso(last)};
}

} // namespace

TEST_CASE("North of the equator and with no shift a season is as it was given") {
    CHECK(seasonFor(season("07-20", "09-15"), 52.1, 0) == season("07-20", "09-15"));
    CHECK(seasonFor(season("07-20", "09-15"), 0, 0) == season("07-20", "09-15"));
    CHECK(seasonFor(season("02-29", "03-05"), 40, 0) == season("02-29", "03-05"));
}

TEST_CASE("South of the equator a season is half a year away") {
    CHECK(seasonFor(season("07-20", "09-15"), -43.5, 0) == season("01-20", "03-15"));
    CHECK(seasonFor(season("11-01", "02-20"), -0.1, 0) == season("05-01", "08-20"));
}

TEST_CASE("Half a year from the end of a month is the end of a month") {
    CHECK(halfAYearFrom({2, 28}).iso() == "08-31");
    CHECK(halfAYearFrom({2, 29}).iso() == "08-31");
    CHECK(halfAYearFrom({8, 31}).iso() == "02-29"); // the 28th in a year without it
    CHECK(halfAYearFrom({8, 30}).iso() == "02-29");
    CHECK(halfAYearFrom({8, 28}).iso() == "02-28");
    CHECK(halfAYearFrom({9, 30}).iso() == "03-31");
    CHECK(halfAYearFrom({12, 31}).iso() == "06-30");
    CHECK(halfAYearFrom({10, 30}).iso() == "04-30");
}

TEST_CASE("Twice half a year is the same day, but for the ends of February and August") {
    for (unsigned month = 1; month <= 12; ++month)
        for (unsigned day = 1; day <= 28; ++day) {
            if (day == 28 && (month == 2 || month == 8)) continue;
            CHECK(halfAYearFrom(halfAYearFrom({month, day})) == MonthDay{month, day});
        }
}

TEST_CASE("A place that is early or late shifts a season by days, over the new year too") {
    CHECK(seasonFor(season("07-20", "09-15"), 56, 10) == season("07-30", "09-25"));
    CHECK(seasonFor(season("07-20", "09-15"), 44, -20) == season("06-30", "08-26"));
    CHECK(seasonFor(season("12-25", "02-25"), 56, 7) == season("01-01", "03-04"));
    CHECK(seasonFor(season("01-03", "02-25"), 44, -5) == season("12-29", "02-20"));
    CHECK(seasonFor(season("12-25", "02-25"), -40, 7) == season("07-02", "09-01"));
    CHECK(seasonFor(season("07-20", "09-15"), 52, 365) == season("07-20", "09-15"));
}

TEST_CASE("The windows that touch a period come whole and in order") {
    CHECK(windows(season("05-15", "07-31"), "2027-07-31", "2029-05-15") ==
          std::vector{window("2027-05-15", "2027-07-31"), window("2028-05-15", "2028-07-31"),
                      window("2029-05-15", "2029-07-31")});
    CHECK(windows(season("05-15", "07-31"), "2027-08-01", "2028-05-14").empty());
    CHECK(windows(season("05-15", "07-31"), "2027-07-01", "2027-06-01").empty());
}

TEST_CASE("A season over the new year starts in the year before it ends") {
    CHECK(windows(season("11-01", "02-20"), "2027-02-20", "2027-02-20") ==
          std::vector{window("2026-11-01", "2027-02-20")});
    CHECK(windows(season("11-01", "02-20"), "2027-01-01", "2027-12-31") ==
          std::vector{window("2026-11-01", "2027-02-20"), window("2027-11-01", "2028-02-20")});
    CHECK(windows(season("11-01", "02-20"), "2027-02-21", "2027-10-31").empty());
}

TEST_CASE("A season that ends in February ends on the 29th in a leap year only where it says so") {
    CHECK(windows(season("11-01", "02-29"), "2028-01-01", "2028-01-01").front().last.iso() == "2028-02-29");
    CHECK(windows(season("11-01", "02-29"), "2027-01-01", "2027-01-01").front().last.iso() == "2027-02-28");
    CHECK(windows(season("11-01", "02-28"), "2028-01-01", "2028-01-01").front().last.iso() == "2028-02-28");
}

TEST_CASE("A window holds its first and its last day") {
    const StrikeWindow of = window("2027-05-15", "2027-07-31");
    CHECK(of.holds(of.first));
    CHECK(of.holds(of.last));
    CHECK_FALSE(of.holds(of.first - 1));
    CHECK_FALSE(of.holds(of.last + 1));
}
