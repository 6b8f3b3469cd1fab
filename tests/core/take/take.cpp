#include "core/take/own_figures.h"
#include "core/take/take_table.h"
#include "core/take/trial.h"

#include "core/book/query.h"
#include "tests/support/small_book.h"
#include "tests/support/within.h"

using namespace warmbench;
using namespace warmbench::take;
using namespace warmbench::tests;

namespace {

/// Strikes 40 cuttings in the first pot of a row, and pots on so many plants of them six weeks later.
BatchId raise(SmallBook& small, const char* strikeDay, int plants, const std::string& hormone = "none") {
    Batch batch = small.book.get<Batch>(small.struck);
    batch.id = {};
    batch.code.clear();
    batch.strikeDay = day(strikeDay);
    batch.recipe.hormone.value = hormone;
    batch.target.reset();
    batch.containers = {{1, 40}};
    batch.state = BatchState::Struck;
    const BatchId id = small.book.nextId<Batch>();
    perform(small.book, {AddBatch{batch, {}}});
    perform(small.book, {PotOn{id, batch.strikeDay + 45, {{1, plants, 40 - plants}}, ""}});
    return id;
}

} // namespace

TEST_CASE("Takes are summed by group, with Wilson's interval and against the recipes") {
    SmallBook small = smallBook();
    raise(small, "2026-03-01", 30);
    raise(small, "2026-04-01", 20);
    raise(small, "2026-06-01", 8, "IBA 1000 ppm");
    const auto rows = takeTable(small.book, Grouping::Hormone, 0.95, Day::first(), Day::last());
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].group == "IBA 1000 ppm, none");
    CHECK(rows[0].take.rooted == 8);
    CHECK(rows[0].below());
    CHECK(rows[1].take.rooted == 50);
    CHECK(rows[1].take.struck == 80);
    CHECK(rows[1].recipeLow == Approx(0.7));
    CHECK(rows[1].recipeHigh == Approx(0.9));
    // Wilson's formula worked by hand for 50 of 80, z = 1.959964.
    CHECK(rows[1].interval.low == within(0.5155, 1e-3));
    CHECK(rows[1].interval.high == within(0.7232, 1e-3));
    const auto months = takeTable(small.book, Grouping::Month, 0.95, Day::first(), day("2026-04-30"));
    REQUIRE(months.size() == 2);
    CHECK(months[0].group == "March");
    CHECK(months[1].group == "April");
}

TEST_CASE("A batch that has not ended has no take yet") {
    const SmallBook small = smallBook();
    CHECK(takeTable(small.book, Grouping::Taxon, 0.95, Day::first(), Day::last()).empty());
    CHECK_FALSE(ownFigures(small.book, small.book.get<Recipe>(small.recipe)));
}

TEST_CASE("Batches of a lot that differ in hormone alone are a trial") {
    SmallBook small = smallBook();
    const BatchId plain = raise(small, "2026-03-01", 20);
    const BatchId treated = raise(small, "2026-03-03", 32, "IBA 1000 ppm");
    raise(small, "2026-05-01", 20);
    const auto trials = trialsIn(small.book);
    REQUIRE(trials.size() == 1);
    CHECK(trials[0].way == Grouping::Hormone);
    CHECK(trials[0].firstWay == "IBA 1000 ppm, none");
    CHECK(trials[0].first == std::vector{treated});
    CHECK(trials[0].second == std::vector{plain});
}

TEST_CASE("A trial is settled when Newcombe's interval leaves out no difference") {
    const TrialResult clear = compare({32, 40}, {20, 40}, 0.95);
    CHECK(clear.settled());
    CHECK(clear.difference == Approx(0.3));
    const TrialResult open = compare({26, 40}, {20, 40}, 0.95);
    CHECK_FALSE(open.settled());
    REQUIRE(open.cuttingsToSettle);
    CHECK(*open.cuttingsToSettle > 40);
    const auto each = *open.cuttingsToSettle;
    const auto grown = [&](double share) {
        return rooting::Take{std::llround(share * static_cast<double>(each)), each};
    };
    CHECK(compare(grown(0.65), grown(0.5), 0.95).settled());
    CHECK_FALSE(compare({20, 40}, {20, 40}, 0.95).cuttingsToSettle);
}

TEST_CASE("Own figures are drawn towards the recipe where batches are few, and away from it by many") {
    SmallBook small = smallBook();
    raise(small, "2024-03-01", 16);
    const Recipe& recipe = small.book.get<Recipe>(small.recipe);
    const OwnFigures one = ownFigures(small.book, recipe).value();
    CHECK(one.batches.size() == 1);
    CHECK(one.share > 0.4);
    CHECK(one.share < 0.8);
    CHECK(one.cuttingsThatCount < 40);
    for (int year = 2010; year < 2024; ++year)
        raise(small, (std::to_string(year) + "-03-01").c_str(), year % 2 == 0 ? 15 : 17);
    const OwnFigures many = ownFigures(small.book, small.book.get<Recipe>(small.recipe)).value();
    CHECK(many.batches.size() == 15);
    CHECK(many.share < one.share);
    CHECK(many.share == within(0.4, 0.05));
    CHECK(many.takePercent.low < 40);
    CHECK(many.takePercent.high > 40);
    CHECK(many.takePercent.high < 60);
}

TEST_CASE("Own figures change a recipe only when they are taken over, and are marked as such") {
    SmallBook small = smallBook();
    raise(small, "2024-03-01", 16);
    const OwnFigures own = ownFigures(small.book, small.book.get<Recipe>(small.recipe)).value();
    CHECK(small.book.get<Recipe>(small.recipe).takePercent.value == IntRange{70, 90});
    perform(small.book, adoptCommand(small.book, own));
    const Recipe& recipe = small.book.get<Recipe>(small.recipe);
    CHECK(recipe.takePercent.value == own.takePercent);
    CHECK(recipe.takePercent.source == std::string(ownFigure));
    CHECK(recipe.daysToRoot.source == std::string(ownFigure));
}
