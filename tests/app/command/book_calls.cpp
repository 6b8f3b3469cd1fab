#include "tests/app/command/program_run.h"
#include "tests/support/process.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

using warmbench::tests::has;
using warmbench::tests::ProgramRun;
using warmbench::tests::runWith;
using warmbench::tests::TemporaryFolder;

namespace fs = std::filesystem;

namespace {

std::string sample() {
    return std::string(WARMBENCH_SOURCE) + "/sample-data/nursery.json";
}

std::string content(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

} // namespace

TEST_CASE("The sample nursery's next month is planned, verified, accepted, and the book is sound") {
    const TemporaryFolder folder;
    const std::string book = (folder.path() / "sample.warmbench").string();
    REQUIRE(runWith({"new", book, "--from", sample()}).status == 0);
    const ProgramRun planned =
        runWith({"plan", book, "--from", "2026-12-01", "--days", "28", "--rounds", "2000", "--json",
                 "--accept", "--keep", (folder.path() / "kept").string()});
    REQUIRE(planned.status == 0);
    const auto plan = nlohmann::json::parse(planned.out);
    CHECK(plan["cuttings_wanted"].get<int>() > 500);
    CHECK(plan["cuttings_placed"].get<int>() * 10 >= plan["cuttings_wanted"].get<int>() * 9);
    const ProgramRun verified = runWith({"verify", (folder.path() / "kept/problem.json").string(),
                                         (folder.path() / "kept/answer.json").string()});
    CHECK(verified.status == 0);
    CHECK(verified.out.find("valid total=") != std::string::npos);
    CHECK(runWith({"check", book}).status == 0);

    const ProgramRun again = runWith({"plan", book, "--from", "2026-12-01", "--days", "28", "--rounds",
                                      "1000", "--json", "--again", "--change-cost", "100"});
    REQUIRE(again.status == 0);
    const auto replan = nlohmann::json::parse(again.out);
    std::size_t kept = 0;
    for (const auto& strike : replan["strikes"]) kept += strike["change"] == "kept" ? 1 : 0;
    CHECK(kept == plan["strikes"].size());
    CHECK(runWith({"plan", book, "--from", "2026-12-01", "--days", "28", "--again", "--change-cost", "-1"})
              .error.find("--change-cost: found -1") != std::string::npos);
}

TEST_CASE("Planned again from a later day, batches that slipped are planned anew and none is left unsaid") {
    const TemporaryFolder folder;
    const std::string book = (folder.path() / "nursery.warmbench").string();
    REQUIRE(runWith({"new", book, "--from", sample()}).status == 0);
    const ProgramRun planned = runWith(
        {"plan", book, "--from", "2026-12-01", "--days", "28", "--rounds", "500", "--json", "--accept"});
    REQUIRE(planned.status == 0);
    std::size_t slipped = 0;
    const auto plan = nlohmann::json::parse(planned.out);
    for (const auto& strike : plan["strikes"]) slipped += strike["day"] < "2026-12-07" ? 1 : 0;
    REQUIRE(slipped > 0);

    const auto again = [&](const char* from, std::initializer_list<std::string> more) {
        std::vector<std::string> call{"plan", book,       "--from", from,     "--days",
                                      "28",   "--rounds", "500",    "--again"};
        call.insert(call.end(), more);
        return runWith(call);
    };
    const auto replan = nlohmann::json::parse(again("2026-12-07", {"--json"}).out);
    std::size_t placed = 0;
    std::size_t waiting = 0;
    for (const auto& strike : replan["strikes"]) {
        CHECK(strike["day"] >= "2026-12-07");
        placed += strike["change"] != "new" ? 1 : 0;
    }
    for (const auto& one : replan["not_placed"]) waiting += one["batch"].is_null() ? 0 : 1;
    CHECK(placed + waiting == plan["strikes"].size());
    CHECK(has(again("2026-12-07", {}).out, "; not struck on 2026-12-01"));
    // In summer no wood of theirs is right; each is named with the reason.
    const ProgramRun summer = again("2027-06-01", {});
    CHECK(has(summer.out, ": it was not struck on 2026-12-01, and "));
    CHECK(has(summer.out, "; it stays planned, without a place"));
    REQUIRE(again("2026-12-07", {"--accept"}).status == 0);
    CHECK(runWith({"check", book}).status == 0);
    CHECK_FALSE(has(again("2026-12-07", {}).out, "not struck on"));
}

TEST_CASE("A plan that was looked at is accepted as it was, by the call that it ends with") {
    const TemporaryFolder folder;
    const std::string book = (folder.path() / "sample.warmbench").string();
    const std::string kept = (folder.path() / "the plan").string();
    REQUIRE(runWith({"new", book, "--from", sample()}).status == 0);
    const ProgramRun shown = runWith({"plan", book, "--from", "2026-12-01", "--days", "14", "--rounds", "300",
                                      "--sure", "0.8", "--keep", kept});
    REQUIRE(shown.status == 0);
    CHECK(has(shown.out, "warmbench plan " + book + " --from 2026-12-01 --days 14 --sure 0.8 --kept '" +
                             kept + "' --accept\n"));
    const std::vector<std::string> asked{"plan",   book, "--from", "2026-12-01",
                                         "--days", "14", "--sure", "0.8"};
    const auto with = [&](std::vector<std::string> more) {
        more.insert(more.begin(), asked.begin(), asked.end());
        return runWith(more);
    };
    // What stands before its last lines is the same plan; only why a strike is late was not kept.
    const auto same = nlohmann::json::parse(with({"--kept", kept, "--json"}).out);
    const ProgramRun accepted = with({"--kept", kept, "--json", "--accept"});
    REQUIRE(accepted.status == 0);
    CHECK(nlohmann::json::parse(accepted.out) == same);
    for (const auto& strike : same["strikes"]) {
        INFO(strike.dump());
        CHECK(has(shown.out, strike["taxon"].get<std::string>()));
    }
    const auto stored = nlohmann::json::parse(runWith({"export", book, "--as", "json"}).out);
    std::multiset<std::pair<std::string, int>> wanted;
    std::multiset<std::pair<std::string, int>> planned;
    for (const auto& strike : same["strikes"]) wanted.emplace(strike["day"], strike["cuttings"]);
    for (const auto& batch : stored["batches"]) {
        if (batch["state"] != "planned") continue;
        int cuttings = 0;
        for (const auto& container : batch["containers"]) cuttings += container["cuttings"].get<int>();
        planned.emplace(batch["strike_day"], cuttings);
    }
    CHECK(std::includes(planned.begin(), planned.end(), wanted.begin(), wanted.end()));
    // The book asks for another plan now.
    const ProgramRun again = with({"--kept", kept, "--accept"});
    CHECK(again.status == 2);
    CHECK(has(again.error, "before the book was changed; plan anew"));
    CHECK(has(runWith({"plan", book, "--from", "2026-12-01", "--days", "7", "--rounds", "200"}).out,
              " --days 7 --keep FOLDER\n"));
}

TEST_CASE("A book goes to JSON and back without a loss") {
    const TemporaryFolder folder;
    const std::string first = (folder.path() / "a.warmbench").string();
    const std::string second = (folder.path() / "b.warmbench").string();
    REQUIRE(runWith({"new", first, "--from", sample()}).status == 0);
    REQUIRE(runWith({"export", first, "--as", "json", "--out", (folder.path() / "a.json").string()}).status ==
            0);
    REQUIRE(runWith({"new", second}).status == 0);
    REQUIRE(runWith({"import", second, (folder.path() / "a.json").string()}).status == 0);
    REQUIRE(
        runWith({"export", second, "--as", "json", "--out", (folder.path() / "b.json").string()}).status ==
        0);
    CHECK(content((folder.path() / "a.json").string()) == content((folder.path() / "b.json").string()));
    const ProgramRun again = runWith({"import", second, (folder.path() / "a.json").string()});
    CHECK(again.status == 2);
    CHECK(again.error.find("not empty") != std::string::npos);
    CHECK(runWith({"check", second}).status == 0);
}

TEST_CASE("The season goes to a calendar, the same each time until the book changes") {
    const TemporaryFolder folder;
    const std::string book = (folder.path() / "a.warmbench").string();
    REQUIRE(runWith({"new", book, "--from", sample()}).status == 0);
    const ProgramRun first = runWith({"export", book, "--as", "ics", "--from", "2026-12-01"});
    REQUIRE(first.status == 0);
    CHECK(first.out.rfind("BEGIN:VCALENDAR\r\n", 0) == 0);
    CHECK(first.out.find("\r\nCATEGORIES:check\r\n") != std::string::npos);
    CHECK(runWith({"export", book, "--as", "ics", "--from", "2026-12-01"}).out == first.out);
    // A second reader finds the same events, and nothing to complain of.
    const std::string file = (folder.path() / "work.ics").string();
    std::ofstream(file, std::ios::binary) << first.out;
    const ProgramRun read = warmbench::tests::runProcess(
        "/usr/bin/python3", {WARMBENCH_SOURCE "/tests/support/read_calendar.py", file});
    CHECK(read.error == "");
    CHECK(read.status == 0);
    const auto count = [](const std::string& text, const std::string& part) {
        int found = 0;
        for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++found;
        return found;
    };
    CHECK(count(read.out, "\n") == count(first.out, "BEGIN:VEVENT"));
    CHECK(count(read.out, "\n") > 0);
    CHECK(runWith({"export", book, "--as", "pdf"}).error ==
          "warmbench: --as: found 'pdf', expected json, csv, xlsx or ics\n");
}

TEST_CASE("A list of targets is put in whole, or without its wrong lines when she says so") {
    const TemporaryFolder folder;
    const std::string book = (folder.path() / "a.warmbench").string();
    const std::string list = (folder.path() / "wanted.csv").string();
    std::ofstream(list) << "taxon;plants;date\nAbelia × grandiflora;80;1.6.2028\nNonesuch;5;1.6.2028\n";
    REQUIRE(runWith({"new", book}).status == 0);
    const ProgramRun refused = runWith({"import", book, list, "--what", "targets"});
    CHECK(refused.status == 2);
    CHECK(refused.error.find("wanted.csv: line 3: Nonesuch: neither") != std::string::npos);
    CHECK(refused.error.find("1 of 2 lines is wrong, so nothing was put in") != std::string::npos);
    CHECK(runWith({"import", book, list, "--what", "targets", "--rest"}).out == book + ": 1 target put in\n");
    const std::string written = runWith({"export", book, "--as", "csv", "--what", "targets"}).out;
    CHECK(written.find("T01,Abelia × grandiflora,80,2028-06-01") != std::string::npos);
    // What is written that way can be read that way.
    std::ofstream(list) << written;
    const std::string other = (folder.path() / "other.wbook").string();
    REQUIRE(runWith({"new", other}).status == 0);
    CHECK(runWith({"import", other, list, "--what", "targets"}).out == other + ": 1 target put in\n");
    CHECK(runWith({"export", other, "--as", "csv", "--what", "targets"}).out == written);
    CHECK(runWith({"check", book}).status == 0);
}

TEST_CASE("Stocks, recipes and earlier results are put in from lists") {
    const TemporaryFolder folder;
    const std::string book = (folder.path() / "a.warmbench").string();
    const std::string list = (folder.path() / "list.csv").string();
    REQUIRE(runWith({"new", book, "--from", sample()}).status == 0);
    const auto import = [&](const std::string& what, const std::string& text) {
        std::ofstream(list, std::ios::trunc) << text;
        return runWith({"import", book, list, "--what", what});
    };
    CHECK(import("stocks", "taxon,name,plants,wood,from,to,cuttings\n"
                           "Abelia × grandiflora,new hedge,12,softwood,05-10,07-15,6\n")
              .out == book + ": 1 line of stocks put in\n");
    CHECK(import("recipes", "taxon,wood,take_percent\nAbelia × grandiflora,softwood,70 to 85\n").status == 0);
    CHECK(import("results", "taxon,wood,struck,cuttings,plants,potted on,stock\n"
                            "Abelia × grandiflora,softwood,2024-06-01,100,81,2024-08-02,new hedge\n")
              .status == 0);
    CHECK(import("results", "taxon,wood,struck,cuttings,plants,potted on\n"
                            "Abelia × grandiflora,softwood,2024-06-01,100,181,2024-08-02\n")
              .error.find("line 2: plants: 181 of 100") != std::string::npos);
    CHECK(import("plants", "").status == 2);
    CHECK(runWith({"check", book}).status == 0);
}

TEST_CASE("A backup is a book, and takes no other file's place") {
    const TemporaryFolder folder;
    const std::string book = (folder.path() / "a.warmbench").string();
    REQUIRE(runWith({"new", book, "--from", sample()}).status == 0);
    REQUIRE(runWith({"backup", book, "--out", (folder.path() / "copy.warmbench").string()}).status == 0);
    CHECK(runWith({"check", (folder.path() / "copy.warmbench").string()}).status == 0);
    CHECK(runWith({"backup", book, "--out", (folder.path() / "copy.warmbench").string()}).status == 3);
    CHECK(runWith({"new", book}).status == 2);
}

TEST_CASE("What is no house book is refused in one line and left as it is") {
    const TemporaryFolder folder;
    const std::string text = (folder.path() / "note.txt").string();
    std::ofstream(text) << "a shopping list\n";
    for (const auto& call : std::vector<std::vector<std::string>>{
             {"check", text},
             {"check", (folder.path() / "absent.warmbench").string()},
             {"plan", text, "--from", "2026-12-01", "--days", "7"},
             {"export", text, "--as", "json"},
             {"new", (folder.path() / "x.warmbench").string(), "--from", text},
             {"backup", text, "--out", (folder.path() / "y.warmbench").string()}}) {
        const ProgramRun run = runWith(call);
        INFO(call[0] << " " << call[1]);
        CHECK(run.status == 2);
        CHECK(std::count(run.error.begin(), run.error.end(), '\n') == 1);
    }
    CHECK(content(text) == "a shopping list\n");
    CHECK_FALSE(fs::exists((folder.path() / "x.warmbench").string()));
    CHECK_FALSE(fs::exists((folder.path() / "y.warmbench").string()));
}

TEST_CASE("A list that opens in a spreadsheet runs no formula") {
    const TemporaryFolder folder;
    const std::string description = (folder.path() / "house.json").string();
    std::ofstream(description) << R"({"format": "warmbench-house-book", "version": 1,
        "taxa": [{"id": 1, "name": "=1+1"}, {"id": 2, "name": "Plain, with a comma"}]})";
    const std::string book = (folder.path() / "a.warmbench").string();
    REQUIRE(runWith({"new", book, "--from", description}).status == 0);
    const ProgramRun run = runWith({"export", book, "--as", "csv", "--what", "taxa"});
    REQUIRE(run.status == 0);
    CHECK(run.out.find("1,'=1+1,") != std::string::npos);
    CHECK(run.out.find("2,\"Plain, with a comma\",") != std::string::npos);
    CHECK(runWith({"export", book, "--as", "csv", "--what", "weather"}).status == 2);
}
