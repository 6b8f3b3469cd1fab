#include "core/exchange/book/book_json.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using warmbench::tests::smallBook;

TEST_CASE("A book is written and read back the same, and writes the same text again") {
    const HouseBook book = smallBook().book;
    const std::string text = writeBook(book);
    const auto read = readBook(text);
    REQUIRE(read);
    CHECK(*read == book);
    CHECK(writeBook(*read) == text);
}

TEST_CASE("An empty book is written and read back the same") {
    const auto read = readBook(writeBook(HouseBook{}));
    REQUIRE(read);
    CHECK(*read == HouseBook{});
}

TEST_CASE("Quantities are written as exact decimals, days and words as people write them") {
    const std::string text = writeBook(smallBook().book);
    CHECK_THAT(text, Catch::Contains("\"root_zone_ideal_c\": {\"value\": 20.5, \"source\": "
                                     "\"common practice, no source\"}"));
    CHECK_THAT(text, Catch::Contains("\"volume_l\": 2.5"));
    CHECK_THAT(text, Catch::Contains("\"price_per_kilowatt_hour\": 0.3"));
    CHECK_THAT(text, Catch::Contains("\"from\": \"2027-02-15\""));
    CHECK_THAT(text, Catch::Contains("{\"from\": \"02-01\", \"to\": \"07-15\"}"));
    CHECK_THAT(text, Catch::Contains("\"cover\": \"mist\""));
    CHECK_THAT(text, Catch::Contains("\"blocked\": [{\"row\": 3, \"col\": 7}]"));
    CHECK_THAT(text, Catch::Contains("\"mat\": null"));
}

TEST_CASE(
    "The day from which a mat is out of order is written where it is, and is not there where it isn't") {
    tests::SmallBook small = smallBook();
    CHECK_THAT(writeBook(small.book), !Catch::Contains("out_of_order_from"));
    Zone warm = small.book.get<Zone>(small.warm);
    warm.mat->outOfOrderFrom = tests::day("2027-06-01");
    tests::perform(small.book, {Put<Zone>{warm}});
    const std::string text = writeBook(small.book);
    CHECK_THAT(text, Catch::Contains("\"out_of_order_from\": \"2027-06-01\""));
    const auto read = readBook(text);
    REQUIRE(read);
    CHECK(*read == small.book);
}

TEST_CASE("A book with 100 000 root checks is written and read back the same") {
    const HouseBook book = tests::bookOfChecks(2000, 100'000);
    const auto read = readBook(writeBook(book));
    REQUIRE(read);
    CHECK(*read == book);
}
