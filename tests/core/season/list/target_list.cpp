#include "core/season/list/target_list.h"

#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::builtIn;
using warmbench::testing::SeasonBook;

namespace {

std::vector<ListedTarget> listed(const std::string& text, const HouseBook& book,
                                 UnknownTaxa unknown = UnknownTaxa::Refuse) {
    return readTargetList(text, targetListShape(text, book, builtIn()), book, builtIn(), unknown);
}

} // namespace

TEST_CASE("A list copied from a spreadsheet is read by the names of its columns") {
    const SeasonBook nursery;
    const auto list = listed("Plant\tQuantity\tBy\tPrice\tNotes\r\n"
                             "daisy bush\t120\t1.12.2027\t2,50\tin 9 cm pots\r\n"
                             "\r\n"
                             "Abelia × grandiflora\t80\t15.06.2028\t3\t\r\n",
                             nursery.book);
    REQUIRE(list.size() == 2);
    CHECK(list[0].trouble.empty());
    CHECK(list[0].taxon.taxon.id == nursery.taxon);
    CHECK(list[0].target.plants == 120);
    CHECK(list[0].target.due == *Day::make(2027, 12, 1));
    CHECK(list[0].target.worth == Money{250});
    CHECK(list[0].target.note == "in 9 cm pots");
    CHECK(list[0].target.name == "T01");
    CHECK(list[1].line == 4);
    CHECK(list[1].taxon.isNew);
    CHECK(list[1].target.due == *Day::make(2028, 6, 15));
}

TEST_CASE("A head's names are those of taxa where nothing else in it is") {
    const SeasonBook nursery;
    const auto list = listed("Name;Plants;By\ndaisy bush;120;1.12.2027\n", nursery.book);
    REQUIRE(list.size() == 1);
    CHECK(list[0].trouble.empty());
    CHECK(list[0].taxon.taxon.id == nursery.taxon);
    const auto both = listed("Name;What;Plants;By\nT7;daisy bush;120;1.12.2027\n", nursery.book);
    CHECK(both[0].trouble.empty());
    CHECK(both[0].taxon.taxon.id == nursery.taxon);
    CHECK(both[0].target.name == "T7");
}

TEST_CASE("A list without a head is read by what stands in its columns") {
    const SeasonBook nursery;
    const std::string text = "2027-12-01;semi-ripe;daisy bush;60\n2027-12-24;;Olearia × haastii;40\n";
    const TargetListShape shape = targetListShape(text, nursery.book, builtIn());
    CHECK_FALSE(shape.head);
    CHECK(shape.delimiter == ';');
    CHECK(shape.columns == std::vector<TargetColumn>{TargetColumn::Due, TargetColumn::Wood,
                                                     TargetColumn::Taxon, TargetColumn::Plants});
    const auto list = listed(text, nursery.book);
    REQUIRE(list.size() == 2);
    CHECK(list[0].target.wood == Wood::SemiRipe);
    CHECK_FALSE(list[1].target.wood);
    CHECK(list[1].target.plants == 40);
    CHECK(list[1].target.worth == usualWorth);
}

TEST_CASE("Lines that are wrong say why, and the rest is put in as one step that is undone as one") {
    SeasonBook nursery;
    const auto list = listed("taxon,plants,date,name\n"
                             "daisy bush,60,2027-12-01,T01\n"
                             "daisy bush,sixty,2027-12-01,\n"
                             "daisy bush,60,someday,\n"
                             "Nonesuch,60,2027-12-01,\n"
                             "daisy bush,60,2027-12-01,T01\n"
                             ",60,2027-12-01,\n"
                             "daisy bush,,2027-12-01,\n"
                             "Abelia × grandiflora,10,2028-01-01,\n"
                             "abelia x grandiflora,12,2028-02-01,\n",
                             nursery.book);
    REQUIRE(list.size() == 9);
    CHECK(list[0].trouble.empty());
    CHECK(list[1].trouble == "found 'sixty', expected a number of plants, 1 to 1000000");
    CHECK(list[2].trouble == "found 'someday', expected a date");
    CHECK(list[3].trouble == "Nonesuch: neither the book nor the built-in recipes know this taxon");
    CHECK(list[4].trouble == "there is a target T01 already");
    CHECK(list[5].trouble == "no taxon is named");
    CHECK(list[6].trouble == "no number of plants is given");
    CHECK(list[8].trouble.empty());
    const HouseBook before = nursery.book;
    auto change = nursery.book.perform(putTargets(nursery.book, list));
    REQUIRE(change);
    REQUIRE(nursery.book.all<Target>().size() == 3);
    CHECK(nursery.book.all<Taxon>().size() == before.all<Taxon>().size() + 1);
    const Target& last = nursery.book.all<Target>().rbegin()->second;
    CHECK(nursery.book.get<Taxon>(last.taxon).name == "Abelia × grandiflora");
    CHECK(last.name == "T03");
    CHECK_FALSE(nursery.book.apply(change->inverse()));
    CHECK(nursery.book == before);
}

TEST_CASE("One wrong date does not change how the others are read") {
    const SeasonBook nursery;
    const auto list =
        listed("taxon;plants;date\ndaisy bush;1;1.6.2028\ndaisy bush;2;13.6.2028\ndaisy bush;3;soon\n",
               nursery.book);
    REQUIRE(list.size() == 3);
    CHECK(list[0].target.due == *Day::make(2028, 6, 1));
    CHECK(list[1].target.due == *Day::make(2028, 6, 13));
    CHECK(list[2].trouble == "found 'soon', expected a date");
}

TEST_CASE("Taxa that nobody knows may be taken as her own") {
    SeasonBook nursery;
    const auto list = listed("taxon,plants,date\nNonesuch,60,2027-12-01\nNonesuch,5,2028-01-01\n",
                             nursery.book, UnknownTaxa::TakeAsOwn);
    REQUIRE(nursery.book.perform(putTargets(nursery.book, list)));
    CHECK(nursery.book.all<Target>().size() == 2);
    CHECK(nursery.book.all<Taxon>().rbegin()->second.name == "Nonesuch");
    CHECK(listed("", nursery.book).empty());
}
