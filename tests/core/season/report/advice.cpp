#include "core/season/report/advice.h"

#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::season;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

BatchId raise(SeasonBook& nursery, Day struck, int cuttings, int plants, std::optional<TargetId> target = {},
              std::optional<StockId> stock = {}, const std::string& hormone = "none") {
    const BatchId id = nursery.book.nextId<Batch>();
    Batch batch;
    batch.taxon = nursery.taxon;
    batch.recipe = testing::semiRipe(nursery.taxon);
    batch.recipe.hormone.value = hormone;
    batch.stock = stock ? stock : nursery.stock;
    batch.target = target;
    batch.strikeDay = struck;
    batch.containerType = nursery.pot;
    batch.containers = {{1, cuttings}};
    batch.state = BatchState::Struck;
    REQUIRE(nursery.book.perform(Command{AddBatch{batch, {}}}));
    REQUIRE(nursery.book.perform(Command{PotOn{id, struck + 60, {{1, plants, cuttings - plants}}, ""}}));
    return id;
}

std::vector<Advice> adviceIn(const SeasonBook& nursery, AdviceKind kind) {
    std::vector<Advice> list =
        adviceOf(nursery.book, seasonReport(nursery.book, {on(1, 1), on(12, 31), on(12, 31)}));
    std::erase_if(list, [&](const Advice& advice) { return advice.kind != kind; });
    return list;
}

} // namespace

TEST_CASE("A take below the recipe is advice only from three batches on") {
    SeasonBook nursery;
    raise(nursery, on(7, 20), 100, 20);
    raise(nursery, on(8, 10), 100, 22);
    auto list = adviceIn(nursery, AdviceKind::Take);
    REQUIRE(list.size() == 1);
    CHECK(list[0].thin);
    CHECK(list[0].what == "leave the recipe's take of 65 to 90 % as it is");
    CHECK(list[0].evidence.find("fewer than 3 batches") != std::string::npos);
    raise(nursery, on(9, 1), 100, 18);
    list = adviceIn(nursery, AdviceKind::Take);
    REQUIRE(list.size() == 1);
    CHECK_FALSE(list[0].thin);
    CHECK(list[0].what.find("not with the recipe's 65 to 90 %") != std::string::npos);
    CHECK(list[0].evidence.find("60 of 300 potted on from 3 batches, 20 %") == 0);
}

TEST_CASE("A take that the recipe may still explain changes nothing") {
    SeasonBook nursery;
    for (const unsigned day : {1U, 11U, 21U}) raise(nursery, on(8, day), 20, 12);
    const auto list = adviceIn(nursery, AdviceKind::Take);
    REQUIRE(list.size() == 1);
    CHECK(list[0].thin);
    CHECK(list[0].evidence.find("the recipe may still be right") != std::string::npos);
}

TEST_CASE("A short target tells how many cuttings her own take asks for") {
    SeasonBook nursery;
    const TargetId target = nursery.want(50, on(11, 1));
    for (const unsigned day : {1U, 11U, 21U}) raise(nursery, on(8, day), 30, 12, target);
    const auto list = adviceIn(nursery, AdviceKind::Target);
    REQUIRE(list.size() == 1);
    CHECK(list[0].what == "strike more");
    CHECK(list[0].evidence.find("36 of 50 came of 90 cuttings; by her own take of ") == 0);
}

TEST_CASE("A target that was met late is to be struck earlier by as much") {
    SeasonBook nursery;
    const TargetId target = nursery.want(10, on(9, 20));
    raise(nursery, on(8, 1), 30, 20, target);
    const auto list = adviceIn(nursery, AdviceKind::Target);
    REQUIRE(list.size() == 1);
    CHECK(list[0].what == "strike it 10 days earlier");
}

TEST_CASE("A way is better once it was so in several batches, and to be tried again before") {
    SeasonBook nursery;
    raise(nursery, on(8, 1), 100, 20);
    raise(nursery, on(8, 1), 100, 80, {}, {}, "IBA 1000 ppm");
    auto list = adviceIn(nursery, AdviceKind::Way);
    REQUIRE(list.size() == 1);
    CHECK(list[0].thin);
    CHECK(list[0].what == "try IBA 1000 ppm, powder against none, powder again");
    raise(nursery, on(8, 2), 100, 24);
    raise(nursery, on(8, 2), 100, 77, {}, {}, "IBA 1000 ppm");
    list = adviceIn(nursery, AdviceKind::Way);
    REQUIRE_FALSE(list.empty());
    CHECK_FALSE(list[0].thin);
    CHECK(list[0].what == "strike with IBA 1000 ppm, powder rather than none, powder");
}

TEST_CASE("A stock that was cut beyond its flushes is to be spared") {
    SeasonBook nursery;
    for (const unsigned day : {1U, 2U, 3U, 4U, 5U, 6U, 7U}) raise(nursery, on(8, day), 100, 70);
    const auto list = adviceIn(nursery, AdviceKind::Stock);
    REQUIRE(list.size() == 1);
    CHECK(list[0].evidence == "700 cuttings were taken where its flushes give 600");
}

TEST_CASE("Mats that ran under nothing are named with their heat and cost") {
    SeasonBook nursery;
    REQUIRE(nursery.book.perform(Command{
        SetMatRuns{nursery.warm, on(8, 1), on(9, 1), {{{}, {}, on(8, 1), on(8, 31), Celsius{180}}}}}));
    const auto list = adviceIn(nursery, AdviceKind::Heat);
    REQUIRE(list.size() == 1);
    // 30 days of 0.759 kWh at 0.30.
    CHECK(list[0].what == "turn them off where nothing stands: most in Bench 1 · A 23 kWh");
    CHECK(list[0].evidence.find("23 of 23 kWh, 6.83 €") == 0);
}
