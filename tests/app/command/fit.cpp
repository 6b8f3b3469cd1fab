#include "tests/app/command/program_run.h"
#include "tests/support/temporary_file.h"
#include "tests/support/within.h"

#include <nlohmann/json.hpp>

using nlohmann::json;
using warmbench::tests::ProgramRun;
using warmbench::tests::runWith;
using warmbench::tests::TemporaryFile;
using warmbench::tests::within;

namespace {

json fitted(const std::string& content, std::vector<std::string> options = {}) {
    const TemporaryFile file{content};
    std::vector<std::string> words{"fit", file.name(), "--json"};
    words.insert(words.end(), options.begin(), options.end());
    const ProgramRun run = runWith(words);
    INFO(run.error);
    REQUIRE(run.status == 0);
    return json::parse(run.out);
}

/// The one line that refuses a file, after its name.
std::string refused(const std::string& content, std::vector<std::string> options = {}) {
    const TemporaryFile file{content};
    std::vector<std::string> words{"fit", file.name()};
    words.insert(words.end(), options.begin(), options.end());
    const ProgramRun run = runWith(words);
    CHECK(run.status == 2);
    CHECK(run.out.empty());
    CHECK(std::count(run.error.begin(), run.error.end(), '\n') == 1);
    const std::string start = "warmbench: " + file.name() + ": ";
    REQUIRE(run.error.starts_with(start));
    return run.error.substr(start.size(), run.error.size() - start.size() - 1);
}

const std::string header = "group,from,to,count,outcome\n";
/// Germination of chickweed (Ritz, Pipper and Streibig 2013).
const std::string chickweed = "chickweed,133,143,2,rooted\nchickweed,176.5,182.5,3,rooted\n"
                              "chickweed,182.5,192.5,10,rooted\nchickweed,192.5,200.5,11,rooted\n"
                              "chickweed,200.5,206.5,6,rooted\nchickweed,206.5,216.5,5,rooted\n"
                              "chickweed,216.5,224.5,2,rooted\nchickweed,266.5,276.5,1,rooted\n"
                              "chickweed,281.5,,160,unrooted\n";

} // namespace

TEST_CASE("Groups are fitted in their order of first appearance, with all keys of the answer") {
    const json found = fitted(header + "b,5,10,12,rooted\n" + chickweed + "b,10,,8,unrooted\n");
    CHECK(found["family"] == "loglogistic");
    REQUIRE(found["groups"].size() == 2);
    const json& none = found["groups"][0];
    CHECK(none["group"] == "b");
    CHECK(none["cuttings"] == 20);
    CHECK(none["status"] == "no-unique-answer");
    for (const char* key : {"p", "mu", "sigma", "p_se", "mu_se", "sigma_se", "t10", "t50", "t90"})
        CHECK(none.at(key).is_null());
    CHECK(none["log_likelihood"] == within(-13.4602333401851, 1e-9));
    // As the R package drc prints them.
    const json& one = found["groups"][1];
    CHECK(one.size() == 13);
    CHECK(one["group"] == "chickweed");
    CHECK(one["cuttings"] == 200);
    CHECK(one["status"] == "inside");
    CHECK(one["p"] == within(0.20011, 5e-6));
    CHECK(one["p_se"] == within(0.0283, 5e-5));
    CHECK(1 / one["sigma"].get<double>() == within(20.76747, 5e-4));
    CHECK(one["t50"] == within(196.05308, 5e-4));
    CHECK(one["t10"] == within(176.3700, 5e-4));
    CHECK(one["t90"] == within(217.9328, 5e-4));
}

TEST_CASE("Where all root the standard error of the share is null") {
    const std::string mungbean = header + "m,2,3,4,rooted\nm,5,6,9,rooted\nm,6,7,7,rooted\n";
    for (const std::vector<std::string>& options :
         {std::vector<std::string>{"--family", "weibull"}, {"--family", "weibull", "--all-root"}}) {
        const json one = fitted(mungbean, options)["groups"][0];
        CHECK(one["status"] == "all-root");
        CHECK(one["p"] == 1);
        CHECK(one["p_se"].is_null());
        CHECK(one["mu"] == within(1.74926819532733, 1e-6));
        CHECK(one["log_likelihood"] == within(-34.5340644691827, 1e-6));
        CHECK(one["mu_se"].is_number());
    }
}

TEST_CASE("Turnbull's estimate gives its intervals, the mass of the rest without an end") {
    const json found =
        fitted(header + "g,7,14,4,rooted\ng,14,21,9,rooted\ng,21,28,6,rooted\ng,28,,3,unrooted\n"
                        "g,,,2,never\n",
               {"--family", "turnbull"});
    CHECK(found["family"] == "turnbull");
    const json& group = found["groups"][0];
    CHECK(group.size() == 2);
    const json& intervals = group["intervals"];
    REQUIRE(intervals.size() == 4);
    CHECK(intervals[0][0] == 7);
    CHECK(intervals[0][1] == 14);
    CHECK(intervals[0][2] == within(4.0 / 24, 1e-9));
    CHECK(intervals[3][0] == 28);
    CHECK(intervals[3][1].is_null());
    CHECK(intervals[3][2] == within(5.0 / 24, 1e-9));
}

TEST_CASE("A file of root checks that is wrong is refused with its line and column") {
    CHECK(
        refused("") ==
        "found an empty file, expected a first line that names the columns group, from, to, count, outcome");
    CHECK(refused(header) == "found no cuttings, expected a line for each interval");
    CHECK(refused("group,from,to,count\n") ==
          "line 1: found the columns 'group, from, to, count', expected one named outcome");
    CHECK(refused(header + "a,1,2,3,rooted\na,5,10,2.5,rooted\n") ==
          "line 3, count: found '2.5', expected a whole number of cuttings, at least 0");
    CHECK(refused(header + "a,5,10,-1,rooted\n").starts_with("line 2, count: found '-1'"));
    CHECK(refused(header + "a,5,10,,rooted\n").starts_with("line 2, count: found nothing"));
    CHECK(refused(header + "a,10,5,1,rooted\n") ==
          "line 2, to: found '5', expected more than the 10 of from");
    CHECK(refused(header + "a,5,5,1,rooted\n") == "line 2, to: found '5', expected more than the 5 of from");
    CHECK(refused(header + "a,5,,1,rooted\n").starts_with("line 2, to: found nothing"));
    CHECK(refused(header + "a,-5,5,1,rooted\n").starts_with("line 2, from: found '-5'"));
    CHECK(refused(header + "a,nan,5,1,rooted\n").starts_with("line 2, from: found 'nan'"));
    CHECK(refused(header + "a,5,inf,1,rooted\n").starts_with("line 2, to: found 'inf'"));
    CHECK(refused(header + "a,5,10,1,unrooted\n")
              .starts_with("line 2, to: found '10', expected an empty cell"));
    CHECK(refused(header + "a,,,1,unrooted\n").starts_with("line 2, from: found nothing"));
    CHECK(refused(header + "a,5,,1,dead\n") ==
          "line 2, outcome: found 'dead', expected rooted, unrooted or never");
    CHECK(refused(header + ",5,,1,unrooted\n") ==
          "line 2, group: found nothing, expected the name of a group");
    CHECK(refused(header + "a,,,1,never\n", {"--all-root"}) ==
          "line 2, outcome: found 'never', expected rooted or unrooted, as all are taken to root");
}

TEST_CASE("An unknown family and a missing file are refused") {
    CHECK(runWith({"fit", "x.csv", "--family", "gamma"}).error ==
          "warmbench: --family: found 'gamma', expected loglogistic, lognormal, weibull or turnbull\n");
    const ProgramRun run = runWith({"fit", "nowhere.csv"});
    CHECK(run.status == 2);
    CHECK(run.error.starts_with("warmbench: nowhere.csv: cannot be opened"));
}

TEST_CASE("Whole counts may be written with a point, groups may be quoted, nobody counts nothing") {
    const json found =
        fitted("outcome,count,to,from,group\r\nrooted,4.0,3,2,\"m, b\"\r\nrooted,9,6,5,\"m, b\"\r\n"
               "rooted,7,7,6,\"m, b\"\r\nrooted,0,20,19,\"m, b\"\r\n",
               {"--family", "weibull"});
    CHECK(found["groups"][0]["group"] == "m, b");
    CHECK(found["groups"][0]["cuttings"] == 20);
    CHECK(found["groups"][0]["log_likelihood"] == within(-34.5340644691827, 1e-6));
}
