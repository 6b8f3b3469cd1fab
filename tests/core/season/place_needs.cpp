#include "core/season/place_needs.h"

#include "tests/core/season/place_swap.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::on;
using warmbench::testing::PlaceSwap;

TEST_CASE(
    "A batch needs the place of the one that stands on its slots until it moves, and of those behind it") {
    const PlaceSwap swap;
    const PlaceNeeds needs(swap.nursery.book, swap.proposal);
    using Indices = std::vector<std::size_t>;
    // The third moves to the second's slots, the second to the first's, and the first loses its place.
    CHECK(needs.neededBy(PlaceSwap::third) == Indices{PlaceSwap::second, PlaceSwap::third, PlaceSwap::first});
    CHECK(needs.neededBy(PlaceSwap::second) == Indices{PlaceSwap::second, PlaceSwap::first});
    CHECK(needs.neededBy(PlaceSwap::first) == Indices{PlaceSwap::first});
    CHECK(needs.needing(PlaceSwap::first) == Indices{PlaceSwap::second, PlaceSwap::third, PlaceSwap::first});
    CHECK(needs.needing(PlaceSwap::third) == Indices{PlaceSwap::third});
    CHECK(needs.neededBy(PlaceSwap::fresh) == Indices{PlaceSwap::fresh});
}

TEST_CASE("A proposal is accepted in part where all that needs a place left out is left out with it") {
    const PlaceSwap swap;
    const PlaceNeeds needs(swap.nursery.book, swap.proposal);
    for (std::size_t left = 0; left < PlaceSwap::things; ++left) {
        CAPTURE(left);
        std::vector<bool> taken(PlaceSwap::things, true);
        taken[left] = false;
        HouseBook book = swap.nursery.book;
        CHECK(static_cast<bool>(book.perform(swap.proposal.only(swap.nursery.book, taken).command())) ==
              (needs.needing(left).size() == 1));
        for (const std::size_t one : needs.needing(left)) taken[one] = false;
        book = swap.nursery.book;
        CHECK(book.perform(swap.proposal.only(swap.nursery.book, taken).command()));
    }
}

TEST_CASE("Where a batch that is left out stays alone, its mat stays as it is") {
    PlaceSwap swap;
    HouseBook& book = swap.nursery.book;
    const Day from = on(8, 2);
    swap.add(
        Command{SetMatRuns{swap.nursery.warm, from, from + 60, {{{}, {}, from, from + 60, Celsius{180}}}}});
    swap.proposal.mats = {{swap.nursery.warm, {}}};
    const auto heatAfter = [&](const std::vector<bool>& taken) {
        HouseBook after = book;
        REQUIRE(after.perform(swap.proposal.only(book, taken).command()));
        return setPointOn(after, swap.nursery.warm, from + 10);
    };
    std::vector<bool> taken(PlaceSwap::things, false);
    CHECK(heatAfter(taken) == Celsius{180});
    // Of two that share a mat, the plan has its way for the one that is taken.
    taken[PlaceSwap::fresh] = true;
    CHECK(!heatAfter(taken));
    CHECK(!heatAfter(std::vector<bool>(PlaceSwap::things, true)));
}
