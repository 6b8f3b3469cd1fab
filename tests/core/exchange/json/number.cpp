#include "core/exchange/json/number.h"
#include "core/quantity/decimal.h"

#include <catch2/catch.hpp>

#include <random>

using warmbench::decimalText;
using warmbench::json::Decimal;
using Fault = Decimal::Fault;

namespace {

std::variant<std::int64_t, Fault> parts(const std::string& source, int places) {
    const auto decimal = Decimal::read(source);
    REQUIRE(decimal);
    return decimal->parts(places);
}

/// One of the many ways to write a count of 10^-places: with zeros behind, shifted by an exponent.
std::string spelled(std::int64_t count, int places, std::mt19937_64& random) {
    std::string digits = std::to_string(count < 0 ? -count : count);
    int exponent = -places;
    const auto zeros = random() % 4;
    digits.append(zeros, '0');
    exponent -= static_cast<int>(zeros);
    // The point after the first `whole` digits.
    const std::size_t whole = 1 + random() % digits.size();
    std::string fraction = digits.substr(whole);
    exponent += static_cast<int>(fraction.size());
    std::string text = digits.substr(0, whole);
    if (whole > 1 && text.front() == '0') text = "0";
    if (!fraction.empty()) text += "." + fraction;
    if (count < 0) text.insert(0, "-");
    if (exponent != 0 || random() % 2 == 0)
        text += (random() % 2 == 0 ? "e" : "E") + std::string(exponent >= 0 && random() % 2 == 0 ? "+" : "") +
                std::to_string(exponent);
    return text;
}

} // namespace

TEST_CASE("A number is judged by its value, however it is written") {
    for (const char* eighteen :
         {"18", "18.0", "18.00", "1.8e1", "1.8E+1", "180e-1", "0.18e2", "18.000000000000000"})
        CHECK(parts(eighteen, 1) == std::variant<std::int64_t, Fault>{180});
    for (const char* zero :
         {"0", "-0", "0.000", "-0.0e5", "0e999999999999999999999", "0e-999999999999999999999"})
        CHECK(parts(zero, 0) == std::variant<std::int64_t, Fault>{0});
    CHECK(parts("-12.5", 1) == std::variant<std::int64_t, Fault>{-125});
    CHECK(parts("999999999999.99", 2) == std::variant<std::int64_t, Fault>{99999999999999});
}

TEST_CASE("More decimals than there are places are refused, zeros behind are not") {
    CHECK(parts("18.25", 1) == std::variant<std::int64_t, Fault>{Fault::TooManyDecimals});
    CHECK(parts("0.5", 0) == std::variant<std::int64_t, Fault>{Fault::TooManyDecimals});
    CHECK(parts("1e-999999999999999999999", 2) == std::variant<std::int64_t, Fault>{Fault::TooManyDecimals});
    CHECK(parts("18.2500", 2) == std::variant<std::int64_t, Fault>{1825});
    CHECK(parts("1" + std::string(500, '0') + "e-500", 0) == std::variant<std::int64_t, Fault>{1});
}

TEST_CASE("Numbers of 1e12 and more are too large, beyond 1e300 not finite") {
    CHECK(parts("999999999999", 0) == std::variant<std::int64_t, Fault>{999999999999});
    CHECK(parts("1e12", 0) == std::variant<std::int64_t, Fault>{Fault::TooLarge});
    CHECK(parts("-1000000000000", 3) == std::variant<std::int64_t, Fault>{Fault::TooLarge});
    CHECK(parts("1e300", 0) == std::variant<std::int64_t, Fault>{Fault::TooLarge});
    CHECK(parts("1e301", 0) == std::variant<std::int64_t, Fault>{Fault::NotFinite});
    CHECK(parts("1e999999999999999999999", 0) == std::variant<std::int64_t, Fault>{Fault::NotFinite});
    CHECK_FALSE(Decimal::read("NaN"));
    CHECK_FALSE(Decimal::read("Infinity"));
    CHECK_FALSE(Decimal::read("-Infinity"));
}

TEST_CASE("Any decimal within the limits is read to the exact integer, in any spelling") {
    std::mt19937_64 random{20270201};
    for (int i = 0; i < 20'000; ++i) {
        const int places = static_cast<int>(random() % 4);
        const int length = 1 + static_cast<int>(random() % static_cast<unsigned>(12 + places));
        std::int64_t count = 0;
        for (int digit = 0; digit < length; ++digit)
            count = count * 10 + static_cast<std::int64_t>(random() % 10);
        if (random() % 2 == 0) count = -count;
        const std::string source = spelled(count, places, random);
        INFO(source << " for " << decimalText(count, places));
        CHECK(parts(source, places) == std::variant<std::int64_t, Fault>{count});
        CHECK(parts(decimalText(count, places), places) == std::variant<std::int64_t, Fault>{count});
        CHECK(*Decimal::read(source) == *Decimal::read(decimalText(count, places)));
    }
}

TEST_CASE("Decimals are ordered by value") {
    const char* rising[] = {"-1e400", "-12",  "-11.9999999999999999999999", "-1e-400", "0",   "1e-400",
                            "0.5",    "11.8", "11.80000000000000000000001", "12",      "1e2", "1e400"};
    for (std::size_t i = 0; i < std::size(rising); ++i)
        for (std::size_t k = 0; k < std::size(rising); ++k) {
            INFO(rising[i] << " and " << rising[k]);
            CHECK((*Decimal::read(rising[i]) < *Decimal::read(rising[k])) == (i < k));
        }
    CHECK(*Decimal::read("1.20e1") == *Decimal::read("12"));
}

TEST_CASE("Rounding down goes towards minus infinity") {
    const auto down = [](const char* source) { return Decimal::read(source)->partsRoundedDown(3); };
    CHECK(down("1.2349") == std::variant<std::int64_t, Fault>{1234});
    CHECK(down("-1.2341") == std::variant<std::int64_t, Fault>{-1235});
    CHECK(down("-1.234") == std::variant<std::int64_t, Fault>{-1234});
    CHECK(down("1e-999999999999") == std::variant<std::int64_t, Fault>{0});
    CHECK(down("-1e-999999999999") == std::variant<std::int64_t, Fault>{-1});
    CHECK(down("1e12") == std::variant<std::int64_t, Fault>{Fault::TooLarge});
}
