#include "core/climate/excursion.h"

#include <catch2/catch.hpp>

using namespace warmbench::climate;

TEST_CASE("Stretches outside the range are told with how long and how far; short ones are not") {
    const std::vector<Reading> readings{{0, 18}, {1, 14}, {2, 13}, {3, 15.5}, {4, 18}, {5, 26},
                                        {6, 20}, {7, 25}, {8, 27}, {9, 26},   {10, 20}};
    const auto found = excursions(readings, 16, 24, 2);
    REQUIRE(found.size() == 2);
    CHECK(found[0].below);
    CHECK(found[0].from == 1);
    CHECK(found[0].hours() == 3);
    CHECK(found[0].extreme == 13);
    CHECK_FALSE(found[1].below);
    CHECK(found[1].from == 7);
    CHECK(found[1].hours() == 3);
    CHECK(found[1].extreme == 27);
    CHECK(excursions(readings, 10, 30, 0).empty());
    CHECK(excursions(readings, 16, 24, 1).size() == 3);
}

TEST_CASE("A gap ends a stretch, for nobody knows what was in it") {
    const std::vector<Reading> readings{{0, 10}, {2, 10}, {12, 10}, {14, 10}};
    const auto found = excursions(readings, 16, 24, 1);
    REQUIRE(found.size() == 2);
    CHECK(found[0].hours() == 2);
    CHECK(found[1].from == 12);
}

TEST_CASE("From too cold straight to too warm are two stretches") {
    const std::vector<Reading> readings{{0, 10}, {1, 30}, {2, 20}};
    const auto found = excursions(readings, 16, 24, 1);
    REQUIRE(found.size() == 2);
    CHECK(found[0].below);
    CHECK_FALSE(found[1].below);
}
