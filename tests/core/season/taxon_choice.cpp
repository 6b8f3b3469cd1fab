#include "core/season/taxon_choice.h"

#include "core/book/query.h"
#include "core/crop/library/taxon_name.h"
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

TEST_CASE("Every line that is offered chooses one taxon") {
    const HouseBook book;
    const auto offers = taxonOffers(book, builtIn());
    CHECK(offers.size() > builtIn().taxa().size());
    for (const TaxonOffer& offer : offers) {
        INFO(offer.words << " for " << offer.name);
        CHECK(chooseTaxon(book, builtIn(), offer.name));
    }
}

TEST_CASE("A name of several is offered as each of them, and by itself once the book has one of that name") {
    const auto& taxa = builtIn().taxa();
    const auto ofSeveral = [](const KnownTaxon& one) {
        return !one.commonNames.empty() && builtIn().named(one.commonNames.front()).size() > 1;
    };
    REQUIRE(std::any_of(taxa.begin(), taxa.end(), ofSeveral));
    SeasonBook nursery;
    for (const KnownTaxon& taxon : taxa) {
        if (!ofSeveral(taxon)) continue;
        const std::string& name = taxon.commonNames.front();
        INFO(name << ", a name of " << taxon.name);
        const auto offers = taxonOffers(nursery.book, builtIn());
        const auto has = [&](const std::string& words) {
            return std::any_of(offers.begin(), offers.end(),
                               [&](const TaxonOffer& one) { return one.words == words; });
        };
        CHECK_FALSE(has(name));
        for (const KnownTaxon* one : builtIn().named(name)) {
            CHECK(has(one->name));
            CHECK((has(one->name + " (" + name + ")") ||
                   nameKey(one->name).find(nameKey(name)) != std::string::npos));
        }
    }
    nursery.add(Taxon{{}, "Forsythia suspensa", {}, {"Forsythia"}, ""});
    const auto offers = taxonOffers(nursery.book, builtIn());
    CHECK(std::count_if(offers.begin(), offers.end(), [](const TaxonOffer& one) {
              return one.words == "Forsythia" && one.name == "Forsythia";
          }) == 1);
}
