#include "core/book/starting_figures.h"

#include "core/book/command.h"

#include <catch2/catch.hpp>

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
            const BenchId bench = put(book, firstBench(book, house));
            for (int zones = 0; zones < 3; ++zones) {
                Zone zone = firstZone(book, bench);
                zone.mat = firstMat(book, zone);
                put(book, zone);
            }
        }
    }
    CHECK(book.all<Zone>().size() == 18);
}
