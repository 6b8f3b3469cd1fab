#include "core/planner/format/problem_format.h"
#include "tests/support/planning_data.h"

using namespace warmbench;
using namespace warmbench::planner;
using warmbench::tests::planningData;

TEST_CASE("Every malformed problem is refused at its place, in one line") {
    for (const auto& bad : tests::badProblems()) {
        INFO(bad.file << ": " << bad.what);
        const auto path = planningData("bad/" + bad.file);
        const auto problem = readProblemFile(path);
        REQUIRE_FALSE(problem);
        CHECK(problem.refusal().place == path.string() + ": " + bad.pointer);
        CHECK(problem.refusal().text().find('\n') == std::string::npos);
    }
}

TEST_CASE("The problem of the specification is read to its last field") {
    const auto read = readProblemFile(planningData("example-problem.json"));
    REQUIRE(read);
    const Problem& problem = *read;
    CHECK(problem.start == "2027-02-01");
    CHECK(problem.days == 70);
    CHECK(problem.scatterCost == 50);
    CHECK(problem.strikeCapacity == std::vector<std::int64_t>{400, 400, 400, 400, 400, 0, 0});

    REQUIRE(problem.zones.size() == 2);
    const Zone& tent = problem.zones[0];
    CHECK(tent.id == "north-1");
    CHECK((tent.rows == 6 && tent.cols == 16));
    CHECK(tent.blocked.size() == 96);
    CHECK(std::count(tent.blocked.begin(), tent.blocked.end(), 1) == 1);
    CHECK(tent.blocked.front() == 1);
    CHECK(tent.cover == Cover::Tent);
    CHECK(tent.floor == std::vector<std::int64_t>{110});
    CHECK(tent.hasMat);
    REQUIRE(tent.setPoints.size() == 3);
    CHECK((tent.setPoints[2].tenths == 210 && tent.setPoints[2].costPerDay == 78));
    CHECK_FALSE(problem.zones[1].hasMat);
    CHECK(problem.zones[1].floor == std::vector<std::int64_t>{110, 110, 115});

    REQUIRE(problem.stocks.size() == 1);
    CHECK(problem.stocks[0].id == "phlomis-row-2");
    REQUIRE(problem.stocks[0].steps.size() == 2);
    CHECK((problem.stocks[0].steps[1].day == 14 && problem.stocks[0].steps[1].total == 200));

    REQUIRE(problem.held.size() == 1);
    const Held& held = problem.held[0];
    CHECK(held.id == "26-W50-02");
    CHECK(held.zone == 0);
    CHECK(held.slots == std::vector<SlotRect>{{0, 1, 1, 1}, {0, 2, 1, 1}});
    CHECK((held.low == 150 && held.high == 220));
    CHECK_FALSE(held.duration.days);
    CHECK((held.duration.degreeDays == 615 && held.duration.base == 50 && !held.duration.cap));

    REQUIRE(problem.batches.size() == 1);
    const Batch& batch = problem.batches[0];
    CHECK(batch.id == "T14-a");
    CHECK(batch.containers == 12);
    CHECK(batch.footprint == Footprint{1, 1});
    CHECK_FALSE(batch.turn);
    CHECK(batch.cuttings == 96);
    CHECK(batch.stock == 0);
    CHECK((batch.strikeFirst == 0 && batch.strikeLast == 20));
    CHECK(batch.due == 60);
    CHECK((batch.value == 9600 && batch.latePerDay == 400 && batch.moveCost == 120));
    REQUIRE(batch.stays.size() == 2);
    CHECK(batch.stays[0].accepts(Cover::Tent));
    CHECK(batch.stays[0].accepts(Cover::Bag));
    CHECK_FALSE(batch.stays[0].accepts(Cover::Open));
    CHECK((batch.stays[0].low == 160 && batch.stays[0].ideal == 180 && batch.stays[0].high == 240));
    CHECK(batch.stays[0].offIdeal == 5);
    CHECK((batch.stays[0].duration.degreeDays == 2600 && batch.stays[0].duration.cap == 240));
    CHECK(batch.stays[1].duration.days == 7);
    REQUIRE(batch.pin);
    CHECK((batch.pin->strikeDay == 3 && batch.pin->zone == 0 && batch.pin->slots.empty()));
}

TEST_CASE("Every sample and published problem is read") {
    for (const char* folder : {"", "orlib"}) {
        for (const auto& entry : std::filesystem::directory_iterator(planningData(folder))) {
            const auto name = entry.path().filename().string();
            if (entry.path().extension() != ".json" || name == "example-answer.json") continue;
            const auto problem = readProblemFile(entry.path());
            INFO(name << (problem ? "" : problem.refusal().text()));
            CHECK(problem);
        }
    }
}
