#include "core/planner/format/problem_format.h"
#include "tests/support/planning_data.h"

using namespace warmbench;
using namespace warmbench::planner;

namespace {

/// The text of the good problem with one place of it replaced.
std::string edited(const std::string& find, const std::string& replacement) {
    std::string text = tests::fileText(tests::planningData("edited-problem.json"));
    const std::size_t place = text.find(find);
    INFO("to be replaced: " << find);
    REQUIRE(place != std::string::npos);
    REQUIRE(text.find(find, place + 1) == std::string::npos);
    return text.replace(place, find.size(), replacement);
}

/// `[11, 11, ...]`.
std::string temperatures(int count) {
    std::string text = "[";
    for (int i = 0; i < count; ++i) text += i == 0 ? "11" : ", 11";
    return text + "]";
}

struct Edit {
    const char* what;
    const char* find;
    const char* replacement;
};

struct BadEdit {
    const char* what;
    const char* find;
    const char* replacement;
    const char* pointer;
};

// clang-format off
const BadEdit badEdits[] = {
    {"a file that ends in the middle", R"("held": [)", R"("held": )", ""},
    {"text after the problem", R"("scatter_cost": 0.50
})", R"("scatter_cost": 0.50
} 1)", ""},
    {"a trailing comma", R"("version": 1,
)", R"("version": 1,,
)", ""},
    {"a number with a leading zero", R"("days": 70)", R"("days": 070)", ""},
    {"a number without digits after the point", R"("due": 60)", R"("due": 60.)", ""},
    {"a line end inside a string", R"(sage-1")", R"(sage
1")", ""},
    {"single quotes", R"("open-1", "rows")", R"('open-1', "rows")", ""},
    {"a comment", R"("version": 1,)", R"("version": 1, // one
)", ""},
    {"an unknown escape", R"(sage-1")", R"(sage\x1")", ""},
    {"an unknown field of the problem", R"("scatter_cost")", R"("scatter_costs")", "/scatter_costs"},
    {"an unknown field of a zone", R"("cover": "open")", R"("cover": "open", "blockd": [])", "/zones/1/blockd"},
    {"an unknown field of a mat", R"("cost_per_day")", R"("costs": 1, "cost_per_day")", "/zones/0/mat/costs"},
    {"an unknown field of a stock", R"("id": "sage-row-2")", R"("id": "sage-row-2", "taxon": "x")", "/stocks/0/taxon"},
    {"an unknown field of something held", R"("days": 14)", R"("days": 14, "cover": "open")", "/held/1/cover"},
    {"an unknown field of a batch", R"("containers": 12)", R"("containers": 12, "pots": 3)", "/batches/0/pots"},
    {"an unknown field of a stay", R"("days": 8)", R"("days": 8, "day": 8)", "/batches/0/stays/1/day"},
    {"an unknown field of a pin", R"({ "strike_day": 3)", R"({ "to": 9, "strike_day": 3)", "/batches/0/pin/to"},
    {"a key with a slash and a tilde", R"("days": 70)", R"("a/b~c": 0, "days": 70)", "/a~1b~0c"},
    {"no format", R"("format": "warmbench-planning-problem", )", "", "/format"},
    {"no version", R"("version": 1,)", "", "/version"},
    {"no start", R"("start": "2027-02-01", )", "", "/start"},
    {"no days", R"("days": 70,)", "", "/days"},
    {"no cover", R"("cover": "open", )", "", "/zones/1/cover"},
    {"no floor_c", R"(, "floor_c": 11.0,
)", R"(,
)", "/zones/0/floor_c"},
    {"no set_points_c", R"("set_points_c": [16.0, 18.5, 21.0], )", "", "/zones/0/mat/set_points_c"},
    {"no cuttings of a stock", R"(, "cuttings": [[3, 50]])", "", "/stocks/1/cuttings"},
    {"no low_c of something held", R"("low_c": 15.0, )", "", "/held/0/low_c"},
    {"no base_c beside degree_days", R"("base_c": 5.0, )", "", "/held/0/base_c"},
    {"no due", R"("strike": [0, 20], "due": 60,)", R"("strike": [0, 20],)", "/batches/0/due"},
    {"no value", R"("value": 45.5, )", "", "/batches/1/value"},
    {"no ideal_c", R"("ideal_c": 12.0, )", "", "/batches/0/stays/1/ideal_c"},
    {"a field that stands twice", R"("days": 70,)", R"("days": 70, "days": 70,)", "/days"},
    {"an escaped key that stands twice", R"("cols": 20)", R"("cols": 20, "c\u006fls": 20)", "/zones/1/cols"},
    {"a key that stands twice before one that is unknown", R"("rows": 4)", R"("x": 0, "rows": 4, "rows": 4)", "/zones/1/rows"},
    {"a list in place of the problem's zones object", R"({ "id": "open-1", "rows": 4, "cols": 20, "cover": "open", "floor_c": [10.9, 11.2, 11.5] })", "[]", "/zones/1"},
    {"another format", "warmbench-planning-problem", "warmbench-planning-answer", "/format"},
    {"version 2", R"("version": 1)", R"("version": 2)", "/version"},
    {"version 3", R"("version": 1)", R"("version": 3)", "/version"},
    {"a version that is a text", R"("version": 1)", R"("version": "1")", "/version"},
    {"a date that is not in the calendar", "2027-02-01", "2027-02-29", "/start"},
    {"a date in another form", "2027-02-01", "1.2.2027", "/start"},
    {"a date with a time", "2027-02-01", "2027-02-01T00:00", "/start"},
    {"stocks that are null", R"("stocks": [
    { "id": "sage-row-2", "cuttings": [[0, 120], [14, 200]] },
    { "id": "verbena-row-1", "cuttings": [[3, 50]] }
  ])", R"("stocks": null)", "/stocks"},
    {"turn that is a number", R"("turn": false)", R"("turn": 0)", "/batches/0/turn"},
    {"an id that is a number", R"("id": "verbena-2")", R"("id": 2)", "/batches/2/id"},
    {"an empty id", R"("id": "open-1")", R"("id": "")", "/zones/1/id"},
    {"a pin that is null", R"("pin": { "strike_day": 3, "zone": "tent-1" })", R"("pin": null)", "/batches/0/pin"},
    {"a number in quotes", R"("value": 45.5)", R"("value": "45.5")", "/batches/1/value"},
    {"true in place of a number", R"("move_cost": 1.20)", R"("move_cost": true)", "/batches/0/move_cost"},
    {"a horizon of no days", R"("days": 70)", R"("days": 0)", "/days"},
    {"a horizon with a part of a day", R"("days": 70)", R"("days": 70.5)", "/days"},
    {"a zone without rows", R"("rows": 4)", R"("rows": 0)", "/zones/1/rows"},
    {"a negative number of columns", R"("cols": 20)", R"("cols": -20)", "/zones/1/cols"},
    {"two decimals in a temperature", R"("floor_c": 11.0)", R"("floor_c": 11.25)", "/zones/0/floor_c"},
    {"two decimals in an exponent", R"("floor_c": 11.0)", R"("floor_c": 1125e-2)", "/zones/0/floor_c"},
    {"three decimals in money", R"("value": 96.00)", R"("value": 96.005)", "/batches/0/value"},
    {"two decimals in degree-days", "61.5", "61.55", "/held/0/degree_days"},
    {"negative degree-days", "61.5", "-0.1", "/held/0/degree_days"},
    {"a number that overflows a double", R"("value": 45.5)", R"("value": 1e999)", "/batches/1/value"},
    {"Infinity", R"("value": 45.5)", R"("value": Infinity)", "/batches/1/value"},
    {"NaN in a list", "[10.9, 11.2, 11.5]", "[10.9, NaN, 11.5]", "/zones/1/floor_c/1"},
    {"a number far above 1e12", R"("cuttings": 96)", R"("cuttings": 1e16)", "/batches/0/cuttings"},
    {"a negative value", R"("value": 45.5)", R"("value": -0.01)", "/batches/1/value"},
    {"a negative cost of lateness", R"("late_per_day": 4.00)", R"("late_per_day": -4)", "/batches/0/late_per_day"},
    {"a negative cost of moving", R"("move_cost": 1.20)", R"("move_cost": -1)", "/batches/0/move_cost"},
    {"a negative cost off the ideal", "0.05", "-0.05", "/batches/0/stays/0/off_ideal_per_degree_day"},
    {"a negative cost of scatter", R"("scatter_cost": 0.50)", R"("scatter_cost": -0.50)", "/scatter_cost"},
    {"a negative cost of a mat", "0.55", "-0.55", "/zones/0/mat/cost_per_day/1"},
    {"no containers", R"("containers": 12)", R"("containers": 0)", "/batches/0/containers"},
    {"a part of a container", R"("containers": 12)", R"("containers": 1.5)", "/batches/0/containers"},
    {"negative cuttings", R"("cuttings": 96)", R"("cuttings": -96)", "/batches/0/cuttings"},
    {"a footprint without width", R"("footprint": [1, 3])", R"("footprint": [1, 0])", "/batches/1/footprint/1"},
    {"a stay of no days", R"("days": 8)", R"("days": 0)", "/batches/0/stays/1/days"},
    {"a stay of 401 days", R"("days": 8)", R"("days": 401)", "/batches/0/stays/1/days"},
    {"something held for 401 days", R"("days": 14)", R"("days": 401)", "/held/1/days"},
    {"a due day with decimals", R"("due": 60)", R"("due": 60.5)", "/batches/0/due"},
    {"a negative strike day", R"("strike": [0, 20])", R"("strike": [-1, 20])", "/batches/0/strike/0"},
    {"a negative labour", "350", "-350", "/strike_capacity/4"},
    {"labour of half a cutting", "[400, 300, 401, 402, 350, 0, 7]", "0.5", "/strike_capacity"},
    {"no set-points", "[16.0, 18.5, 21.0]", "[]", "/zones/0/mat/set_points_c"},
    {"a set-point twice by value", "[16.0, 18.5, 21.0]", "[16.0, 18.5, 16]", "/zones/0/mat/set_points_c/2"},
    {"fewer costs than set-points", "[0.42, 0.55, 0.78]", "[0.42, 0.55]", "/zones/0/mat/cost_per_day"},
    {"more costs than set-points", "[0.42, 0.55, 0.78]", "[0.42, 0.55, 0.78, 0.9]", "/zones/0/mat/cost_per_day"},
    {"no floor temperatures", "[10.9, 11.2, 11.5]", "[]", "/zones/1/floor_c"},
    {"no labour at all", "[400, 300, 401, 402, 350, 0, 7]", "[]", "/strike_capacity"},
    {"a blocked slot of one number", "[5, 15]", "[5]", "/zones/0/blocked/1"},
    {"a blocked slot beyond the last row", "[5, 15]", "[6, 15]", "/zones/0/blocked/1/0"},
    {"a blocked slot beyond the last column", "[5, 15]", "[5, 16]", "/zones/0/blocked/1/1"},
    {"a slot entry of three numbers", "[3, 0, 1, 2]", "[3, 0, 1]", "/held/1/slots/0"},
    {"a slot without height", "[3, 0, 1, 2]", "[3, 0, 0, 2]", "/held/1/slots/0/2"},
    {"something held on no slots", "[[3, 0, 1, 2]]", "[]", "/held/1/slots"},
    {"a footprint of one number", R"("footprint": [1, 3])", R"("footprint": [3])", "/batches/1/footprint"},
    {"a strike window of three days", R"("strike": [0, 20])", R"("strike": [0, 20, 30])", "/batches/0/strike"},
    {"no stays", R"("stays": [
        { "covers": ["tent"], "low_c": 15.9, "ideal_c": 18.2, "high_c": 24.3,
          "off_ideal_per_degree_day": 0.04, "days": 21 } ])", R"("stays": [])", "/batches/1/stays"},
    {"no covers", R"(["open"])", "[]", "/batches/0/stays/1/covers"},
    {"a step of stock with one number", "[14, 200]", "[14]", "/stocks/0/cuttings/1"},
    {"an unknown cover of a zone", R"("cover": "open")", R"("cover": "shade")", "/zones/1/cover"},
    {"an unknown cover of a stay", R"(["tent", "bag"])", R"(["tent", "Bag"])", "/batches/0/stays/0/covers/1"},
    {"a zone id twice", R"("id": "open-1")", R"("id": "tent-1")", "/zones/1/id"},
    {"a stock id twice", R"("id": "verbena-row-1")", R"("id": "sage-row-2")", "/stocks/1/id"},
    {"a held id twice", R"("id": "26-301-A")", R"("id": "26-300-A")", "/held/1/id"},
    {"a batch id twice", R"("id": "verbena-2")", R"("id": "sage-1")", "/batches/2/id"},
    {"a batch with the id of something held", R"("id": "verbena-1")", R"("id": "26-301-A")", "/batches/1/id"},
    {"an id twice in another spelling", R"("id": "verbena-2")", R"("id": "s\u0061ge-1")", "/batches/2/id"},
    {"an unknown zone of something held", R"("zone": "open-1")", R"("zone": "open-2")", "/held/1/zone"},
    {"an unknown stock", R"("stock": "sage-row-2")", R"("stock": "sage-row-3")", "/batches/0/stock"},
    {"an empty stock", R"("stock": null)", R"("stock": "")", "/batches/1/stock"},
    {"days of stock that do not rise", "[14, 200]", "[0, 200]", "/stocks/0/cuttings/1/0"},
    {"totals of stock that fall", "[14, 200]", "[14, 119]", "/stocks/0/cuttings/1/1"},
    {"a reversed strike window", R"("strike": [0, 20])", R"("strike": [21, 20])", "/batches/0/strike"},
    {"low above high of a stay", R"("low_c": 15.9)", R"("low_c": 24.4)", "/batches/1/stays/0/low_c"},
    {"low above high of something held", R"("low_c": 9.5)", R"("low_c": 23.1)", "/held/1/low_c"},
    {"both days and degree_days", R"("days": 8)", R"("days": 8, "degree_days": 100, "base_c": 5)", "/batches/0/stays/1"},
    {"neither days nor degree_days", R"("off_ideal_per_degree_day": 0.04, "days": 21)", R"("off_ideal_per_degree_day": 0.04)", "/batches/1/stays/0"},
    {"neither of something held", R"(, "days": 14)", "", "/held/1"},
    {"cap_c below base_c", R"("cap_c": 24.1)", R"("cap_c": 5.4)", "/batches/0/stays/0/cap_c"},
    {"two decimals of a cap_c that has no effect", R"("days": 8)", R"("days": 8, "cap_c": 5.55)", "/batches/0/stays/1/cap_c"},
    {"something held beyond the grid", "[3, 0, 1, 2]", "[3, 19, 1, 2]", "/held/1/slots/0"},
    {"something held on a blocked slot", "[0, 1, 1, 1]", "[0, 0, 1, 1]", "/held/0/slots/0"},
    {"something held on slots of its own twice", "[0, 2, 2, 1]", "[0, 1, 2, 1]", "/held/0/slots/1"},
    {"a footprint that fits no zone", R"("footprint": [1, 1])", R"("footprint": [7, 1])", "/batches/0/footprint"},
    {"a footprint that would fit only turned", R"("footprint": [1, 4],)", R"("footprint": [17, 4], "turn": false,)", "/batches/2/footprint"},
    {"a footprint that fits no zone even turned", R"("footprint": [1, 3])", R"("footprint": [21, 1])", "/batches/1/footprint"},
    {"a pin before the strike window", R"({ "strike_day": 4, "zone": "tent-1", "slots": [[2,)", R"({ "strike_day": 1, "zone": "tent-1", "slots": [[2,)", "/batches/1/pin/strike_day"},
    {"a pin after the strike window", R"("strike_day": 3)", R"("strike_day": 21)", "/batches/0/pin/strike_day"},
    {"a pin on a day with too little labour", R"("strike_day": 3)", R"("strike_day": 6)", "/batches/0/pin/strike_day"},
    {"pins that need more than the labour of their day", R"("cuttings": 151)", R"("cuttings": 201)", "/batches/2/pin/strike_day"},
    {"a pin to an unknown zone", R"("strike_day": 3, "zone": "tent-1")", R"("strike_day": 3, "zone": "tent-2")", "/batches/0/pin/zone"},
    {"a pin to a zone whose cover does not suit", R"("strike_day": 3, "zone": "tent-1")", R"("strike_day": 3, "zone": "open-1")", "/batches/0/pin/zone"},
    {"pinned slots without a zone", R"("zone": "tent-1", "slots": [[3,)", R"("slots": [[3,)", "/batches/2/pin/slots"},
    {"fewer pinned slots than containers", ", [2, 6, 3, 1]]", "]", "/batches/1/pin/slots"},
    {"pinned slots of another shape", "[2, 6, 3, 1]", "[2, 6, 2, 1]", "/batches/1/pin/slots/1"},
    {"pinned slots turned where that is not allowed", "[3, 2, 1, 4]", "[0, 3, 4, 1]", "/batches/2/pin/slots/0"},
    {"pinned slots beyond the grid", "[2, 6, 3, 1]", "[4, 6, 3, 1]", "/batches/1/pin/slots/1"},
    {"pinned slots that are blocked", "[2, 2, 1, 3]", "[5, 13, 1, 3]", "/batches/1/pin/slots/0"},
    {"pinned slots that overlap each other", "[2, 6, 3, 1]", "[2, 4, 3, 1]", "/batches/1/pin/slots/1"},
    {"pinned slots of another pin on the same day", "[3, 2, 1, 4]", "[3, 3, 1, 4]", "/batches/2/pin"},
};

const Edit goodEdits[] = {
    {"decimals that are zero", R"("low_c": 16.0)", R"("low_c": 16.000)"},
    {"a whole number with a point", R"("containers": 12)", R"("containers": 12.0)"},
    {"a whole number with an exponent", R"("days": 70)", R"("days": 7e1)"},
    {"an exponent that makes one decimal", R"("floor_c": 11.0)", R"("floor_c": 110E-1)"},
    {"minus zero", R"("move_cost": 0,)", R"("move_cost": -0.0,)"},
    {"a temperature below zero", R"("low_c": 8.0)", R"("low_c": -12.5)"},
    {"no blocked slots", R"("blocked": [[0, 0], [5, 15]], )", ""},
    {"no labour limit", R"("strike_capacity": [400, 300, 401, 402, 350, 0, 7],
)", ""},
    {"one labour for every day", "[400, 300, 401, 402, 350, 0, 7]", "500"},
    {"no cost of scatter", R"(,
  "scatter_cost": 0.50)", ""},
    {"a stay of 400 days", R"("days": 8)", R"("days": 400)"},
    {"an ideal outside low and high", R"("ideal_c": 12.0)", R"("ideal_c": 30.0)"},
    {"base_c and cap_c beside days, whatever they say", R"("days": 8)", R"("days": 8, "base_c": 9, "cap_c": 3)"},
    {"cap_c equal to base_c", R"("cap_c": 24.1)", R"("cap_c": 5.5)"},
    {"low_c equal to high_c", R"("low_c": 15.9)", R"("low_c": 24.3)"},
    {"no degree-days to gain", "61.5", "0"},
    {"a cover twice", R"(["open"])", R"(["open", "open"])"},
    {"a blocked slot twice", "[5, 15]", "[0, 0]"},
    {"stock without cuttings", "[[3, 50]]", "[]"},
    {"a due day before the start", R"("due": 60)", R"("due": -3)"},
    {"an empty pin", R"("pin": { "strike_day": 3, "zone": "tent-1" })", R"("pin": {})"},
    {"set-points below the floor", "[16.0, 18.5, 21.0]", "[9.0, 18.5, 21.0]"},
    {"a strike window wholly beyond the horizon", R"("strike": [2, 9], "due": null)", R"("strike": [2, 900], "due": null)"},
};
// clang-format on

void checkRefused(const std::string& text, const std::string& pointer) {
    const auto problem = readProblem(text);
    REQUIRE_FALSE(problem);
    INFO(problem.refusal().text());
    CHECK(problem.refusal().place == pointer);
    CHECK_FALSE(problem.refusal().what.empty());
    CHECK(problem.refusal().text().find('\n') == std::string::npos);
}

} // namespace

TEST_CASE("Each bad edit of a good problem is refused at its place") {
    REQUIRE(readProblem(edited("sage-1", "sage-1")));
    for (const BadEdit& edit : badEdits) {
        INFO(edit.what);
        checkRefused(edited(edit.find, edit.replacement), edit.pointer);
    }
}

TEST_CASE("Each harmless edit of a good problem is read") {
    for (const Edit& edit : goodEdits) {
        const auto problem = readProblem(edited(edit.find, edit.replacement));
        INFO(edit.what << (problem ? "" : ": " + problem.refusal().text()));
        CHECK(problem);
    }
}

TEST_CASE("A floor has at most one temperature for each day") {
    CHECK(readProblem(edited("\"floor_c\": 11.0", "\"floor_c\": " + temperatures(70))));
    checkRefused(edited("\"floor_c\": 11.0", "\"floor_c\": " + temperatures(71)), "/zones/0/floor_c");
}

TEST_CASE("Nesting above 64 levels is refused for the whole file") {
    const auto nested = [](std::size_t levels) {
        return edited("\"version\": 1",
                      "\"version\": " + std::string(levels, '[') + std::string(levels, ']'));
    };
    checkRefused(nested(63), "/version"); // with the problem itself 64
    checkRefused(nested(64), "");
    checkRefused(std::string(1'000'000, '['), "");
    checkRefused(std::string(100, '{'), "");
}

TEST_CASE("Numbers are below 1e12") {
    CHECK(readProblem(edited("\"cuttings\": 96, \"stock\": \"sage-row-2\"", "\"cuttings\": 350")));
    CHECK(readProblem(edited("\"value\": 45.5", "\"value\": 999999999999.99")));
    CHECK(readProblem(edited("\"due\": 33", "\"due\": -999999999999")));
    checkRefused(edited("\"value\": 45.5", "\"value\": 1e12"), "/batches/1/value");
    checkRefused(edited("\"due\": 33", "\"due\": -1000000000000"), "/batches/2/due");
    checkRefused(edited("\"value\": 45.5", "\"value\": 1e999999999999999999999"), "/batches/1/value");
    checkRefused(edited("\"value\": 45.5", "\"value\": 1e-999999999999999999999"), "/batches/1/value");
    CHECK(readProblem(edited("\"value\": 45.5", "\"value\": 0e999999999999999999999")));
}

TEST_CASE("Something held that no state of its zone suits is refused") {
    // Off the tent stands at 11, on at 16, 18.5 or 21.
    checkRefused(edited("\"low_c\": 15.0, \"high_c\": 22.0", "\"low_c\": 16.1, \"high_c\": 18.4"), "/held/0");
    CHECK(readProblem(edited("\"low_c\": 15.0, \"high_c\": 22.0", "\"low_c\": 16.1, \"high_c\": 18.5")));
    // At 21 it gains 16 a day: 6400 in 400 days.
    CHECK(readProblem(edited("61.5", "6400")));
    checkRefused(edited("61.5", "6400.1"), "/held/0");
    // The open zone has no mat and warms up to 11.5 on its third day.
    CHECK(readProblem(edited("\"low_c\": 9.5, \"high_c\": 23.0", "\"low_c\": 9.5, \"high_c\": 11.5")));
    checkRefused(edited("\"low_c\": 9.5, \"high_c\": 23.0", "\"low_c\": 9.5, \"high_c\": 11.4"), "/held/1");
}

TEST_CASE("Of several faults the first in the order of the format is named") {
    std::string text = edited("\"low_c\": 16.0", "\"low_c\": 26.0");
    text.replace(text.find("\"tent-1\", \"rows\": 6"), 8, "17");
    text.replace(text.find("\"2027-02-01\""), 12, "\"soon\"");
    checkRefused(text, "/start");
    text.replace(text.find("\"soon\""), 6, "\"2027-02-01\"");
    checkRefused(text, "/zones/0/id");
}

TEST_CASE("Huge grids, counts and windows cost no memory") {
    checkRefused(edited("\"rows\": 4, \"cols\": 20", "\"rows\": 999999999999, \"cols\": 999999999999"),
                 "/zones/1");
    checkRefused(edited("\"days\": 70", "\"days\": 1000000001"), "/days");
    const auto problem = readProblem(edited("\"strike\": [2, 9]", "\"strike\": [2, 999999999999]"));
    REQUIRE(problem);
    CHECK(problem->batches[1].strikeLast == farthestDay);
    const auto many = readProblem(edited("\"containers\": 12", "\"containers\": 999999999999"));
    REQUIRE(many);
    CHECK(many->batches[0].containers > mostSlots);
}

TEST_CASE("A key or text with line ends is refused in one line") {
    checkRefused(edited("\"days\": 70", "\"d\\nays\": 70"), "/d?ays");
    checkRefused(edited("\"cover\": \"open\"", "\"cover\": [\n1,\n2]"), "/zones/1/cover");
}
