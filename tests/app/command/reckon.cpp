#include "tests/app/command/program_run.h"
#include "tests/support/temporary_file.h"
#include "tests/support/within.h"

#include <nlohmann/json.hpp>

#include <sstream>

using nlohmann::json;
using warmbench::tests::ProgramRun;
using warmbench::tests::runWith;
using warmbench::tests::TemporaryFile;
using warmbench::tests::within;

namespace {

std::vector<std::string> words(const std::string& line) {
    std::istringstream stream{line};
    std::vector<std::string> found;
    for (std::string word; stream >> word;) found.push_back(word);
    return found;
}

/// The JSON of a call of `reckon` that must do.
json reckoned(const std::string& line) {
    const ProgramRun run = runWith(words("reckon " + line + " --json"));
    INFO(line << ": " << run.error);
    REQUIRE(run.status == 0);
    REQUIRE(run.error.empty());
    return json::parse(run.out);
}

std::vector<std::string> keys(const json& object) {
    std::vector<std::string> names;
    for (const auto& [key, value] : object.items()) names.push_back(key);
    return names;
}

/// The one line of a call of `reckon` that must be refused, without the program's name.
std::string refusedLine(const std::string& line) {
    const ProgramRun run = runWith(words("reckon " + line));
    INFO(line << ": " << run.out);
    CHECK(run.status == 2);
    CHECK(run.out.empty());
    CHECK(std::count(run.error.begin(), run.error.end(), '\n') == 1);
    REQUIRE(run.error.starts_with("warmbench: "));
    return run.error.substr(11, run.error.size() - 12);
}

} // namespace

TEST_CASE("Every computation prints the keys of its answer and no others") {
    using Keys = std::vector<std::string>; // in the order of the alphabet, as the parser keeps them
    CHECK(keys(reckoned("take --rooted 18 --struck 24")) == Keys{"exact", "take", "wilson"});
    CHECK(keys(reckoned("difference --rooted 9 --struck 10 --rooted2 3 --struck2 10")) ==
          Keys{"difference", "newcombe"});
    CHECK(keys(reckoned("strike-count --want 10 --sure 0.9 --alpha 19 --beta 7")) ==
          Keys{"expected", "strike", "sureness"});
    CHECK(keys(reckoned("vapour --air 20 --rh 50")) ==
          Keys{"actual_kpa", "deficit_kpa", "dew_point_c", "saturation_kpa"});
    CHECK(keys(reckoned("vapour --max 25 --min 18 --rh-max 82 --rh-min 54")) ==
          Keys{"actual_kpa", "deficit_kpa", "saturation_kpa"});
    CHECK(keys(reckoned("vapour --dry 25.6 --wet 19.5")) == Keys{"actual_kpa"});
    CHECK(keys(reckoned("heat --area 10 --u 6 --inside 20 --outside 0")) == Keys{"kwh_per_day", "watts"});
    CHECK(keys(reckoned("mat --area 6 --per-area 160 --loss 8 --air 12 --set-point 22 --price 0.27")) ==
          Keys{"cost_per_day", "duty", "holds", "kwh_per_day", "watts_needed"});
    CHECK(keys(reckoned("pot --top 100 --base 100 --height 100")) == Keys{"litres"});
    CHECK(keys(reckoned("dilution --ppm 1000 --litres 0.5")) == Keys{"grams"});
    CHECK(keys(reckoned("dilution --ppm 1000 --litres 0.5 --strength 10")) == Keys{"millilitres"});
}

TEST_CASE("Reckon takes (Newcombe 1998, table I: 81 of 263; table II (a): 56 of 70 less 48 of 80)") {
    const json take = reckoned("take --rooted 81 --struck 263");
    CHECK(take["wilson"][0] == within(0.2553, 6e-5));
    CHECK(take["wilson"][1] == within(0.3662, 6e-5));
    CHECK(take["exact"][0] == within(0.2527, 6e-5));
    CHECK(take["exact"][1] == within(0.3676, 6e-5));
    const json difference = reckoned("difference --rooted 56 --struck 70 --rooted2 48 --struck2 80");
    CHECK(difference["newcombe"][0] == within(0.0524, 6e-5));
    CHECK(difference["newcombe"][1] == within(0.3339, 6e-5));
    CHECK(reckoned("take --rooted 0 --struck 20 --level 0.9")["wilson"][0] == 0);
}

TEST_CASE("Reckon numbers to strike, alike for whole and for broken shapes") {
    const json found = reckoned("strike-count --want 100 --sure 0.99 --alpha 61 --beta 41");
    CHECK(found["strike"] == 217);
    CHECK(found["sureness"] == within(0.990292274167886, 1e-9));
    CHECK(found["expected"] == within(217 * 61.0 / 102, 1e-9));
    CHECK(reckoned("strike-count --want 12 --sure 0.9 --alpha 2.5 --beta 7.5")["strike"] == 132);
}

TEST_CASE("Reckon air (FAO-56 examples 4 and 5)") {
    CHECK(reckoned("vapour --dry 25.6 --wet 19.5 --altitude 1200 --ventilated")["actual_kpa"] ==
          within(1.91, 0.005));
    const json day = reckoned("vapour --max 25 --min 18 --rh-max 82 --rh-min 54");
    CHECK(day["actual_kpa"] == within(1.70, 0.005));
    CHECK(reckoned("vapour --dry 25.6 --wet 19.5")["actual_kpa"] ==
          reckoned("vapour --dry 25.6 --wet 19.5 --altitude 0 --ventilated")["actual_kpa"]);
    CHECK(reckoned("vapour --air 20 --rh 0")["dew_point_c"].is_null());
    CHECK(reckoned("vapour --air -5.5 --rh 80")["saturation_kpa"] > 0.3);
}

TEST_CASE("Reckon heat, mats, pots and dilutions") {
    const json loss = reckoned("heat --area 20 --u 5 --inside 5 --outside 9");
    CHECK(loss["watts"] == within(-400, 1e-9));
    CHECK(loss["kwh_per_day"] == 0);
    const json mat = reckoned("mat --area 4 --per-area 100 --loss 12 --air 8 --set-point 24 --price 0.31");
    CHECK(mat["holds"] == false);
    CHECK(mat["duty"] == 1);
    CHECK(mat["watts_needed"] == within(768, 1e-9));
    CHECK(mat["kwh_per_day"] == within(9.6, 1e-9));
    CHECK(mat["cost_per_day"] == within(2.976, 1e-9));
    CHECK(reckoned("pot --top 153 --base 135 --height 175")["litres"] == within(2.854, 5e-4));
    CHECK(reckoned("dilution --ppm 3000 --litres 0.1")["grams"] == within(0.3, 1e-12));
    CHECK(reckoned("dilution --ppm 3000 --litres 0.1 --strength 10")["millilitres"] == within(30, 1e-9));
}

TEST_CASE("A person reads the same figures with units") {
    const ProgramRun run = runWith(words("reckon take --rooted 18 --struck 24"));
    CHECK(run.status == 0);
    CHECK(run.out == "take             75.0 %\n"
                     "Wilson interval  55.1 % to 88.0 %\n"
                     "exact interval   53.3 % to 90.2 %\n");
}

TEST_CASE("A wrong call of reckon is refused in one line") {
    CHECK(refusedLine("") == "reckon: found nothing, expected one of take, difference, strike-count, vapour, "
                             "degree-days, heat, mat, pot, dilution");
    CHECK(refusedLine("takes").starts_with("reckon: found 'takes', expected one of take, "));
    CHECK(refusedLine("take --struck 24") == "--rooted: found nothing, expected it in every call of take");
    CHECK(refusedLine("take --rooted 1 --struck") == "--struck: found nothing, expected a value");
    CHECK(refusedLine("take --rooted 1 --struck 2 --rooted 1") ==
          "--rooted: found it twice, expected it once");
    CHECK(refusedLine("take --rooted 1 --struck 2 --size 3") ==
          "take: found '--size', expected only its own options: --help, --rooted, --struck, --level, --json");
    CHECK(refusedLine("take --rooted 25 --struck 24") ==
          "--rooted: found 25, expected at most the 24 of --struck");
    CHECK(refusedLine("take --rooted 1.5 --struck 24")
              .starts_with("--rooted: found '1.5', expected a whole number"));
    CHECK(refusedLine("take --rooted -1 --struck 24").starts_with("--rooted: found '-1', expected"));
    CHECK(refusedLine("take --rooted 0 --struck 0").starts_with("--struck: found '0', expected"));
    for (const char* level : {"0", "1", "95", "nan", "x", "-0.5"})
        CHECK(refusedLine("take --rooted 1 --struck 2 --level " + std::string{level}) ==
              "--level: found '" + std::string{level} + "', expected a number between 0 and 1");
    CHECK(refusedLine("difference --rooted 1 --struck 2 --rooted2 3 --struck2 2") ==
          "--rooted2: found 3, expected at most the 2 of --struck2");
    CHECK(refusedLine("strike-count --want 10 --sure 1 --alpha 1 --beta 1").starts_with("--sure: found '1'"));
    CHECK(refusedLine("strike-count --want 10 --sure 0.9 --alpha 0 --beta 1")
              .starts_with("--alpha: found '0'"));
    CHECK(refusedLine("strike-count --want 1000 --sure 0.999 --alpha 0.001 --beta 5")
              .starts_with("--sure: found"));
    CHECK(refusedLine("vapour").starts_with("vapour: found no temperature, expected --air and --rh"));
    CHECK(refusedLine("vapour --air 20") == "--rh: found nothing, expected it beside --air");
    CHECK(refusedLine("vapour --air 20 --rh 101") == "--rh: found '101', expected a number from 0 to 100");
    CHECK(refusedLine("vapour --air inf --rh 50").starts_with("--air: found 'inf', expected"));
    CHECK(refusedLine("vapour --air 20 --rh 50 --max 3").find("found together with") != std::string::npos);
    CHECK(refusedLine("vapour --max 10 --min 20 --rh-max 80 --rh-min 50") ==
          "--min: found 20, expected at most the 10 of --max");
    CHECK(refusedLine("vapour --max 20 --min 10 --rh-max 40 --rh-min 50") ==
          "--rh-min: found 50, expected at most the 40 of --rh-max");
    CHECK(refusedLine("vapour --dry 10 --wet 20") == "--wet: found 20, expected at most the 10 of --dry");
    CHECK(refusedLine("vapour --dry 40 --wet 0").starts_with("--wet: found 0, expected a wet bulb nearer"));
    CHECK(refusedLine("vapour --air 20 --rh 50 --indoor") ==
          "--dry: found nothing, expected it beside --indoor");
    CHECK(refusedLine("mat --area 0 --per-area 1 --loss 1 --air 1 --set-point 1 --price 1") ==
          "--area: found '0', expected a number above 0");
    CHECK(refusedLine("dilution --ppm 1000 --litres 1 --strength 0.5") ==
          "--strength: found 0.5, expected at least the 1 g per litre aimed at");
}

TEST_CASE("Degree-days are reckoned from a logger's file") {
    const TemporaryFile file{"note,celsius,time\n"
                             "a,0,2027-03-01T00:00\n"
                             "b,30,2027-03-01T03:00\n"
                             "c,0,2027-03-01T06:00\n"
                             "d,14,2027-03-01T06:00\n"
                             "e,14,2027-03-01 18:00:00\n"};
    const json found = reckoned("degree-days " + file.name() + " --base 10 --cap 20");
    CHECK(keys(found) == std::vector<std::string>{"degree_days", "from", "gap_hours", "readings", "to"});
    CHECK(found["degree_days"] == within(30.0 / 24 + 4 * 12.0 / 24, 1e-12));
    CHECK(found["from"] == "2027-03-01T00:00");
    CHECK(found["to"] == "2027-03-01 18:00:00");
    CHECK(found["readings"] == 5);
    CHECK(found["gap_hours"] == 12);
    CHECK(reckoned("degree-days " + file.name() + " --base 10")["degree_days"] ==
          within(2 * 2 * 10.0 / 24 + 4 * 12.0 / 24, 1e-12));
}

TEST_CASE("A wrong logger's file is refused with its line") {
    const auto refusedFile = [](const std::string& content, const std::string& options = "--base 5") {
        const TemporaryFile file{content};
        const std::string line = refusedLine("degree-days " + file.name() + " " + options);
        REQUIRE(line.starts_with(file.name() + ": "));
        return line.substr(file.name().size() + 2);
    };
    CHECK(refusedFile("") ==
          "found an empty file, expected a first line that names the columns time, celsius");
    CHECK(refusedFile("time,celsius\n") == "found no readings, expected a line for each reading");
    CHECK(refusedFile("time,temperature\n") ==
          "line 1: found the columns 'time, temperature', expected one named celsius");
    CHECK(refusedFile("time,celsius\n2027-03-01T00:00,20\n01/03/2027 01:00,20\n") ==
          "line 3, time: found '01/03/2027 01:00', expected an ISO 8601 time such as 2027-03-01T06:30");
    CHECK(refusedFile("time,celsius\n2027-03-01T00:00,\n") ==
          "line 2, celsius: found nothing, expected degrees Celsius from -273.15 to 1000");
    CHECK(refusedFile("time,celsius\n2027-03-01T00:00,nan\n").starts_with("line 2, celsius: found 'nan'"));
    CHECK(refusedFile("time,celsius\n2027-03-01T01:00,20\n2027-03-01T00:00,20\n") ==
          "line 3, time: found '2027-03-01T00:00', expected a time not before 2027-03-01T01:00 of the line "
          "before");
    CHECK(refusedFile("time,celsius\n2027-03-01T01:00Z,20\n2027-03-01T02:00,20\n")
              .starts_with("line 3, time: found '2027-03-01T02:00', expected an offset from UTC"));
    CHECK(refusedLine("degree-days nowhere.csv --base 5").starts_with("nowhere.csv: cannot be opened"));
    const TemporaryFile good{"time,celsius\n2027-03-01T00:00,20\n"};
    CHECK(refusedLine("degree-days " + good.name() + " --base 10 --cap 5") ==
          "--cap: found 5, expected at least the 10 of --base");
}
