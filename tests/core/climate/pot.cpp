#include "core/climate/pot.h"

#include "tests/support/within.h"

using namespace warmbench::climate;
using warmbench::tests::within;

TEST_CASE("A pot is not filled beyond its brim, and an empty one holds nothing") {
    const PotSize pot{PotShape::Round, 130, 100, 115};
    CHECK(potLitres(pot, 500) == potLitres(pot));
    CHECK(potLitres(pot, 0) == 0);
    CHECK(potLitres({PotShape::Round, 130, 100, 0}) == 0);
}

TEST_CASE("A square cell of a decimetre holds a litre") {
    CHECK(potLitres({PotShape::Square, 100, 100, 100}) == within(1, 1e-15));
    CHECK(potLitres({PotShape::Square, 100, 100, 100}, 25) == within(0.25, 1e-15));
}
