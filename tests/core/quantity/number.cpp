#include "core/quantity/number.h"

#include <catch2/catch.hpp>

using namespace warmbench;

TEST_CASE("A number is read whole or not at all") {
    CHECK(*numberFromText("-3") == -3);
    CHECK(*numberFromText("+0.5") == 0.5);
    CHECK(*numberFromText(".5") == 0.5);
    CHECK(*numberFromText("2.5e-3") == 0.0025);
    for (const char* wrong :
         {"", " 1", "1 ", "1,5", "nan", "inf", "-inf", "0x10", "1e999", "+-1", "--1", "1.5x", "+"})
        CHECK_FALSE(numberFromText(wrong));
}

TEST_CASE("A whole number may be written with a point or an exponent") {
    CHECK(*wholeNumberFromText("12") == 12);
    CHECK(*wholeNumberFromText("12.0") == 12);
    CHECK(*wholeNumberFromText("1e5") == 100000);
    CHECK_FALSE(wholeNumberFromText("12.5"));
    CHECK_FALSE(wholeNumberFromText("1e17"));
}

TEST_CASE("A number's text reads back as the same number") {
    for (const double value : {0.1, 1.0 / 3, 1e-300, -123456.789, 5e22})
        CHECK(*numberFromText(numberText(value)) == value);
    CHECK(numberText(0.1) == "0.1");
    CHECK(numberText(1e6) == "1000000");
}
