#include "ui/shell/facts.h"
#include "core/book/query.h"
#include "core/forecast/batch_forecast.h"
#include "core/season/month_problem.h"
#include "tests/support/small_book.h"
#include "tests/support/small_nursery.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::tests;
using namespace warmbench::ui;

namespace {

QString saidOf(const Facts& facts, const QString& label) {
    QStringList said;
    for (const Fact& fact : facts.facts)
        if (fact.label == label) said += fact.html;
    return said.join(QStringLiteral("\n"));
}

Wording britishWords() {
    return Wording(QLocale(QLocale::English, QLocale::UnitedKingdom));
}

} // namespace

TEST_CASE("A batch's life tells stock, recipe as it was, stays, checks, forecast and label") {
    const SmallBook small = smallBook();
    HouseBook book = small.book;
    const Day today = day("2027-03-10");
    for (int container = 1; container <= 4; ++container)
        perform(book, {RecordCheck{
                          {{}, small.struck, container, today - container, 2, 1, 1, 0, 0, 3, "white tips"}}});
    const Facts facts = batchFacts(book, small.struck, today, britishWords());
    const Batch& batch = book.get<Batch>(small.struck);
    CHECK(saidOf(facts, QStringLiteral("Stock")) == text(book.get<Stock>(small.stock).name));
    CHECK(saidOf(facts, QStringLiteral("Recipe as it was then")).contains(QStringLiteral("°C")));
    CHECK(saidOf(facts, QStringLiteral("Roots in")).contains(QStringLiteral("15 Feb to 1 Apr")));
    CHECK(saidOf(facts, QStringLiteral("To be weaned in")).contains(QStringLiteral("1 Apr to 15 Apr")));
    HouseBook weaned = book;
    perform(weaned, {WeanStay{small.weaning, day("2027-04-01")}});
    CHECK(saidOf(batchFacts(weaned, small.struck, today, britishWords()), QStringLiteral("Weaned in"))
              .contains(QStringLiteral("1 Apr to 15 Apr")));
    const QString checks = saidOf(facts, QStringLiteral("Checks"));
    CHECK(checks.startsWith(
        QStringLiteral("9 Mar, container 1: 1 of 2 rooted, 1 callused, grade 3, white tips")));
    CHECK(checks.count(QStringLiteral("<br>")) == 3);
    // What becomes of a struck batch is told by the card beside these facts.
    CHECK(saidOf(facts, QStringLiteral("Ready to wean")).isEmpty());
    CHECK(saidOf(facts, QStringLiteral("Label")).contains(text(batch.code) + QStringLiteral("/01 to")));
    // An earlier day knows nothing of later checks.
    CHECK(saidOf(batchFacts(book, small.struck, day("2027-03-01"), britishWords()),
                 QStringLiteral("Checks")) == QStringLiteral("none yet"));
}

TEST_CASE("A batch that waits to be struck foretells its ready day and plants") {
    const SmallBook small = smallBook();
    const Day today = day("2027-02-20");
    const Batch& batch = small.book.get<Batch>(small.planned);
    const Facts facts = batchFacts(small.book, batch.id, today, britishWords());
    const auto forecast = forecast::BatchForecast::make(small.book, batch, std::max(today, batch.strikeDay));
    REQUIRE(forecast);
    REQUIRE(forecast->readyDay(0.5));
    CHECK(saidOf(facts, QStringLiteral("Ready to wean"))
              .startsWith(QStringLiteral("likely ") + britishWords().shortDate(*forecast->readyDay(0.5))));
    CHECK(saidOf(facts, QStringLiteral("Plants"))
              .startsWith(QStringLiteral("about %1,").arg(qRound(forecast->plants(1, 0.9).expected))));
}

TEST_CASE("Containers that stand apart are named with their numbers, and those together are not") {
    const SmallBook small = smallBook();
    HouseBook book = small.book;
    const Facts together = batchFacts(book, small.struck, day("2027-03-10"), britishWords());
    CHECK(!saidOf(together, QStringLiteral("Roots in")).contains(QStringLiteral("container")));
    Stay stay = book.get<Stay>(small.rooting);
    Stay apart = stay;
    apart.id = {};
    apart.zone = small.cool;
    apart.places = {stay.places.back()};
    apart.places.front().slots = {0, 0, 1, 1};
    stay.places.pop_back();
    perform(
        book,
        {Group{"part", {{MoveStay{stay.id, stay.zone, stay.from, stay.to, stay.places}}, {AddStay{apart}}}}});
    const QString said =
        saidOf(batchFacts(book, small.struck, day("2027-03-10"), britishWords()), QStringLiteral("Roots in"));
    CHECK(said.contains(QStringLiteral("containers 1 to 3")));
    CHECK(said.contains(QStringLiteral("container 4")));
}

TEST_CASE("A zone tells what each setting of its mat costs a day, and what it suits") {
    const HouseBook book = smallNursery();
    const Day today = smallNurseryToday();
    int heated = 0;
    for (const auto& [id, zone] : book.all<Zone>()) {
        const Facts facts = zoneFacts(book, id, today, Letters(book), britishWords());
        const QString costs = saidOf(facts, QStringLiteral("Heating at each setting"));
        CHECK(costs.isEmpty() == !zone.mat);
        if (!zone.mat) continue;
        ++heated;
        for (const Celsius setPoint : zone.mat->setPoints) {
            const auto cost =
                season::matCostPerDay(book, zone, setPoint, onDay(houseOf(book, zone).air, today));
            CHECK(costs.contains(cost ? britishWords().money(*cost, book.nursery().currency)
                                      : QStringLiteral("too much for its power")));
        }
        CHECK(costs.contains(QStringLiteral("(set)")) == setPointOn(book, id, today).has_value());
        CHECK(!facts.care.isEmpty());
    }
    CHECK(heated > 0);
}

TEST_CASE("What a zone suits follows its cover and its root zone") {
    const SmallBook small = smallBook();
    HouseBook book = small.book;
    const Recipe recipe = book.get<Recipe>(small.recipe);
    const auto suitedIn = [&](const HouseBook& in) {
        return saidOf(zoneFacts(in, small.warm, day("2027-03-10"), Letters(in), britishWords()),
                      QStringLiteral("Suits as it is"));
    };
    const QString genus = text(book.get<Taxon>(small.abelia).genus());
    Recipe own = recipe;
    own.covers.value = {Cover::Mist};
    own.rootZoneLow.value = Celsius{180};
    own.rootZoneHigh.value = Celsius{240};
    perform(book, {Put<Recipe>{own}});
    CHECK(suitedIn(book).contains(genus));
    own.covers.value = {Cover::Fog};
    perform(book, {Put<Recipe>{own}});
    CHECK(suitedIn(book) == QStringLiteral("none of your recipes"));
    own.covers.value = {Cover::Mist};
    own.rootZoneLow.value = Celsius{210};
    perform(book, {Put<Recipe>{own}});
    CHECK(suitedIn(book) == QStringLiteral("none of your recipes"));
    CHECK(saidOf(zoneFacts(book, small.warm, day("2027-03-10"), Letters(book), britishWords()),
                 QStringLiteral("Suits at 22\u00A0°C"))
              .contains(genus));
}

TEST_CASE("An empty book says what to do first, and no more of it once that is done") {
    const auto steps = [](const HouseBook& book) {
        QStringList labels;
        for (const Fact& fact : firstSteps(book)) labels += fact.label;
        return labels;
    };
    CHECK(steps(HouseBook()) ==
          QStringList{"First", "1. Nursery", "2. Nursery", "3. Targets", "4. Stocks", "5. Plan"});
    HouseBook book;
    perform(book, {Put<Taxon>{{{}, "Abelia chinensis", {}, {}, {}}}});
    perform(book, {Put<Target>{{{}, "T1", TaxonId{1}, 10, day("2027-06-01"), Money{100}, {}, {}}}});
    CHECK(steps(book) == QStringList{"First", "1. Nursery", "2. Nursery", "4. Stocks", "5. Plan"});
    CHECK(steps(smallBook().book).isEmpty());
    CHECK(bookFacts(HouseBook(), day("2027-06-01"), britishWords()).facts.size() == 6);
}
