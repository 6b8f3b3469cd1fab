#include "core/climate/heat.h"

#include <catch2/catch.hpp>

using namespace warmbench::climate;

TEST_CASE("Heat flows outwards in watts, and backwards when it is warmer outside") {
    CHECK(heatThrough(100, 6, 15, 0) == Approx(9000));
    CHECK(heatThrough(100, 6, 0, 15) == Approx(-9000));
    CHECK(energyForHeat(-9000, 24) == 0);
    CHECK(energyForHeat(9000, 24, 0.9) == Approx(240));
}

TEST_CASE("A mat is on for the share of the time that its bench needs") {
    const MatLoad load = matLoad({6, 160, 8}, 22, 12);
    CHECK(load.wattsNeeded == Approx(480));
    CHECK(load.duty == Approx(0.5));
    CHECK(load.holds);
    CHECK(matEnergy(load, 24) == Approx(11.52));
}

TEST_CASE("A mat that is too weak is always on, one in warmer air never") {
    const MatLoad weak = matLoad({4, 100, 12}, 24, 8);
    CHECK_FALSE(weak.holds);
    CHECK(weak.duty == 1);
    const MatLoad idle = matLoad({3, 140, 7.5}, 20, 21);
    CHECK(idle.holds);
    CHECK(idle.wattsNeeded == 0);
    CHECK(matEnergy(idle, 24) == 0);
}
