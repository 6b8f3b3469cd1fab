#include "core/climate/vapour.h"

#include "tests/support/check_table.h"
#include "tests/support/within.h"

#include <catch2/catch.hpp>

using namespace warmbench::climate;
using namespace warmbench::tests;

namespace {

/// The answer to one row of C02, whose inputs stand in one cell.
double answer(const CheckRow& row) {
    const auto given = [&row](const char* name) { return row.part("inputs", name); };
    const std::string& quantity = row.text("quantity");
    if (quantity == "pressure_kpa") return atmosphericPressure(given("z_m"));
    if (quantity == "psychrometric_const") return psychrometricConstant(given("p_kpa"));
    if (quantity == "slope_kpa_per_c") return saturationSlope(given("t_c"));
    if (quantity == "mean_esat_kpa") return meanSaturationPressure(given("tmax_c"), given("tmin_c"));
    if (quantity == "ea_psychrometer_kpa") {
        REQUIRE(given("apsy") == psychrometerCoefficient(Ventilation::Forced));
        return pressureFromPsychrometer(given("tdry_c"), given("twet_c"), Ventilation::Forced,
                                        given("p_kpa"));
    }
    if (quantity == "ea_rhmean_kpa")
        return pressureFromMeanHumidity(given("tmax_c"), given("tmin_c"), given("rhmean"));
    if (quantity == "ea_rhmaxmin_kpa" || quantity == "vpd_kpa") {
        const double actual =
            pressureFromHumidities(given("tmax_c"), given("tmin_c"), given("rhmax"), given("rhmin"));
        if (quantity == "ea_rhmaxmin_kpa") return actual;
        return deficit(meanSaturationPressure(given("tmax_c"), given("tmin_c")), actual);
    }
    REQUIRE(quantity.starts_with("esat"));
    return saturationPressure(given("t_c"));
}

} // namespace

TEST_CASE("C01 saturation vapour pressure and its slope (FAO-56, Allen et al. 1998, eq. 11 and 13)") {
    for (const CheckRow& row : checkRowsWithExpected("C01_esat")) {
        const double celsius = row.number("t_c");
        INFO("at " << celsius);
        const double expected = row.number("esat_kpa");
        CHECK(saturationPressure(celsius) == withinPart(expected, 1e-10));
        CHECK(saturationPressure(celsius) == within(row.number("esat_kpa_3dp"), 5e-4));
        const double slope = row.number("slope_kpa_per_c");
        CHECK(saturationSlope(celsius) == withinPart(slope, 1e-10));
    }
}

TEST_CASE("C02 worked examples 2 to 6, 17 and 20 of FAO-56 (Allen et al. 1998)") {
    for (const CheckRow& row : checkRowsWithExpected("C02_fao_examples")) {
        INFO(row.text("case") << ' ' << row.text("quantity"));
        const double found = answer(row);
        const double computed = row.number("computed");
        CHECK(found == withinPart(computed, 1e-10));
        if (!row.absent("published")) CHECK(found == within(row.number("published"), row.number("pub_tol")));
    }
}

TEST_CASE("C03 vapour pressure deficit of air and leaf, and dew point (FAO-56 eq. 11 and its inverse)") {
    for (const CheckRow& row : checkRowsWithExpected("C03_vpd")) {
        INFO("air " << row.text("t_air_c") << " humidity " << row.text("rh_pct"));
        const auto near = [&row](const char* column, double floor) {
            const double expected = row.number(column);
            return within(expected, std::max(floor, 1e-9 * std::abs(expected)));
        };
        const double air = row.number("t_air_c");
        const double actual = pressureFromHumidity(air, row.number("rh_pct"));
        CHECK(saturationPressure(air) == near("esat_air_kpa", 0));
        CHECK(actual == near("ea_kpa", 0));
        CHECK(deficit(saturationPressure(air), actual) == near("vpd_air_kpa", 1e-12));
        CHECK(leafDeficit(row.number("t_leaf_c"), actual) == near("vpd_leaf_kpa", 1e-12));
        CHECK(dewPoint(actual).value() == near("t_dew_c", 1e-12));
    }
}

TEST_CASE("Vapour pressures printed by other programs that cite FAO-56 (status: published)") {
    // NCL function pages for 15.0 and 24.5 degrees; sirad for the day of 19.1 to 25.1.
    CHECK(saturationPressure(15.0) == within(1.70535, 5e-6));
    CHECK(saturationPressure(24.5) == within(3.07465, 5e-6));
    CHECK(pressureFromDewPoint(15.0) == within(1.70535, 5e-6));
    CHECK(meanSaturationPressure(25.1, 19.1) == within(2.698918, 5e-7));
}

TEST_CASE("Vapour pressures worked by hand from FAO-56 (status: derived)") {
    const std::pair<double, double> table[] = {{5, 0.872},  {10, 1.228}, {15, 1.705}, {18, 2.064},
                                               {20, 2.338}, {22, 2.644}, {24, 2.984}, {25, 3.168},
                                               {28, 3.780}, {30, 4.243}, {35, 5.623}, {40, 7.376}};
    for (const auto& [celsius, kpa] : table) CHECK(saturationPressure(celsius) == within(kpa, 5e-4));
    CHECK(meanSaturationPressure(24.5, 15) == within(2.389998, 5e-7));
    CHECK(pressureFromPsychrometer(25.6, 19.5, Ventilation::Forced, atmosphericPressure(1200)) ==
          within(1.91, 5e-3));
    const std::pair<std::pair<double, double>, double> air[] = {
        {{21, 95}, 0.124}, {{23, 90}, 0.281}, {{25, 85}, 0.475}};
    for (const auto& [state, kpa] : air)
        CHECK(deficit(saturationPressure(state.first), pressureFromHumidity(state.first, state.second)) ==
              within(kpa, 5e-4));
    CHECK(dewPoint(1.705).value() == within(14.997, 5e-4));
}
