#include "core/exchange/file/file.h"
#include "core/planner/format/answer_format.h"
#include "core/planner/format/problem_format.h"
#include "tests/support/planning_data.h"

using namespace warmbench;
using namespace warmbench::planner;
using warmbench::tests::fileText;
using warmbench::tests::planningData;

namespace {

Problem tinyProblem() {
    auto problem = readProblemFile(planningData("p01-tiny.json"));
    REQUIRE(problem);
    return std::move(*problem);
}

/// The best plan of p01-tiny, as its hand reckoning has it.
Answer tinyAnswer() {
    Answer answer;
    answer.placed = {{0,
                      0,
                      {{0, 0, 6, {{0, 0, 1, 1}, {0, 1, 1, 1}, {0, 2, 1, 1}}},
                       {1, 6, 8, {{0, 0, 1, 1}, {0, 1, 1, 1}, {0, 2, 1, 1}}}}},
                     {1, 1, {{0, 1, 6, {{0, 3, 1, 1}}}}}};
    answer.unplaced = {{2, "stock \"s\" has nothing before day 5"}};
    answer.mats = {{0, {{0, 6, 0}}}};
    answer.cost = {
        .unplaced = 5000, .late = 2000, .offIdeal = 1500, .mats = 3000, .moves = 300, .scatter = 0};
    answer.bound = 11799;
    return answer;
}

const char* const tinyText = R"({
  "format": "warmbench-planning-answer", "version": 1,
  "placed": [
    { "id": "A", "strike_day": 0, "stays": [
      { "zone": "a", "from": 0, "to": 6, "slots": [[0, 0, 1, 1], [0, 1, 1, 1], [0, 2, 1, 1]] },
      { "zone": "w", "from": 6, "to": 8, "slots": [[0, 0, 1, 1], [0, 1, 1, 1], [0, 2, 1, 1]] } ] },
    { "id": "B", "strike_day": 1, "stays": [
      { "zone": "a", "from": 1, "to": 6, "slots": [[0, 3, 1, 1]] } ] } ],
  "unplaced": [
    { "id": "C", "reason": "stock \"s\" has nothing before day 5" } ],
  "mats": [
    { "zone": "a", "runs": [[0, 6, 15]] } ],
  "cost": { "total": 11.8, "unplaced": 5, "late": 2, "off_ideal": 1.5, "mats": 3, "moves": 0.3, "scatter": 0 },
  "bound": 11.799
}
)";

std::string withTiny(const std::string& find, const std::string& replacement) {
    std::string text = tinyText;
    REQUIRE(text.find(find) != std::string::npos);
    return text.replace(text.find(find), find.size(), replacement);
}

} // namespace

TEST_CASE("An answer is written with exact decimals, a line for each stay") {
    CHECK(answerText(tinyProblem(), tinyAnswer()) == tinyText);
}

TEST_CASE("An answer to a problem of version 2 has the cost of changes as well") {
    Problem problem = tinyProblem();
    problem.version = 2;
    Answer answer = tinyAnswer();
    answer.cost.changes = 1500;
    const std::string text = answerText(problem, answer);
    CHECK(text.find("\"version\": 2") != std::string::npos);
    CHECK(text.find("\"total\": 13.3,") != std::string::npos);
    CHECK(text.find("\"scatter\": 0, \"changes\": 1.5 }") != std::string::npos);
    const auto read = readAnswer(text, problem);
    REQUIRE(read);
    CHECK(read->cost == answer.cost);
    CHECK(readAnswer(text, tinyProblem()).refusal().place == "/version");
}

TEST_CASE("What is written of an answer is read as the same answer") {
    const Problem problem = tinyProblem();
    const auto answer = readAnswer(tinyText, problem);
    REQUIRE(answer);
    CHECK(answer->cost == tinyAnswer().cost);
    CHECK(answer->bound == 11799);
    CHECK(answer->placed[0].stays[1].slots == tinyAnswer().placed[0].stays[1].slots);
    CHECK(answerText(problem, *answer) == tinyText);
}

TEST_CASE("The answer of the specification is read") {
    const auto problem = readProblemFile(planningData("example-problem.json"));
    REQUIRE(problem);
    const auto answer = readAnswer(fileText(planningData("example-answer.json")), *problem);
    REQUIRE(answer);
    CHECK(answer->cost.total() == 13850);
    CHECK(answer->bound == 13849);
    CHECK(answer->placed[0].stays[0].slots.size() == 12);
    CHECK((answer->mats[0].runs[0].to == 23 && answer->mats[0].runs[0].setPoint == 1));
}

TEST_CASE("A bound with more decimals is rounded down") {
    const Problem problem = tinyProblem();
    const auto bound = [&](const std::string& text) {
        const auto answer = readAnswer(withTiny("11.799", text), problem);
        REQUIRE(answer);
        return answer->bound;
    };
    CHECK(bound("11.7999999999999999999999999999") == 11799);
    CHECK(bound("0.0004") == 0);
    CHECK(bound("-0.0004") == -1);
    CHECK(bound("-1.5") == -1500);
    CHECK(bound("1e-400") == 0);
    CHECK(bound("1.18e1") == 11800);
}

TEST_CASE("An answer that is not in the format is refused at its place") {
    const Problem problem = tinyProblem();
    const auto place = [&](const std::string& find, const std::string& replacement) {
        const auto answer = readAnswer(withTiny(find, replacement), problem);
        REQUIRE_FALSE(answer);
        return answer.refusal().place;
    };
    CHECK(place("\"bound\": 11.799", "\"bound\": 1.5,") == "");
    CHECK(place("answer\"", "problem\"") == "/format");
    CHECK(place("\"version\": 1", "\"version\": 2") == "/version");
    CHECK(place("\"id\": \"B\"", "\"id\": \"D\"") == "/placed/1/id");
    CHECK(place("\"id\": \"B\"", "\"id\": \"A\"") == "/placed/1/id");
    CHECK(place("\"strike_day\": 1", "\"strike_day\": -1") == "/placed/1/strike_day");
    CHECK(place("\"zone\": \"w\"", "\"zone\": \"v\"") == "/placed/0/stays/1/zone");
    CHECK(place("[0, 3, 1, 1]", "[0, 4, 1, 1]") == "/placed/1/stays/0/slots/0");
    CHECK(place("\"to\": 8, ", "") == "/placed/0/stays/1/to");
    CHECK(place("\"reason\": \"stock \\\"s\\\" has nothing before day 5\"", "\"reason\": \"\"") ==
          "/unplaced/0/reason");
    CHECK(place("{ \"id\": \"C\", \"reason\": \"stock \\\"s\\\" has nothing before day 5\" }", "") ==
          "/unplaced");
    CHECK(place("[0, 6, 15]", "[0, 6, 15.5]") == "/mats/0/runs/0/2");
    CHECK(place("\"late\": 2", "\"late\": 2.0001") == "/cost/late");
    CHECK(place("\"late\": 2", "\"late\": 3") == "/cost/total");
    CHECK(place("11.799", "NaN") == "/bound");
}

TEST_CASE("A problem that is written is read as the same problem") {
    for (const char* name :
         {"example-problem.json", "edited-problem.json", "p01-tiny.json", "p05-pinned.json", "p08-trays.json",
          "p10-month.json", "orlib/ngcut3.json", "orlib/u120_00.json"}) {
        INFO(name);
        const auto problem = readProblemFile(planningData(name));
        REQUIRE(problem);
        const std::string text = problemText(*problem);
        const auto again = readProblem(text);
        INFO((again ? "" : again.refusal().text()));
        REQUIRE(again);
        CHECK(problemText(*again) == text);
        CHECK(again->batches.size() == problem->batches.size());
        CHECK(again->held.size() == problem->held.size());
    }
}

TEST_CASE("Ids with quotes, other scripts and half characters survive") {
    Problem problem = tinyProblem();
    problem.batches[0].id = "Sal\"bei\\ \xC3\xA9 \xED\xA0\x80 \xF0\x9F\x8C\xB1\n";
    const auto answer = readAnswer(answerText(problem, tinyAnswer()), problem);
    REQUIRE(answer);
    CHECK(answer->placed[0].batch == 0);
    const auto again = readProblem(problemText(problem));
    REQUIRE(again);
    CHECK(again->batches[0].id == problem.batches[0].id);
}
