#include "core/book/starting_figures.h"

#include "core/book/command.h"

#include <catch2/catch.hpp>

#include <iterator>

using namespace warmbench;

namespace {

template <class E>
IdOf<E> put(HouseBook& book, const E& thing) {
    const auto id = book.nextId<E>();
    const auto change = book.perform({Put<E>{thing}});
    INFO((change ? "" : change.refusal().text()));
    REQUIRE(change);
    return id;
}

} // namespace

TEST_CASE("What new things start with keeps the book's rules, one after another") {
    HouseBook book;
    for (int houses = 0; houses < 2; ++houses) {
        const HouseId house = put(book, firstHouse(book));
        for (int benches = 0; benches < 3; ++benches) {
            const BenchId bench = put(book, *firstBench(book, house));
            for (int zones = 0; zones < 3; ++zones) {
                Zone zone = firstZone(book, bench);
                zone.mat = firstMat(book, zone);
                put(book, zone);
            }
        }
    }
    CHECK(book.all<Zone>().size() == 18);
}

TEST_CASE("A new bench is proposed in every free place that a house has, and none where it is full") {
    HouseBook book;
    House small = firstHouse(book);
    small.length = Millimetres{4'000};
    small.width = Millimetres{3'000};
    const HouseId house = put(book, small);
    int proposed = 0;
    // Each keeps the book's rules: inside the walls, across no other, with a name of its own.
    while (const auto bench = firstBench(book, house)) {
        INFO(bench->name << " at " << bench->x.parts << ", " << bench->y.parts);
        REQUIRE(proposed++ < 100);
        put(book, *bench);
    }
    CHECK(proposed > 2);
    const auto free = [&](Millimetres x, Millimetres y) {
        Bench one = unplacedBench(book, house);
        one.x = x;
        one.y = y;
        one.rows = one.cols = 1;
        return book.perform({Put<Bench>{one}}).ok();
    };
    for (int x = 0; x < 4'000; x += 10)
        for (int y = 0; y < 3'000; y += 10) {
            INFO(x << ", " << y);
            REQUIRE_FALSE(free(Millimetres{x}, Millimetres{y}));
        }
    // A place that comes free again, in the middle of the others, is found.
    const BenchId middle = *std::next(book.benchesOf(house).begin());
    const Bench stood = book.get<Bench>(middle);
    REQUIRE(book.perform({Remove<Bench>{middle}}));
    const auto again = firstBench(book, house);
    REQUIRE(again);
    CHECK(again->rows * again->cols >= stood.rows * stood.cols);
}
