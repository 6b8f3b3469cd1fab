#include "core/exchange/csv/moment.h"

#include <catch2/catch.hpp>

using warmbench::exchange::momentFromIso;

namespace {

double secondsBetween(const char* one, const char* other) {
    const auto from = momentFromIso(one);
    const auto to = momentFromIso(other);
    REQUIRE(from);
    REQUIRE(to);
    return static_cast<double>(to->microseconds - from->microseconds) / 1e6;
}

} // namespace

TEST_CASE("Moments are read with T or a blank, with or without seconds and offset") {
    CHECK(momentFromIso("1970-01-02")->microseconds == 86'400'000'000);
    CHECK(secondsBetween("2027-03-01T06:30", "2027-03-01 06:30:15.25") == 15.25);
    CHECK(secondsBetween("2027-03-01T06:30:00,5", "2027-03-01T24:00") == 17.5 * 3600 - 0.5);
    CHECK(secondsBetween("2027-03-01T06:30Z", "2027-03-01T06:30+01:00") == -3600);
    CHECK(secondsBetween("2027-03-01T06:30Z", "2027-03-01T06:30-0330") == 3.5 * 3600);
    CHECK(secondsBetween("2028-02-28T00:00+01", "2028-03-01T00:00+01") == 2 * 86400);
    CHECK(momentFromIso("2027-03-01T06:30Z")->offset);
    CHECK_FALSE(momentFromIso("2027-03-01T06:30")->offset);
}

TEST_CASE("What is no ISO moment is not read") {
    for (const char* wrong :
         {"", "2027-02-29T00:00", "2027-03-01T", "2027-03-01T6:30", "2027-03-01T06:60", "2027-03-01T24:01",
          "2027-03-01T06:30:60", "2027-03-01T06:30:15.", "2027-03-01T06:30+1", "2027-03-01T06:30 +01:00",
          "2027-03-01T06:30ZZ", "01/03/2027 06:30", "2027-03-01T06", "2027-03-01T06:30+01:"})
        CHECK_FALSE(momentFromIso(wrong));
}
