#include "core/exchange/logger/clock.h"

#include "tests/core/exchange/logger/moment.h"

#include <catch2/catch.hpp>

using namespace warmbench::exchange;

namespace {

const Clock berlin{60, SummerTime::European};
const Clock newYork{-300, SummerTime::American};

} // namespace

TEST_CASE("A clock without summer time is its offset ahead of UTC all year") {
    const Clock clock{60, SummerTime::None};
    CHECK(clock.utc(at("2027-07-01T12:00"), {}) == at("2027-07-01T11:00"));
    CHECK(clock.utc(at("2027-01-01T12:00"), {}) == at("2027-01-01T11:00"));
}

TEST_CASE("European summer time runs from the last Sunday of March to the last of October") {
    CHECK(berlin.utc(at("2027-03-28T01:59"), {}) == at("2027-03-28T00:59"));
    CHECK(berlin.utc(at("2027-03-28T03:00"), {}) == at("2027-03-28T01:00"));
    CHECK(berlin.utc(at("2027-07-01T12:00"), {}) == at("2027-07-01T10:00"));
    CHECK(berlin.utc(at("2027-10-31T03:00"), {}) == at("2027-10-31T02:00"));
    CHECK(berlin.utc(at("2026-10-25T01:59"), {}) == at("2026-10-24T23:59"));
}

TEST_CASE("The hour that comes twice is told by the reading before it") {
    const std::int64_t first = berlin.utc(at("2027-10-31T02:30"), at("2027-10-31T00:00"));
    CHECK(first == at("2027-10-31T00:30"));
    const std::int64_t second = berlin.utc(at("2027-10-31T02:00"), first);
    CHECK(second == at("2027-10-31T01:00"));
}

TEST_CASE("American summer time runs from the second Sunday of March to the first of November") {
    CHECK(newYork.utc(at("2027-03-14T01:59"), {}) == at("2027-03-14T06:59"));
    CHECK(newYork.utc(at("2027-03-14T03:00"), {}) == at("2027-03-14T07:00"));
    CHECK(newYork.utc(at("2027-11-07T00:59"), {}) == at("2027-11-07T04:59"));
    CHECK(newYork.utc(at("2027-11-07T02:00"), {}) == at("2027-11-07T07:00"));
}
