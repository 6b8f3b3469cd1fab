#include "core/climate/vapour.h"

#include "tests/support/within.h"

using namespace warmbench::climate;
using warmbench::tests::within;

TEST_CASE("Saturated air has no deficit and its dew point is its temperature") {
    for (const double celsius : {-20.0, 0.0, 18.0, 35.0}) {
        const double saturation = saturationPressure(celsius);
        CHECK(deficit(saturation, pressureFromHumidity(celsius, 100)) == within(0, 1e-15));
        CHECK(dewPoint(saturation).value() == within(celsius, 1e-10));
    }
}

TEST_CASE("Air without vapour has no dew point") {
    CHECK_FALSE(dewPoint(0));
    CHECK_FALSE(dewPoint(-0.1));
}

TEST_CASE("Dew falls on a leaf that is colder than the dew point") {
    CHECK(leafDeficit(10, pressureFromHumidity(20, 90)) < 0);
    CHECK(leafDeficit(19, pressureFromHumidity(20, 90)) > 0);
}

TEST_CASE("A drier wet bulb means less vapour, and less still in still air") {
    const double pressure = atmosphericPressure(0);
    CHECK(pressure == within(101.3, 1e-12));
    CHECK(pressureFromPsychrometer(20, 20, Ventilation::Forced, pressure) == saturationPressure(20));
    CHECK(pressureFromPsychrometer(20, 15, Ventilation::Natural, pressure) <
          pressureFromPsychrometer(20, 15, Ventilation::Forced, pressure));
    CHECK(pressureFromPsychrometer(20, 15, Ventilation::Indoor, pressure) <
          pressureFromPsychrometer(20, 15, Ventilation::Natural, pressure));
}
