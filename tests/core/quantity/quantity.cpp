#include "core/quantity/quantity.h"
#include "core/quantity/decimal.h"

#include <catch2/catch.hpp>

#include <limits>

using namespace warmbench;
using namespace warmbench::literals;

TEST_CASE("Amounts add exactly and keep their kind") {
    CHECK(18.0_degC + 0.1_degC == Celsius{181});
    CHECK((0.1_money + 0.2_money).parts == 30);
    CHECK(Celsius::fromUnits(-0.05).parts == -1); // halves round away from zero
    CHECK(Litres::fromUnits(1.25).parts == 1250);
    CHECK(3 * 130_mm == 390_mm);
    CHECK((21_degC).units() == Approx(21.0));
}

TEST_CASE("Decimals are written without trailing zeros") {
    CHECK(decimalText(13850, 3) == "13.85");
    CHECK(decimalText(-5, 2) == "-0.05");
    CHECK(decimalText(0, 3) == "0");
    CHECK(decimalText(1200, 2) == "12");
    CHECK(decimalText(std::numeric_limits<std::int64_t>::min(), 0) == "-9223372036854775808");
}
