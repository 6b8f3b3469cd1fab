#include "core/book/rules.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

Things thingsOf(const HouseBook& book) {
    Things things;
    forEachKind([&]<class E>() { std::get<std::map<IdOf<E>, E>>(things) = book.all<E>(); });
    return things;
}

std::vector<BrokenRule> brokenBy(Things things) {
    auto made = HouseBook::make(std::move(things));
    if (auto* broken = std::get_if<std::vector<BrokenRule>>(&made)) return *broken;
    return {};
}

} // namespace

TEST_CASE("A book made of all things of another is that book") {
    const HouseBook book = smallBook().book;
    const auto made = HouseBook::make(thingsOf(book));
    REQUIRE(std::holds_alternative<HouseBook>(made));
    CHECK(std::get<HouseBook>(made) == book);
}

TEST_CASE("Every reference to nothing is told, and only those") {
    SmallBook small = smallBook();
    Things things = thingsOf(small.book);
    std::get<std::map<BatchId, Batch>>(things).erase(small.struck);
    std::get<std::map<StayId, Stay>>(things).at(small.plannedStay).to = day("2000-01-01");
    const auto broken = brokenBy(things);
    REQUIRE(broken.size() == 2);
    CHECK(broken[0].kind == std::string("stays"));
    CHECK(broken[0].number == small.rooting.number);
    CHECK(broken[0].refusal.text() == "stay 1: its batch, number 1, is not in this book");
    CHECK(broken[1].number == small.weaning.number);
}

TEST_CASE("Two batches on one slot are told of both") {
    SmallBook small = smallBook();
    Things things = thingsOf(small.book);
    for (Place& place : std::get<std::map<StayId, Stay>>(things).at(small.plannedStay).places)
        place.slots.row = 0;
    const auto broken = brokenBy(things);
    REQUIRE(broken.size() == 2);
    CHECK(broken[0].refusal.text() ==
          "27-046-A, container 1: its slot in Bench 1 · A is taken by 27-060-A on 2027-03-01");
    CHECK(broken[1].refusal.text() ==
          "27-060-A, container 1: its slot in Bench 1 · A is taken by 27-046-A on 2027-03-01");
}

TEST_CASE("A book without its nursery, or with two, is none") {
    Things things;
    CHECK(brokenBy(things).size() == 1);
    std::get<std::map<NurseryId, Nursery>>(things) = {{{1}, {}}, {{2}, {}}};
    CHECK(brokenBy(things).size() == 1);
}

TEST_CASE("A change that tells of another state, or of nothing, is refused whole") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    const HouseBook before = book;
    const Taxon fuchsia = book.get<Taxon>(small.fuchsia);
    Taxon other = fuchsia;
    other.caution = "none known";
    CHECK(book.apply({{Edit<Taxon>{fuchsia, other}, Edit<Taxon>{fuchsia, std::nullopt}}}));
    CHECK(book.apply({{Edit<Taxon>{}}}));
    other.id = {9};
    CHECK(book.apply({{Edit<Taxon>{fuchsia, other}}}));
    CHECK(book == before);
}

TEST_CASE("A change that takes a batch from under its stays is refused, whatever else it does") {
    SmallBook small = smallBook();
    const HouseBook before = small.book;
    Zone wide = small.book.get<Zone>(small.warm);
    wide.name = "C";
    const auto refusal = small.book.apply({{Edit<Zone>{small.book.get<Zone>(small.warm), wide},
                                            Edit<Batch>{small.book.get<Batch>(small.struck), std::nullopt}}});
    REQUIRE(refusal);
    CHECK(refusal->text() == "27-046-A: it still has stays, checks, pottings or losses");
    CHECK(small.book == before);
}
