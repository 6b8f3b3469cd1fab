#include "core/climate/thermal_time.h"

#include "tests/support/check_table.h"
#include "tests/support/within.h"

#include <catch2/catch.hpp>

using namespace warmbench::climate;
using namespace warmbench::tests;

namespace {

Thresholds thresholdsOf(const CheckRow& row) {
    Thresholds thresholds{row.number("base"), {}};
    if (!row.absent("cap")) thresholds.cap = row.number("cap");
    return thresholds;
}

} // namespace

TEST_CASE("C04 daily degree-days by three rules (McMaster and Wilhelm 1997; extension columns for rule B)") {
    const std::pair<DailyRule, const char*> rules[] = {
        {DailyRule::MeanThenClip, "A"}, {DailyRule::ClipThenMean, "B"}, {DailyRule::CapThenMean, "C"}};
    const std::map<std::string, std::string> full{
        {"A", "A_mean_then_clip"}, {"B", "B_clip_then_mean"}, {"C", "C_cap_max_then_mean"}};
    for (const auto& [series, rows] : byText(checkRowsWithExpected("C04_thermal_daily"), "series"))
        for (const auto& [rule, letter] : rules) {
            double sum = 0;
            for (const CheckRow& row : rows) {
                INFO(series << " day " << row.text("day") << " rule " << letter);
                const double found =
                    dailyDegreeDays(row.number("tmax"), row.number("tmin"), thresholdsOf(row), rule);
                sum += found;
                CHECK(found == within(row.number(full.at(letter)), 1e-9));
                CHECK(sum == within(row.number(std::string{letter} + "_cum"), 1e-9));
            }
        }
}

TEST_CASE("Degree-days of a day that others print (status: published)") {
    const auto rule = DailyRule::MeanThenClip;
    CHECK(dailyDegreeDays(64, 64, {53, {}}, rule) == 11); // University of California IPM, degree-day page
    CHECK(dailyDegreeDays(75, 75, {65, {}}, rule) == 10); // Midwestern Regional Climate Center
    CHECK(dailyDegreeDays(39, 39, {40, {}}, rule) == 0);  // learner.org, floored at 0
}

TEST_CASE("Met Eireann's four cases about a base of 10 (formulas published, values derived)") {
    const auto degreeDays = [](double highest, double lowest) {
        return dailyDegreeDays(highest, lowest, {10, {}}, DailyRule::FourCases);
    };
    CHECK(degreeDays(20, 12) == Approx(6));
    CHECK(degreeDays(8, 2) == 0);
    CHECK(degreeDays(18, 6) == Approx(3));
    CHECK(degreeDays(14, 4) == Approx(1));
    CHECK(degreeDays(15, 5) == Approx(1.25)); // the third and the fourth case meet at a mean of the base
    CHECK(degreeDays(15, 5 + 1e-9) == Approx(1.25));
}

TEST_CASE("C05 degree-days under straight lines between readings (hand-computed, and R)") {
    const auto expected = byText(checkRows("C05_thermal_sampled_expected.csv"), "series");
    const auto given = byText(checkRows("C05_thermal_sampled_in.csv"), "series");
    REQUIRE(given.size() == expected.size());
    for (const auto& [series, rows] : given) {
        INFO(series);
        const CheckRow& answer = expected.at(series).front();
        std::vector<Reading> readings;
        for (const CheckRow& row : rows) readings.push_back({row.number("hour"), row.number("t_c")});
        REQUIRE(static_cast<double>(readings.size()) == answer.number("n"));
        const ThermalTime found = thermalTime(readings, thresholdsOf(rows.front()));
        CHECK(found.total() == within(answer.number("exact_linear_dd"), 1e-9));
    }
}
