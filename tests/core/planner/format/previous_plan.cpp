#include "core/planner/format/problem_format.h"
#include "tests/support/planning_data.h"

using namespace warmbench;
using namespace warmbench::planner;

namespace {

const std::string sage = R"({ "id": "sage-1", "strike_day": 3, "stays": [
  { "zone": "tent-1", "from": 3, "to": 23, "slots": [[1, 0, 1, 1], [2, 0, 1, 1]] },
  { "zone": "open-1", "from": 23, "to": 31, "slots": [[0, 0, 1, 1], [0, 1, 1, 1]] } ] })";

std::string replaced(std::string text, const std::string& find, const std::string& replacement) {
    INFO("to be replaced: " << find);
    REQUIRE(text.find(find) != std::string::npos);
    return text.replace(text.find(find), find.size(), replacement);
}

/// The good problem in `version`, with fields added at its end.
std::string withFields(int version, const std::string& fields) {
    const std::string text = tests::fileText(tests::planningData("edited-problem.json"));
    return replaced(replaced(text, "\"version\": 1", "\"version\": " + std::to_string(version)),
                    "\"scatter_cost\": 0.50", "\"scatter_cost\": 0.50" + fields);
}

std::string withPlan(const std::string& placed) {
    return withFields(2, ", \"change_cost\": 2.50, \"previous\": [" + placed + "]");
}

Problem problemWith(const std::string& placed) {
    auto problem = readProblem(withPlan(placed));
    INFO((problem ? "" : problem.refusal().text()));
    REQUIRE(problem);
    return std::move(*problem);
}

void checkPlace(const std::string& text, const std::string& pointer) {
    const auto problem = readProblem(text);
    REQUIRE_FALSE(problem);
    INFO(problem.refusal().text());
    CHECK(problem.refusal().place == pointer);
}

} // namespace

TEST_CASE("The plan before and the cost of a change are read into the batches") {
    const Problem problem = problemWith(sage);
    CHECK(problem.version == 2);
    CHECK(problem.changeCost == 250);
    REQUIRE(problem.batches[0].previous);
    const std::vector<PlacedStay>& stays = *problem.batches[0].previous;
    REQUIRE(stays.size() == 2);
    CHECK((stays[1].zone == 1 && stays[1].from == 23 && stays[1].to == 31));
    CHECK(stays[0].slots == std::vector<SlotRect>{{1, 0, 1, 1}, {2, 0, 1, 1}});
    CHECK_FALSE(problem.batches[1].previous);
}

TEST_CASE("Either field of version 2 may be left out, and says nothing then") {
    const auto problem = readProblem(withFields(2, R"(, "previous": [])"));
    REQUIRE(problem);
    CHECK(problem->changeCost == 0);
    CHECK_FALSE(problem->batches[0].previous);
    CHECK(readProblem(withFields(2, R"(, "change_cost": 2.5)")));
}

TEST_CASE("Version 2 with neither of its fields is refused at the version") {
    checkPlace(withFields(2, ""), "/version");
}

TEST_CASE("What is written of a problem with a plan before is read as the same") {
    for (const std::string& placed :
         {sage, std::string(R"({ "id": "sage-1", "strike_day": 0, "stays": [] })")}) {
        const std::string text = problemText(problemWith(placed));
        const auto again = readProblem(text);
        REQUIRE(again);
        CHECK(again->batches[0].previous->size() == problemWith(placed).batches[0].previous->size());
        CHECK(again->changeCost == 250);
        CHECK(problemText(*again) == text);
    }
}

TEST_CASE("Version 1 is written without the fields of version 2") {
    const auto problem = readProblem(withFields(1, ""));
    REQUIRE(problem);
    const std::string text = problemText(*problem);
    CHECK(text.find("\"version\": 1,") != std::string::npos);
    CHECK(text.find("previous") == std::string::npos);
    CHECK(text.find("change_cost") == std::string::npos);
}

TEST_CASE("A batch that is no more is passed over in the plan before") {
    const Problem problem = problemWith(replaced(sage, "sage-1", "sage-0"));
    for (const Batch& batch : problem.batches) CHECK_FALSE(batch.previous);
}

TEST_CASE("A batch whose zone or slots are no more was placed all the same, and cannot be kept") {
    for (const auto& [find, replacement] :
         {std::pair("\"open-1\"", "\"open-9\""), std::pair("[0, 1, 1, 1]", "[4, 1, 1, 1]")}) {
        const Problem problem = problemWith(replaced(sage, find, replacement));
        REQUIRE(problem.batches[0].previous);
        CHECK(problem.batches[0].previous->empty());
    }
}

TEST_CASE("Days of the plan before may lie before the start") {
    const std::string earlier =
        replaced(replaced(sage, "\"strike_day\": 3", "\"strike_day\": -4"), "\"from\": 3", "\"from\": -4");
    CHECK(problemWith(earlier).batches[0].previous->front().from == -4);
}

TEST_CASE("The fields of version 2 are unknown to version 1") {
    checkPlace(withFields(1, ", \"previous\": []"), "/previous");
    checkPlace(withFields(1, ", \"change_cost\": 1"), "/change_cost");
    checkPlace(withFields(3, ""), "/version");
}

TEST_CASE("Each fault of the plan before is refused at its place") {
    const auto refusedAt = [](const char* find, const char* replacement, const char* pointer) {
        INFO(find << " as " << replacement);
        checkPlace(withPlan(replaced(sage, find, replacement)), pointer);
    };
    refusedAt("\"strike_day\": 3, ", "", "/previous/0/strike_day");
    refusedAt("\"strike_day\": 3", "\"strike_day\": 4", "/previous/0/strike_day");
    refusedAt("\"strike_day\": 3", "\"strike_day\": 3.5", "/previous/0/strike_day");
    refusedAt("\"id\": \"sage-1\"", "\"id\": 7", "/previous/0/id");
    refusedAt("\"stays\"", "\"stay\"", "/previous/0/stay");
    refusedAt("\"from\": 23", "\"since\": 23", "/previous/0/stays/1/since");
    refusedAt("\"to\": 31", "\"to\": 23", "/previous/0/stays/1/to");
    refusedAt("[0, 1, 1, 1]", "[0, 1, 1]", "/previous/0/stays/1/slots/1");
    refusedAt("[0, 1, 1, 1]", "[0, -1, 1, 1]", "/previous/0/stays/1/slots/1/1");
    refusedAt("\"zone\": \"open-1\"", "\"zone\": 1", "/previous/0/stays/1/zone");
    checkPlace(withPlan(sage + ", " + sage), "/previous/1/id");
    checkPlace(withFields(2, ", \"previous\": {}"), "/previous");
    checkPlace(withFields(2, ", \"change_cost\": -1"), "/change_cost");
    checkPlace(withFields(2, ", \"change_cost\": 0.001"), "/change_cost");
    checkPlace(withFields(2, ", \"change_costs\": 1"), "/change_costs");
}
