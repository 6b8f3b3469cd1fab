#include "core/crop/library/printed_amount.h"

#include "core/crop/recipe_figures.h"

#include <catch2/catch.hpp>

using namespace warmbench;

namespace {

std::string mediumOf(std::string_view text) {
    const auto medium = mediumIn(text);
    return medium ? valueText(*medium) : "nothing";
}

} // namespace

TEST_CASE("A medium is read in the ways in which publications print it") {
    CHECK(mediumOf("coir 1 : perlite 2 : bark 1") == "coir 1 : perlite 2 : bark 1");
    CHECK(mediumOf("75% perlite : 25% peat") == "perlite 3 : peat 1");
    CHECK(mediumOf("2 perlite : 1 peat") == "perlite 2 : peat 1");
    CHECK(mediumOf("peat:sand 1:2") == "peat 1 : sand 2");
    CHECK(mediumOf("perlite 100%") == "perlite 1");
    CHECK(mediumOf("vermiculite") == "vermiculite 1");
}

TEST_CASE("A medium that leaves components or parts open is not guessed") {
    for (const char* open : {"coarse sand or perlite", "perlite:cocopeat", "perlite/peat", "commercial mix",
                             "perlite, solution pH 4.5", "3 perlite : 1 peat or vermiculite",
                             "worm compost:peat:soil:perlite 1:1:1:1.5", "peat in 3x3x5 cm cells", "",
                             "forest soil:peat:FYM 1:1:1 best of ten", "sand:peat 1:2:3", "sand 0 : peat 1"})
        CHECK(mediumOf(open) == "nothing");
}

TEST_CASE("A take is one figure or two, and a bound is none") {
    CHECK(takeIn("85") == IntRange{85, 85});
    CHECK(takeIn("54.2-91.4") == IntRange{54, 91});
    CHECK(takeIn("0-100") == IntRange{0, 100});
    for (const char* none : {"", ">50 (rejuvenated)", "<50", ">=80", "90-80", "101", "-5", "about 60"})
        CHECK_FALSE(takeIn(none));
}
