#include "core/season/list/thing_list.h"

#include "core/book/query.h"
#include "core/take/take_table.h"
#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::builtIn;
using warmbench::testing::SeasonBook;

namespace {

ThingList read(const std::string& text, ListKind kind, const HouseBook& book,
               UnknownTaxa unknown = UnknownTaxa::Refuse) {
    return readThingList(text, kind, listShape(text, kind, book, builtIn()), book, builtIn(), unknown);
}

std::vector<std::string> troubles(const ThingList& list) {
    std::vector<std::string> all;
    for (const ListedThing& one : list.lines) all.push_back(one.trouble);
    return all;
}

} // namespace

TEST_CASE("Lines of one stock are its flushes, and are put in and undone as one step") {
    SeasonBook nursery;
    const HouseBook before = nursery.book;
    const ThingList list =
        read("Stock;Species;Number;Wood;season_from;Season to;cuttings_per_plant;Regrowth\n"
             "hedge;Abelia × grandiflora;12;softwood;05-10;07-15;6;21\n"
             "hedge;Abelia × grandiflora;;semi-ripe;1.8.2026;30.9.2026;4;\n",
             ListKind::Stocks, nursery.book);
    CHECK(troubles(list) == std::vector<std::string>{"", ""});
    auto change = nursery.book.perform(list.command);
    REQUIRE(change);
    const Stock& stock = nursery.book.all<Stock>().rbegin()->second;
    CHECK(stock.name == "hedge");
    CHECK(stock.plants == 12);
    CHECK(nursery.book.get<Taxon>(stock.taxon).name == "Abelia × grandiflora");
    REQUIRE(stock.flushes.size() == 2);
    CHECK(stock.flushes[0] == Flush{Wood::Softwood, {{5, 10}, {7, 15}}, 6, 21});
    CHECK(stock.flushes[1] == Flush{Wood::SemiRipe, {{8, 1}, {9, 30}}, 4, 365});
    CHECK_FALSE(nursery.book.apply(change->inverse()));
    CHECK(nursery.book == before);
}

TEST_CASE("Stocks that can't be say why, line by line") {
    SeasonBook nursery;
    const std::string known = nursery.book.get<Stock>(nursery.stock).name;
    const ThingList list = read("taxon,name,plants,wood,from,to,cuttings\n"
                                "Nonesuch,a,3,,,,\n"
                                "daisy bush," +
                                    known +
                                    ",3,,,,\n"
                                    "daisy bush,b,none,,,,\n"
                                    "daisy bush,c,3,softwood,13-40,07-01,5\n"
                                    "daisy bush,d,3,twigs,05-01,07-01,5\n"
                                    "daisy bush,e,3,softwood,05-01,07-01,\n"
                                    "daisy bush,f,3,softwood,05-01,07-01,5\n"
                                    "Abelia × grandiflora,f,3,softwood,05-01,07-01,5\n",
                                ListKind::Stocks, nursery.book);
    CHECK(troubles(list) ==
          std::vector<std::string>{"Nonesuch: neither the book nor the built-in recipes know this taxon",
                                   known + ": the book has a stock of that name already",
                                   "plants: found 'none', expected a whole number from 1 on",
                                   "from: found '13-40', expected a day of the flush's season, such as 05-10",
                                   "wood: found 'twigs', expected a wood such as softwood",
                                   "cuttings: none is given", "", "f: a line before is of another taxon"});
    CHECK(list.right == 1);
}

TEST_CASE("Recipes of a list are the built-in ones with her own figures, or her own with more of them") {
    SeasonBook nursery;
    const ThingList list = read("taxon,wood,take_percent,root zone ideal c\n"
                                "Abelia × grandiflora,softwood,70 to 85,21.5\n"
                                "Abelia × grandiflora,softwood,,22\n"
                                "Abelia × grandiflora,softwood,,\n"
                                "Abelia × grandiflora,softwood,often,\n",
                                ListKind::Recipes, nursery.book);
    REQUIRE(list.lines.size() == 4);
    CHECK(list.lines[0].trouble.empty());
    CHECK(list.lines[1].trouble.empty());
    CHECK(list.lines[2].trouble == "Abelia × grandiflora: no figure of its recipe is given");
    CHECK(list.lines[3].trouble.substr(0, 13) == "take_percent:");
    REQUIRE(nursery.book.perform(list.command));
    const Recipe& recipe = nursery.book.all<Recipe>().rbegin()->second;
    CHECK(recipe.takePercent.value == IntRange{70, 85});
    CHECK(recipe.takePercent.source == ownFigure);
    CHECK(recipe.rootZoneIdeal.value == Celsius::fromUnits(22));
    CHECK(recipe.daysToRoot == builtIn().compose("Abelia × grandiflora", Wood::Softwood).daysToRoot);
}

TEST_CASE("Past results become batches that have ended, and count in her take") {
    SeasonBook nursery;
    const std::string stock = nursery.book.get<Stock>(nursery.stock).name;
    const ThingList list = read("taxon;wood;struck;cuttings;plants;potted on;stock;batch\n"
                                "daisy bush;semi-ripe;20.8.2025;100;81;2.11.2025;" +
                                    stock +
                                    ";old-1\n"
                                    "daisy bush;semi-ripe;21.8.2025;50;60;2.11.2025;;\n"
                                    "daisy bush;semi-ripe;21.8.2025;50;40;1.8.2025;;\n"
                                    "daisy bush;semi-ripe;21.8.2025;50;40;;;\n"
                                    "daisy bush;semi-ripe;21.8.2025;40;0;3.11.2025;nowhere;\n"
                                    "daisy bush;semi-ripe;21.8.2025;40;0;3.11.2025;;\n",
                                ListKind::Results, nursery.book);
    REQUIRE(list.lines.size() == 6);
    CHECK(list.lines[0].trouble.empty());
    CHECK(list.lines[1].trouble == "plants: 60 of 50 cuttings, expected at most as many");
    CHECK(list.lines[2].trouble.find("2025-08-01 is before it was struck") != std::string::npos);
    CHECK(list.lines[3].trouble == "potted on: no date is given");
    CHECK(list.lines[4].trouble.find("nowhere: the book has no such stock") == 0);
    CHECK(list.lines[5].trouble.empty());
    REQUIRE(nursery.book.perform(list.command));
    const Batch* batch = findBatch(nursery.book, "old-1");
    REQUIRE(batch);
    CHECK(batch->state == BatchState::Ended);
    CHECK(batch->stock == nursery.stock);
    const auto rows = take::takeTable(nursery.book, take::Grouping::Taxon, 0.95, *Day::make(2025, 1, 1),
                                      *Day::make(2025, 12, 31));
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].take.rooted == 81);
    CHECK(rows[0].take.struck == 140);
}

TEST_CASE("A list of targets is read as such, and columns without names in the usual order") {
    SeasonBook nursery;
    const ThingList targets = read("daisy bush\t60\t2027-12-01\n", ListKind::Targets, nursery.book);
    REQUIRE(targets.right == 1);
    CHECK(std::get<int>(targets.lines[0].fields[1]) == 60);
    const ThingList results =
        read("daisy bush\tsemi-ripe\t2025-08-20\t100\t81\t2025-11-02\n", ListKind::Results, nursery.book);
    REQUIRE(results.lines.size() == 1);
    CHECK(results.lines[0].trouble.empty());
    CHECK(results.lines[0].fields.size() == fieldNames(ListKind::Results).size());
    CHECK(read("", ListKind::Stocks, nursery.book).lines.empty());
}
