#include "core/season/dip.h"

#include <catch2/catch.hpp>

using namespace warmbench::season;

TEST_CASE("The strength of a dip is read from a recipe's words, one figure or a range") {
    const auto range = dipStrength("IBA 500-1000 ppm, quick dip");
    REQUIRE(range);
    CHECK(range->lowPpm == 500);
    CHECK(range->highPpm == 1000);
    const auto one = dipStrength("IBA 4000 mg/L 5 s");
    REQUIRE(one);
    CHECK(one->lowPpm == 4000);
    CHECK(one->highPpm == 4000);
    CHECK(dipStrength("IBA 5000-10000 ppm, quick dip")->highPpm == concentratePpm);
}

TEST_CASE(
    "No dip is made of powder, of what names no strength or several, nor stronger than the concentrate") {
    for (const char* words :
         {"IBA 1000-3000 ppm, powder", "IBA 0.8% talc (8000 ppm)", "IBA 0.1% 10 s", "rooting hormone", "none",
          "", "IBA 2 g/L 5-6 s to 100 mg/L 29 min", "IBA 1000 ppm + NAA 500 ppm", "K-IBA 12000 ppm",
          "IBA 0 ppm", "IBA 4 mM", "IBA 1000-500 ppm"}) {
        INFO(words);
        CHECK_FALSE(dipStrength(words));
    }
}

TEST_CASE("What of a concentrate makes 100 ml of a dip keeps volume times strength") {
    CHECK(concentrateMillilitres(500) == Approx(5));
    CHECK(concentrateMillilitres(concentratePpm) == Approx(100));
    CHECK(concentrateMillilitres(1000, 20'000) == Approx(5));
}
