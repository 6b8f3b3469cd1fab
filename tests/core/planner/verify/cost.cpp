#include "edited_answer.h"

using namespace warmbench;
using namespace warmbench::planner;
using namespace warmbench::tests;

namespace {

/// One mat zone and one open zone over a horizon of 10 days, one batch; costs are made to differ.
const std::string problemText = R"({
  "format": "warmbench-planning-problem", "version": 1, "start": "2027-02-01", "days": 10,
  "zones": [
    { "id": "mat", "rows": 3, "cols": 4, "cover": "tent", "floor_c": [10, 17, 12],
      "mat": { "set_points_c": [5, 15, 20], "cost_per_day": [0.1, 0.25, 0.5] } },
    { "id": "cool", "rows": 3, "cols": 4, "cover": "tent", "floor_c": 10 } ],
  "batches": [
    { "id": "b", "containers": 2, "footprint": [1, 2], "turn": true, "cuttings": 0, "strike": [0, 12], "due": 6,
      "value": 9.99, "late_per_day": 1.5, "move_cost": 0.7,
      "stays": [
        { "covers": ["tent"], "low_c": 0, "ideal_c": 16.5, "high_c": 30, "off_ideal_per_degree_day": 0.03,
          "base_c": 5, "cap_c": 16, "degree_days": 31 },
        { "covers": ["tent"], "low_c": 0, "ideal_c": 11, "high_c": 30, "off_ideal_per_degree_day": 0.01, "days": 2 } ] } ],
  "scatter_cost": 0.4
})";

Problem problem() {
    auto read = readProblem(problemText);
    REQUIRE(read);
    return std::move(*read);
}

struct Plan {
    int strike = 0;
    int weanFrom = 0;
    int end = 0;
    std::string rootingSlots = "[[0, 0, 1, 2], [1, 0, 1, 2]]";
    std::string weaningZone = "cool";
    std::string weaningSlots = "[[0, 0, 1, 2], [1, 0, 1, 2]]";
    std::string runs = {};
};

ReckonedCost costOf(const Plan& plan, bool mustBeValidButForItsCost = true) {
    const std::string answer =
        R"({"format": "warmbench-planning-answer", "version": 1, "placed": [{"id": "b", "strike_day": )" +
        std::to_string(plan.strike) + R"(, "stays": [{"zone": "mat", "from": )" +
        std::to_string(plan.strike) + R"(, "to": )" + std::to_string(plan.weanFrom) + R"(, "slots": )" +
        plan.rootingSlots + R"(}, {"zone": ")" + plan.weaningZone + R"(", "from": )" +
        std::to_string(plan.weanFrom) + R"(, "to": )" + std::to_string(plan.end) + R"(, "slots": )" +
        plan.weaningSlots + R"(}]}], "unplaced": [], "mats": [{"zone": "mat", "runs": [)" + plan.runs +
        R"(]}], "cost": {"total": 0, "unplaced": 0, "late": 0, "off_ideal": 0, "mats": 0, "moves": 0, "scatter": 0},
            "bound": -1})";
    const Verdict verdict = verifyAnswer(problem(), answer);
    INFO(told(verdict));
    for (const std::string& sentence : verdict.violations)
        if (mustBeValidButForItsCost) CHECK(sentence.rfind("/cost/", 0) == 0);
    return verdict.cost;
}

std::int64_t thousandths(WideCost cost) {
    return static_cast<std::int64_t>(cost);
}

} // namespace

TEST_CASE("A batch that does not stand as in the plan before costs a change, whatever is different") {
    Problem problem = readPlanning("p01-tiny.json");
    problem.version = 2;
    problem.changeCost = 70;
    const std::vector<PlacedStay> a{{0, 0, 6, {{0, 2, 1, 1}, {0, 0, 1, 1}, {0, 1, 1, 1}}},
                                    {1, 6, 8, {{0, 1, 1, 1}, {0, 2, 1, 1}, {0, 3, 1, 1}}}};
    const auto changes = [&](const std::vector<PlacedStay>& ofA) {
        problem.batches[0].previous = ofA;
        return static_cast<std::int64_t>(
            verifyAnswer(problem, edited(tinyAnswer, {{"\"version\": 1", "\"version\": 2"},
                                                      {"\"scatter\": 0", "\"scatter\": 0, \"changes\": 0"}}))
                .cost.changes);
    };
    const auto with = [&](auto change) {
        std::vector<PlacedStay> other = a;
        change(other);
        return changes(other);
    };
    CHECK(changes(a) == 0);
    CHECK(with([](auto& stays) { stays[1].to = 9; }) == 0);
    CHECK(with([](auto& stays) { stays[1].from = 7; }) == 700);
    CHECK(with([](auto& stays) { stays[0].zone = 1; }) == 700);
    CHECK(with([](auto& stays) { stays[0].slots[0].col = 3; }) == 700);
    CHECK(with([](auto& stays) { stays.pop_back(); }) == 700);
    CHECK(with([](auto& stays) { stays.clear(); }) == 700);
    // One that is left out now and was placed then; and one that is new costs nothing.
    problem.batches[2].previous.emplace();
    CHECK(changes(a) == 700);
}

TEST_CASE("A stay gains degree-days between base and cap, from the warmer of set-point and floor") {
    // Off: 10, 17 and 12, 12, ... degrees gain 5, 11 (capped at 16) and 7, 7, 7: 31 after 5 days, 30 after 4.
    costOf({.strike = 0, .weanFrom = 5, .end = 7});
    // From day 1 on, at 15: 11 (floor 17), 10, 10.
    costOf({.strike = 1, .weanFrom = 4, .end = 6, .runs = "[1, 4, 15]"});
}

TEST_CASE("Mats, lateness, distance from the ideal, moves and scatter cost what the rules say") {
    // At 15 from day 0: 10, 11, 10 gain 31 in 3 days. Temperatures 15, 17, 15 are 1.5 + 0.5 + 1.5 off 16.5.
    const ReckonedCost cost = costOf({.strike = 0, .weanFrom = 3, .end = 5, .runs = "[0, 3, 15]"});
    CHECK(thousandths(cost.mats) == 750);
    CHECK(thousandths(cost.offIdeal) ==
          35 * 3 + 2 * 10); // 3.5 degree-days at 0.03, and 2 days of 1 degree at 0.01
    CHECK(thousandths(cost.moves) == 700);
    CHECK(thousandths(cost.late) == 0);
    CHECK(thousandths(cost.scatter) == 0);
    CHECK(thousandths(cost.total()) == 750 + 125 + 700);
}

TEST_CASE("A last stay that ends on the due day is in time, a day later is late") {
    CHECK(thousandths(costOf({.strike = 1, .weanFrom = 4, .end = 6, .runs = "[1, 4, 15]"}).late) == 0);
    // Struck on day 2 at 15: 10, 10, 10 and 10 are needed.
    CHECK(thousandths(costOf({.strike = 2, .weanFrom = 6, .end = 8, .runs = "[2, 6, 15]"}).late) == 3000);
}

TEST_CASE("A container that is turned in place has moved, one that keeps its slots has not") {
    const Plan kept{.strike = 0, .weanFrom = 5, .end = 7, .weaningZone = "mat"};
    CHECK(thousandths(costOf(kept).moves) == 0);
    Plan swapped = kept;
    swapped.weaningSlots = "[[1, 0, 1, 2], [0, 0, 1, 2]]";
    CHECK(thousandths(costOf(swapped).moves) == 0);
    Plan turned = kept;
    turned.weaningSlots = "[[0, 0, 2, 1], [0, 1, 2, 1]]";
    CHECK(thousandths(costOf(turned).moves) == 700);
    Plan elsewhere = kept;
    elsewhere.weaningZone = "cool";
    CHECK(thousandths(costOf(elsewhere).moves) == 700);
}

TEST_CASE("Containers are connected by a part of an edge, not by a corner; each stay is counted") {
    Plan plan{.strike = 0, .weanFrom = 5, .end = 7, .weaningZone = "mat"};
    const auto scatter = [&](const char* slots) {
        plan.rootingSlots = plan.weaningSlots = slots;
        return thousandths(costOf(plan).scatter);
    };
    CHECK(scatter("[[0, 0, 1, 2], [0, 2, 1, 2]]") == 0);
    CHECK(scatter("[[0, 0, 1, 2], [1, 1, 1, 2]]") == 0);
    CHECK(scatter("[[0, 0, 1, 2], [1, 2, 1, 2]]") == 800);
    CHECK(scatter("[[0, 0, 1, 2], [2, 0, 1, 2]]") == 800);
    CHECK(scatter("[[0, 2, 1, 2], [1, 0, 1, 2]]") ==
          800); // the end of a row is no neighbour of the next row's start
}

TEST_CASE("Empty zones that run are paid for, and the last state goes on beyond the horizon at no cost") {
    Plan plan{.strike = 0, .weanFrom = 3, .end = 5, .runs = "[0, 3, 15], [6, 10, 20]"};
    CHECK(thousandths(costOf(plan).mats) == 750 + 2000);
    // Struck on day 9, the last, at 15: 10 a day. It stands on until day 13, paid for one day.
    Plan last{.strike = 9, .weanFrom = 13, .end = 15, .runs = "[9, 10, 15]"};
    const ReckonedCost cost = costOf(last);
    CHECK(thousandths(cost.mats) == 250);
    CHECK(thousandths(cost.late) == 9 * 1500);
    CHECK(thousandths(cost.offIdeal) == 4 * 15 * 3 + 2 * 10);
}

TEST_CASE("A change from off to a set-point below the floor is a change all the same") {
    const Plan plan{.strike = 0, .weanFrom = 5, .end = 7, .runs = "[2, 5, 5]"};
    const ReckonedCost cost = costOf(plan, false);
    CHECK(thousandths(cost.mats) == 300);
    const Plan throughout{.strike = 0, .weanFrom = 5, .end = 7, .runs = "[0, 5, 5]"};
    CHECK(thousandths(costOf(throughout).mats) == 500);
}

TEST_CASE("The optima of the specification and of the hand reckoning are found right") {
    const Verdict example =
        verifyAnswer(readPlanning("example-problem.json"), fileText(planningData("example-answer.json")));
    CHECK(example.summary() == "valid total=13.85 bound=13.849");
    const Verdict tiny = verifyAnswer(readPlanning("p01-tiny.json"), tinyAnswer);
    CHECK(tiny.summary() == "valid total=11.8 bound=11.8");
}

TEST_CASE("Costs beyond 64 bits are reckoned exactly") {
    CHECK(costText(WideCost{123456789012345678} * 1000000) == "123456789012345678000");
    CHECK(costText(-1) == "-0.001");
    CHECK(costText(0) == "0");
    CHECK(costText(13850) == "13.85");
}
