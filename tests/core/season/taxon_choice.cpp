#include "core/season/taxon_choice.h"

#include "core/book/query.h"
#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::builtIn;
using warmbench::testing::SeasonBook;

TEST_CASE("A taxon of the book is chosen by any of its names, and is not put in again") {
    SeasonBook nursery;
    const Taxon& taxon = nursery.book.get<Taxon>(nursery.taxon);
    const auto choice = chooseTaxon(nursery.book, builtIn(), taxon.name);
    REQUIRE(choice);
    CHECK_FALSE(choice->isNew);
    CHECK(choice->taxon.id == nursery.taxon);
}

TEST_CASE("A taxon that only the built-in recipes know comes with its names, in one step with its target") {
    SeasonBook nursery;
    const auto known = std::find_if(builtIn().taxa().begin(), builtIn().taxa().end(), [&](const auto& one) {
        return !findTaxon(nursery.book, one.name) && !one.commonNames.empty() &&
               builtIn().named(one.commonNames.front()).size() == 1;
    });
    REQUIRE(known != builtIn().taxa().end());
    const auto choice = chooseTaxon(nursery.book, builtIn(), known->commonNames.front());
    REQUIRE(choice);
    CHECK(choice->isNew);
    CHECK(choice->taxon.name == known->name);

    const HouseBook before = nursery.book;
    Target target;
    target.name = "T1";
    target.taxon = choice->taxon.id;
    target.plants = 20;
    target.due = testing::on(11, 1);
    auto change = nursery.book.perform(withTaxon(*choice, {Put<Target>{target}}, "Put in target T1"));
    REQUIRE(change);
    const Taxon* added = findTaxon(nursery.book, known->name);
    REQUIRE(added);
    CHECK(added->commonNames == known->commonNames);
    CHECK(nursery.book.all<Target>().rbegin()->second.taxon == added->id);
    REQUIRE_FALSE(nursery.book.apply(change->inverse()));
    CHECK(nursery.book == before);
}

TEST_CASE("A name that nobody knows is refused, unless it is meant as a taxon of her own") {
    const HouseBook book;
    const auto refused = chooseTaxon(book, builtIn(), "Nemo nullius");
    REQUIRE_FALSE(refused);
    CHECK(refused.refusal().text().find("Nemo nullius") != std::string::npos);
    const auto own = chooseOwnTaxon(book, builtIn(), "Nemo nullius");
    REQUIRE(own);
    CHECK(own->isNew);
    CHECK(own->taxon.name == "Nemo nullius");
    CHECK_FALSE(chooseOwnTaxon(book, builtIn(), ""));
}

TEST_CASE("Every name by which a taxon is offered chooses one, or says of which it is a name") {
    const HouseBook book;
    for (const std::string& name : taxonNames(book, builtIn())) {
        const auto choice = chooseTaxon(book, builtIn(), name);
        INFO(name);
        CHECK((choice || choice.refusal().what.text().find("name of several") != std::string::npos));
    }
}
