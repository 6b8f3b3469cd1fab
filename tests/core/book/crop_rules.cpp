#include "tests/core/book/refused.h"
#include "tests/support/small_book.h"

using namespace warmbench;
using namespace warmbench::tests;

TEST_CASE("A kind of container has a name of its own, a size and a content") {
    SmallBook small = smallBook();
    const auto with = [&](auto change) { return refusedWith<ContainerType>(small.book, small.pot, change); };
    CHECK(with([](ContainerType& c) { c.name.clear(); }) == "container type: it needs a name");
    CHECK(with([](ContainerType& c) { c.name = "tray 39 cm"; }) ==
          "tray 39 cm: two container types have this name");
    CHECK(with([](ContainerType& c) { c.footprint.width = 101; }) ==
          "pot 13 cm: it covers 1 by 101 slots; expected 1 to 100 each way");
    CHECK(with([](ContainerType& c) { c.volume = Litres{0}; }) == "pot 13 cm: it holds no medium");
    CHECK(with([](ContainerType& c) { c.cuttings = 0; }) ==
          "pot 13 cm: it takes 0 cuttings; expected 1 to 10000");
    CHECK(with([](ContainerType& c) { c.footprint.height = 2; }) ==
          "27-046-A, container 1: it does not cover 1 by 1 slots");
    CHECK(refused(small.book, {Remove<ContainerType>{small.pot}}) == "pot 13 cm: 27-046-A stands in it");
}

TEST_CASE("A medium has components with names and parts") {
    SmallBook small = smallBook();
    const auto with = [&](auto change) { return refusedWith<Medium>(small.book, small.medium, change); };
    CHECK(with([](Medium& m) { m.components.clear(); }) == "perlite and peat: it has no components");
    CHECK(with([](Medium& m) { m.components[0].name.clear(); }) ==
          "perlite and peat: a component of the medium has no name");
    CHECK(with([](Medium& m) { m.components[0].parts = 0; }) ==
          "perlite and peat: 0 parts of perlite; expected 1 to 1000");
}

TEST_CASE("A taxon has a name of its own and stays while anything is of it") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    CHECK(refused(book, {Put<Taxon>{{{}, "", {}, {}, ""}}}) == "taxon: it needs a name");
    CHECK(refused(book, {Put<Taxon>{{{}, "Fuchsia magellanica", {}, {}, ""}}}) ==
          "Fuchsia magellanica: two taxa have this name");
    const Command remove{Remove<Taxon>{small.abelia}};
    CHECK(refused(book, remove) == "Abelia × grandiflora: a recipe is for it");
    perform(book, {Remove<Recipe>{small.recipe}});
    CHECK(refused(book, remove) == "Abelia × grandiflora: stock hedge is of it");
}

TEST_CASE("A recipe's figures keep their order and bounds") {
    SmallBook small = smallBook();
    const auto with = [&](auto change) { return refusedWith<Recipe>(small.book, small.recipe, change); };
    const std::string place = "Abelia × grandiflora, softwood: ";
    CHECK(with([](Recipe& r) { r.taxon = {7}; }) == "recipe 1: its taxon, number 7, is not in this book");
    CHECK(with([](Recipe& r) { r.rootZoneLow.value = Celsius{300}; }) ==
          place + "the root zone's lowest temperature is above its highest");
    CHECK(with([](Recipe& r) {
              r.daysToRoot.value = {40, 30};
          }) == place + "days to root must be 1 to 400, the fewest first");
    CHECK(with([](Recipe& r) {
              r.takePercent.value = {90, 101};
          }) == place + "take must be 0 to 100 %, the lowest first");
    CHECK(with([](Recipe& r) { r.covers.value.clear(); }) == place + "it names no cover");
    CHECK(with([](Recipe& r) { r.cuttingsPerContainer.value = 0; }) ==
          place + "a container takes no cutting");
    CHECK(with([](Recipe& r) { r.weanDays.value = 401; }) ==
          place + "weaning takes 0 to 400 days, growing on 0 to 1000");
    CHECK(with([](Recipe& r) { r.season.value.to = {2, 30}; }) == "recipe 1: season: a day that no year has");
}

TEST_CASE("A stock is of a taxon and stays while a batch was taken from it") {
    SmallBook small = smallBook();
    const auto with = [&](auto change) { return refusedWith<Stock>(small.book, small.stock, change); };
    CHECK(with([](Stock& s) { s.taxon = {7}; }) == "hedge: its taxon, number 7, is not in this book");
    CHECK(with([](Stock& s) { s.plants = -1; }) == "hedge: fewer than 0 plants");
    CHECK(with([](Stock& s) { s.flushes[0].regrowthDays = 0; }) ==
          "hedge: a flush yields 0 cuttings a plant or more, and grows again after a day or more");
    CHECK(with([&](Stock& s) { s.taxon = small.fuchsia; }) == "27-046-A: stock hedge is of another taxon");
    CHECK(refused(small.book, {Remove<Stock>{small.stock}}) == "hedge: batch 27-046-A was taken from it");
}

TEST_CASE("A target wants plants of a taxon and stays while a batch is for it") {
    SmallBook small = smallBook();
    const auto with = [&](auto change) { return refusedWith<Target>(small.book, small.target, change); };
    CHECK(with([](Target& t) { t.taxon = {7}; }) == "T1: its taxon, number 7, is not in this book");
    CHECK(with([](Target& t) { t.plants = 0; }) == "T1: 0 plants; expected 1 to a million");
    CHECK(with([](Target& t) { t.worth = Money{-1}; }) == "T1: a plant's worth is below 0");
    CHECK(with([&](Target& t) { t.taxon = small.fuchsia; }) == "27-046-A: target T1 wants another taxon");
    CHECK(refused(small.book, {Remove<Target>{small.target}}) == "T1: batch 27-046-A is for it");
}

TEST_CASE("Numbers, days and texts that no format could keep are refused") {
    SmallBook small = smallBook();
    const auto target = [&](auto change) { return refusedWith<Target>(small.book, small.target, change); };
    CHECK(target([](Target& t) { t.worth = Money{200'000'000'000}; }) ==
          "T1: worth: a number beyond 1000000000");
    CHECK(target([](Target& t) { t.due = Day::last() + 1; }) == "T1: due: a day outside the years 1 to 9999");
    CHECK(target([](Target& t) { t.note = "a\xff"; }) == "T1: note: a character that is not UTF-8");
    CHECK(target([](Target& t) { t.note = std::string(1, '\0'); }) == "T1: note: a control character");
    CHECK(target([](Target& t) { t.note = std::string(100'001, 'a'); }) ==
          "T1: note: 100001 bytes of text; expected at most 100000");
    CHECK(target([](Target& t) { t.wood = static_cast<Wood>(6); }) == "T1: wood: an unknown word");
    CHECK(target([](Target& t) { t.note = "two\nlines"; }) == "done");
}
