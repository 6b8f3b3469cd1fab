#include "core/season/stock_yield.h"
#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

std::vector<std::pair<int, std::int64_t>> steps(const SeasonBook& nursery, Day from, int days) {
    std::vector<std::pair<int, std::int64_t>> found;
    for (const auto& step :
         stockSteps(nursery.book, nursery.book.get<Stock>(nursery.stock), Wood::SemiRipe, from, days))
        found.emplace_back(step.day, step.total);
    return found;
}

} // namespace

// The stock: 20 plants, 10 cuttings a plant, again after 30 days, 15 July to 30 September.

TEST_CASE("A stock gives a flush at once and another each time it has grown again") {
    const SeasonBook nursery;
    CHECK(steps(nursery, on(8, 1), 40) == std::vector<std::pair<int, std::int64_t>>{{0, 200}, {30, 400}});
}

TEST_CASE("A stock gives nothing before its season and nothing of another wood") {
    const SeasonBook nursery;
    CHECK(steps(nursery, on(7, 1), 20) == std::vector<std::pair<int, std::int64_t>>{{14, 200}});
    CHECK(steps(nursery, on(4, 1), 28).empty());
    const Stock& stock = nursery.book.get<Stock>(nursery.stock);
    CHECK(yields(stock, Wood::SemiRipe));
    CHECK_FALSE(yields(stock, Wood::Hardwood));
    CHECK(stockSteps(nursery.book, stock, Wood::Hardwood, on(8, 1), 30).empty());
}

TEST_CASE("What was taken lately is missing until it has grown again") {
    SeasonBook nursery;
    nursery.strike(on(7, 22), 150, 30); // ten days before: grown again on day 20
    CHECK(steps(nursery, on(8, 1), 28) == std::vector<std::pair<int, std::int64_t>>{{0, 50}, {20, 200}});
}

TEST_CASE("What was taken long ago is no longer missing") {
    SeasonBook nursery;
    nursery.strike(on(7, 16), 150, 30);
    CHECK(steps(nursery, on(9, 1), 20) == std::vector<std::pair<int, std::int64_t>>{{0, 200}});
}
