#include "edited_answer.h"

using namespace warmbench;
using namespace warmbench::planner;
using namespace warmbench::tests;

namespace {

struct Case {
    const char* what;
    std::initializer_list<Replacement> edits;
    const char* violation;
};

void checkCases(const Problem& problem, const std::string& answer, std::initializer_list<Case> cases) {
    const Verdict good = verifyAnswer(problem, answer);
    INFO(told(good));
    REQUIRE(good.valid());
    for (const Case& each : cases) {
        const Verdict verdict = verifyAnswer(problem, edited(answer, each.edits));
        INFO(each.what << ": " << told(verdict));
        CHECK_FALSE(verdict.valid());
        CHECK(hasViolation(verdict, each.violation));
        CHECK(verdict.summary() == "invalid " + std::to_string(verdict.violations.size()) + " violations");
    }
}

} // namespace

TEST_CASE("Every rule of stays, labour and stock is checked") {
    checkCases(
        readPlanning("p01-tiny.json"), tinyAnswer,
        {
            {"struck too late",
             {{"\"strike_day\": 1", "\"strike_day\": 4"}},
             "B: struck on day 4, outside 0..3"},
            {"struck beyond the horizon",
             {{"\"strike_day\": 1", "\"strike_day\": 10"}},
             "not within the horizon"},
            {"two on a day with hands for one",
             {{"\"strike_day\": 1", "\"strike_day\": 0"}},
             "day 0: 20 cuttings struck, capacity 10"},
            {"begins after its strike day",
             {{"\"from\": 1, \"to\": 6", "\"from\": 2, \"to\": 7"}},
             "B stay 0: begins on day 2, expected 1"},
            {"a gap between stays",
             {{"\"from\": 6, \"to\": 8", "\"from\": 7, \"to\": 9"}},
             "A stay 1: begins on day 7, expected 6"},
            {"too short for its degree-days",
             {{"\"from\": 1, \"to\": 6", "\"from\": 1, \"to\": 5"}},
             "B stay 0: lasts 4 days, expected 5"},
            {"longer than its days",
             {{"\"from\": 6, \"to\": 8", "\"from\": 6, \"to\": 9"}},
             "A stay 1: lasts 3 days, expected 2"},
            {"an empty stay",
             {{"\"from\": 6, \"to\": 8", "\"from\": 6, \"to\": 6"}},
             "/placed/0/stays/1: stay 6..6 is empty"},
            {"a stay of 401 days",
             {{"\"from\": 6, \"to\": 8", "\"from\": 6, \"to\": 407"}},
             "above 400 days"},
            {"a cover that is not accepted",
             {{"{ \"zone\": \"w\"", "{ \"zone\": \"a\""}},
             "A stay 1: cover tent of a is not accepted"},
            {"too cold", {{"[[0, 6, 15]]", "[]"}}, "A stay 0: 10 degrees in a on day 0, accepted 14 to 24"},
            {"too warm",
             {{"[0, 6, 15]", "[0, 6, 20]"}},
             "B stay 0: 20 degrees in a on day 1, accepted 14 to 16"},
            {"a change of the set-point during a stay",
             {{"[0, 6, 15]", "[0, 3, 15], [3, 6, 20]"}},
             "A stay 0: set-point of a changes on day 3 during the stay 0..6"},
            {"off before a stay's end", {{"[0, 6, 15]", "[0, 5, 15]"}}, "set-point of a changes on day 5"},
            {"two on one slot",
             {{"[0, 3, 1, 1]] } ] } ],", "[0, 2, 1, 1]] } ] } ],"}},
             "A stay 0 and B stay 0 both cover slot [0, 2] of a on day 1"},
            {"on a slot that is held",
             {{"\"zone\": \"a\", \"from\": 1", "\"zone\": \"w\", \"from\": 1"},
              {"[[0, 3, 1, 1]] } ] } ]", "[[0, 0, 1, 1]] } ] } ]"}},
             "held H1 and B stay 0 both cover slot [0, 0] of w on day 1"},
            {"two of its own on one slot",
             {{"[0, 1, 1, 1], [0, 2, 1, 1]] },", "[0, 1, 1, 1], [0, 1, 1, 1]] },"}},
             "A stay 0: two containers at [0, 1]"},
            {"beyond the grid",
             {{"[0, 3, 1, 1]] } ] } ],", "[0, 4, 1, 1]] } ] } ],"}},
             "leaves the grid of a"},
            {"far beyond the grid",
             {{"[0, 3, 1, 1]] } ] } ],", "[99999999999, 99999999999, 1, 1]] } ] } ],"}},
             "leaves the grid of a"},
            {"an enormous container",
             {{"[0, 3, 1, 1]] } ] } ],", "[0, 0, 999999999999, 999999999999]] } ] } ],"}},
             "is no footprint of the batch"},
            {"too few slots", {{", [0, 2, 1, 1]] },", "] },"}}, "A stay 0: 2 slots, expected 3"},
            {"no slots", {{"[[0, 3, 1, 1]]", "[]"}}, "B stay 0: 0 slots, expected 1"},
            {"stock that is not there yet",
             {{"{ \"id\": \"B\"",
               "{ \"id\": \"C\", \"strike_day\": 4, \"stays\": [ { \"zone\": \"w\", \"from\": 4, \"to\": 6, "
               "\"slots\": [[0, 0, 1, 1]] } ] }, { \"id\": \"B\""},
              {"{ \"id\": \"C\", \"reason\": \"no cuttings\" }", ""}},
             "stock s: 5 cuttings struck up to day 4, only 0 to be had"},
        });
}

TEST_CASE("Every batch stands once, and a mat keeps its form") {
    checkCases(
        readPlanning("p01-tiny.json"), tinyAnswer,
        {
            {"a batch that is forgotten",
             {{"{ \"id\": \"C\", \"reason\": \"no cuttings\" }", ""}},
             "C: neither placed nor unplaced"},
            {"a batch twice",
             {{"\"id\": \"C\"", "\"id\": \"B\""}},
             "/unplaced/0: batch B is already at /placed/1"},
            {"an unknown batch", {{"\"id\": \"C\"", "\"id\": \"D\""}}, "/unplaced/0: unknown batch \"D\""},
            {"no reason", {{"no cuttings", ""}}, "/unplaced/0/reason: found \"\""},
            {"an unknown zone",
             {{"\"zone\": \"w\"", "\"zone\": \"v\""}},
             "/placed/0/stays/1/zone: unknown zone"},
            {"a missing stay",
             {{"] },\n      { \"zone\": \"w\", \"from\": 6, \"to\": 8, \"slots\": [[0, 1, 1, 1], "
               "[0, 2, 1, 1], [0, 3, 1, 1]] } ] },",
               "] } ] },"}},
             "/placed/0/stays: found 1 entries, expected 2"},
            {"an unknown field of a stay",
             {{"\"to\": 8", "\"until\": 8, \"to\": 8"}},
             "/placed/0/stays/1/until"},
            {"a run at no set-point",
             {{"[0, 6, 15]", "[0, 6, 16]"}},
             "/mats/0/runs/0/2: 16 is no set-point of a"},
            {"a run of no days", {{"[0, 6, 15]", "[0, 0, 15]"}}, "/mats/0/runs/0: empty or reversed"},
            {"a run beyond the horizon", {{"[0, 6, 15]", "[0, 11, 15]"}}, "/mats/0/runs/0/1: found 11"},
            {"runs that overlap", {{"[0, 6, 15]", "[0, 6, 15], [5, 7, 15]"}}, "/mats/0/runs/1: runs overlap"},
            {"runs out of order", {{"[0, 6, 15]", "[3, 6, 15], [0, 3, 15]"}}, "/mats/0/runs/1: runs overlap"},
            {"a zone's mat twice",
             {{"[[0, 6, 15]] }", "[[0, 6, 15]] }, { \"zone\": \"a\", \"runs\": [] }"}},
             "/mats/1/zone: a stands twice"},
            {"a mat where there is none",
             {{"{ \"zone\": \"a\", \"runs\"", "{ \"zone\": \"w\", \"runs\""}},
             "15 is no set-point of w"},
            {"another format", {{"planning-answer", "planning-problem"}}, "/format: found"},
            {"another version", {{"\"version\": 1", "\"version\": 2"}}, "/version: found 2"},
            {"a version that is not a number",
             {{"\"version\": 1", "\"version\": true"}},
             "/version: found true"},
            {"an unknown field", {{"\"bound\"", "\"seconds\": 1, \"bound\""}}, "/seconds: unknown field"},
            {"a missing field", {{",\n  \"bound\": 11.8", ""}}, "/bound: missing"},
            {"no list",
             {{"\"unplaced\": [ { \"id\": \"C\", \"reason\": \"no cuttings\" } ]", "\"unplaced\": {}"}},
             "/unplaced: found {}, expected a list"},
            {"no JSON", {{"\"bound\": 11.8", "\"bound\": 11.8,"}}, "not JSON"},
        });
}

TEST_CASE("Costs and the bound that an answer states are compared with what they are") {
    checkCases(
        readPlanning("p01-tiny.json"), tinyAnswer,
        {
            {"a wrong total", {{"11.8,", "11.7,"}}, "/cost/total: found 11.7, expected 11.8"},
            {"a wrong part", {{"\"late\": 2", "\"late\": 1.999"}}, "/cost/late: found 1.999, expected 2"},
            {"four decimals", {{"\"late\": 2", "\"late\": 2.0001"}}, "expected at most 3 decimals"},
            {"a missing part", {{", \"scatter\": 0", ""}}, "/cost/scatter: missing"},
            {"a part in quotes", {{"\"late\": 2", "\"late\": \"2\""}}, "/cost/late: found \"2\""},
            {"a bound above the total",
             {{"\"bound\": 11.8", "\"bound\": 11.8000000000000000001"}},
             "/bound: 11.8000000000000000001 is above the total 11.8"},
            {"a huge bound", {{"\"bound\": 11.8", "\"bound\": 1e400"}}, "is above the total"},
            {"no bound", {{"\"bound\": 11.8", "\"bound\": null"}}, "/bound: found null"},
            {"NaN", {{"\"bound\": 11.8", "\"bound\": NaN"}}, "expected a finite number"},
            {"minus infinity", {{"\"bound\": 11.8", "\"bound\": -Infinity"}}, "expected a finite number"},
        });
}

TEST_CASE("Pins, blocked slots and held batches are kept") {
    checkCases(readPlanning("example-problem.json"), fileText(planningData("example-answer.json")),
               {
                   {"another day than pinned",
                    {{"\"strike_day\": 3", "\"strike_day\": 4"}},
                    "T14-a: struck on day 4, pinned to 3"},
                   {"another zone than pinned",
                    {{"\"zone\": \"north-1\", \"from\"", "\"zone\": \"wean-1\", \"from\""}},
                    "T14-a stay 0: stands in wean-1, pinned to north-1"},
                   {"a blocked slot", {{"[1, 0, 1, 1]", "[0, 0, 1, 1]"}}, "covers the blocked slot [0, 0]"},
                   {"a pinned batch that is left out",
                    {{"\"placed\": [{\"id\"", "\"placed\": [{\"id\": \"x\"}, {\"id\""},
                     {"\"unplaced\": []", "\"unplaced\": [{\"id\": \"T14-a\", \"reason\": \"no room\"}]"},
                     {"{\"id\": \"T14-a\", \"strike_day\"", "{\"id\": \"y\", \"strike_day\""}},
                    "T14-a: is pinned but not placed"},
                   {"what is held stands too cold", {{"[0, 23, 18.0]", "[1, 23, 18.0]"}}, "held 26-W50-02: "},
                   {"the mat changes under what is held",
                    {{"[0, 23, 18.0]", "[0, 2, 18.0], [2, 23, 21.0]"}},
                    "held 26-W50-02: set-point of north-1 changes on day 2"},
               });
}

TEST_CASE("Pinned slots are a set") {
    const Problem problem = [] {
        auto read =
            readProblem(edited(fileText(planningData("p01-tiny.json")),
                               {{"\"containers\": 3", "\"pin\": {\"zone\": \"a\", \"slots\": [[0, 2, 1, 1], "
                                                      "[0, 0, 1, 1], [0, 1, 1, 1]]}, \"containers\": 3"}}));
        REQUIRE(read);
        return std::move(*read);
    }();
    checkCases(problem, tinyAnswer,
               {{"one slot aside",
                 {{"[0, 2, 1, 1]] },", "[0, 3, 1, 1]] },"}},
                 "A stay 0: does not stand on its pinned slots"}});
}

TEST_CASE("An answer that is hostile or no answer is invalid, not a crash") {
    const Problem problem = readPlanning("p01-tiny.json");
    for (const std::string& text :
         {std::string{}, std::string{"null"}, std::string{"[]"}, std::string{"{}"},
          std::string(1'000'000, '['), std::string{"{\"format\": \"\xFF\"}"}, tinyAnswer.substr(0, 500),
          edited(tinyAnswer, {{"\"placed\": [", "\"placed\": [1, null, [], {}, \"x\","}}),
          edited(tinyAnswer, {{"\"mats\": [", "\"mats\": [1, null, [], {}, {\"zone\": [], \"runs\": 3},"}}),
          edited(tinyAnswer, {{"\"id\": \"A\"", "\"id\": {}"}}),
          edited(tinyAnswer, {{"\"strike_day\": 0", "\"strike_day\": -999999999999"}}),
          edited(tinyAnswer, {{"\"from\": 0, \"to\": 6", "\"from\": 999999999990, \"to\": 999999999996"}})}) {
        const Verdict verdict = verifyAnswer(problem, text);
        INFO(told(verdict));
        CHECK_FALSE(verdict.valid());
    }
    const Verdict missing = verifyAnswerFile(problem, planningData("nowhere.json"));
    CHECK(hasViolation(missing, "nowhere.json: cannot be opened"));
}

TEST_CASE("A container put a million times on one slot ends the check early") {
    std::string slots = "[0, 3, 1, 1]";
    for (int i = 0; i < 1'000'000; ++i) slots += ",[0,3,1,1]";
    const Verdict verdict = verifyAnswer(readPlanning("p01-tiny.json"),
                                         edited(tinyAnswer, {{"[[0, 3, 1, 1]]", "[" + slots + "]"}}));
    CHECK(verdict.violations.size() == mostViolations);
}
