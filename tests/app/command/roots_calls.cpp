#include "app/storage/book_file.h"
#include "core/round/weaning.h"
#include "tests/app/command/program_run.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <set>

using namespace warmbench;
using warmbench::tests::ProgramRun;
using warmbench::tests::runWith;
using warmbench::tests::TemporaryFolder;

namespace {

std::string data(const char* name) {
    return std::string(WARMBENCH_SOURCE) + "/sample-data/" + name;
}

/// The sample nursery in a folder of its own.
struct SampleBook {
    TemporaryFolder folder;
    std::string path = (folder.path() / "sample.warmbench").string();

    SampleBook() { REQUIRE(runWith({"new", path, "--from", data("nursery.json")}).status == 0); }
    [[nodiscard]] std::string file(const char* name) const { return (folder.path() / name).string(); }
    [[nodiscard]] std::string write(const char* name, const std::string& text) const {
        std::ofstream(file(name), std::ios::binary) << text;
        return file(name);
    }
};

std::size_t checksIn(const std::string& book) {
    const auto exported = nlohmann::json::parse(runWith({"export", book, "--as", "json"}).out);
    return exported["root_checks"].size();
}

} // namespace

TEST_CASE("The sample nursery's batches have forecasts, and its targets a sureness") {
    const SampleBook book;
    const ProgramRun run = runWith({"forecast", book.path, "--day", "2026-11-30", "--json"});
    REQUIRE(run.status == 0);
    const auto told = nlohmann::json::parse(run.out);
    CHECK(told["batches"].size() == 27);
    for (const auto& batch : told["batches"]) {
        const double plants = batch["plants"];
        CHECK(plants >= batch["plants_band"][0].get<double>() - 1);
        CHECK(plants <= batch["plants_band"][1].get<double>() + 1);
        CHECK(batch["plants_sure"].get<double>() <= plants + 1);
        CHECK(batch["rooted"].get<double>() <= 1);
    }
    CHECK(told["targets"].size() == 60);
    const std::string code = told["batches"][0]["batch"];
    const ProgramRun one = runWith({"forecast", book.path, "--day", "2026-11-30", "--batch", code});
    CHECK(one.status == 0);
    CHECK(one.out.find("Rooted of those alive, by day") != std::string::npos);
    const ProgramRun none = runWith({"forecast", book.path, "--day", "2026-11-30", "--batch", "99-001-A"});
    CHECK(none.status == 2);
    CHECK(none.error.find("found '99-001-A'") != std::string::npos);
    CHECK(runWith({"forecast", book.path, "--day", "soon"}).status == 2);
}

TEST_CASE("A round is walked, typed in, asked about, and wrong rows change nothing") {
    const SampleBook book;
    const ProgramRun round = runWith({"round", book.path, "--day", "2026-11-30", "--json"});
    REQUIRE(round.status == 0);
    const auto stops = nlohmann::json::parse(round.out)["stops"];
    REQUIRE(stops.size() >= 2);
    const std::size_t before = checksIn(book.path);
    const auto row = [&](std::size_t i, const std::string& counts) {
        return stops[i]["batch"].get<std::string>() + "," + std::to_string(stops[i]["container"].get<int>()) +
               "," + counts + "\n";
    };
    const std::string head = "batch,container,examined,rooted\n";
    const std::string wrong = book.write("wrong.csv", head + row(0, "4,5") + row(1, "4,4"));
    const ProgramRun refused = runWith({"round", book.path, "--day", "2026-11-30", "--enter", wrong});
    CHECK(refused.status == 2);
    CHECK(refused.error.find("line 2") != std::string::npos);
    CHECK(refused.error.find("5 rooted, but only 4 examined") != std::string::npos);
    CHECK(checksIn(book.path) == before);

    const std::string twice = book.write("twice.csv", head + row(0, "4,4") + row(0, "4,4"));
    CHECK(runWith({"round", book.path, "--day", "2026-11-30", "--enter", twice}).status == 1);
    CHECK(checksIn(book.path) == before);
    CHECK(runWith({"round", book.path, "--day", "2026-11-30", "--enter", twice, "--anyway"}).status == 0);
    CHECK(checksIn(book.path) == before + 2);
    CHECK(runWith({"check", book.path}).status == 0);
}

TEST_CASE("A round worked on a copy is brought home once") {
    const SampleBook book;
    const std::string copy = book.file("copy.warmbench");
    REQUIRE(runWith({"backup", book.path, "--out", copy}).status == 0);
    const auto stops =
        nlohmann::json::parse(runWith({"round", copy, "--day", "2026-11-30", "--json"}).out)["stops"];
    const std::string results =
        book.write("results.csv", "batch,container,examined,rooted\n" + stops[0]["batch"].get<std::string>() +
                                      "," + std::to_string(stops[0]["container"].get<int>()) + ",5,5\n");
    REQUIRE(runWith({"round", copy, "--day", "2026-11-30", "--enter", results, "--anyway"}).status == 0);
    const std::size_t before = checksIn(book.path);
    CHECK(runWith({"round", book.path, "--merge", copy}).status == 0);
    CHECK(checksIn(book.path) == before + 1);
    CHECK(runWith({"round", book.path, "--merge", copy}).out.find(": 0 checks entered") != std::string::npos);
    // Both books look at one container on one day and find other roots: nothing is brought home unasked.
    const auto entered = [&](const std::string& into, const std::string& counts) {
        const std::string file = book.write(
            "again.csv", "batch,container,examined,rooted\n" + stops[1]["batch"].get<std::string>() + "," +
                             std::to_string(stops[1]["container"].get<int>()) + "," + counts + "\n");
        return runWith({"round", into, "--day", "2026-11-30", "--enter", file, "--anyway"}).status;
    };
    REQUIRE(entered(copy, "2,2") == 0);
    REQUIRE(entered(book.path, "2,1") == 0);
    const ProgramRun conflict = runWith({"round", book.path, "--merge", copy});
    CHECK(conflict.status == 1);
    CHECK(conflict.out.find("in both books: 1 of 2 rooted here, 2 of 2 rooted in the copy") !=
          std::string::npos);
    CHECK(checksIn(book.path) == before + 2);
    CHECK(runWith({"round", book.path, "--merge", copy, "--anyway"}).status == 0);
    CHECK(checksIn(book.path) == before + 2);
}

TEST_CASE("What was weaned on a copy is brought home by the copy's journal, and what was taken back is not") {
    const SampleBook book;
    const std::string copy = book.file("copy.warmbench");
    REQUIRE(runWith({"backup", book.path, "--out", copy}).status == 0);
    const Day day = *Day::fromIso("2026-11-30");
    std::string code;
    {
        const auto file = app::BookFile::open(copy, app::OpenMode::Write);
        REQUIRE(file);
        for (const auto& [id, batch] : (*file)->book().all<Batch>()) {
            if (batch.state != BatchState::Struck) continue;
            const auto command = round::weanCommand((*file)->book(), id, day);
            if (!command || (*file)->perform(*command)) continue;
            if (!code.empty()) {
                // A second one, which she thought better of.
                REQUIRE_FALSE((*file)->undo());
                break;
            }
            code = batch.code;
        }
    }
    REQUIRE_FALSE(code.empty());
    const ProgramRun merged = runWith({"round", book.path, "--merge", copy});
    INFO(merged.out);
    CHECK(merged.status == 0);
    CHECK(merged.out.find(": 0 checks, 1 weaning entered") != std::string::npos);
    const auto home = app::BookFile::open(book.path, app::OpenMode::Read);
    const auto away = app::BookFile::open(copy, app::OpenMode::Read);
    REQUIRE(home);
    REQUIRE(away);
    CHECK((*home)->book().all<Stay>() == (*away)->book().all<Stay>());
    CHECK(runWith({"round", book.path, "--merge", copy}).out.find("weaning") == std::string::npos);
}

TEST_CASE("Takes are told by every grouping, and own figures are taken over when asked for") {
    const SampleBook book;
    std::set<int> sums;
    for (const char* by : {"taxon", "wood", "stock", "hormone", "medium", "heat", "month"}) {
        const ProgramRun run = runWith({"take", book.path, "--by", by, "--json"});
        REQUIRE(run.status == 0);
        int struck = 0;
        const auto told = nlohmann::json::parse(run.out);
        for (const auto& group : told["groups"]) struck += group["struck"].get<int>();
        sums.insert(struck);
    }
    // However they are grouped, the cuttings are the same.
    REQUIRE(sums.size() == 1);
    CHECK(*sums.begin() > 1000);
    CHECK(runWith({"take", book.path, "--by", "weather"}).status == 2);
    const auto own = nlohmann::json::parse(runWith({"take", book.path, "--json"}).out)["own_figures"];
    REQUIRE_FALSE(own.empty());
    const std::string name = own[0]["taxon"].get<std::string>() + ", " + own[0]["wood"].get<std::string>();
    CHECK(runWith({"take", book.path, "--adopt", name}).status == 0);
    CHECK(runWith({"take", book.path, "--adopt", "Nothing, softwood"}).status == 2);
    CHECK(runWith({"check", book.path}).status == 0);
}

TEST_CASE("Loggers of the sample nursery are read as they are, and heat has its price") {
    const SampleBook book;
    const ProgramRun plain =
        runWith({"climate", book.path, "--zone", "Bench 1 · A", "--file", data("logger-mat-1.csv")});
    CHECK(plain.status == 0);
    CHECK(plain.out.find("degree-days measured") != std::string::npos);
    const ProgramRun comma =
        runWith({"climate", book.path, "--zone", "Bench 1 · A", "--file", data("logger-mat-8.csv"),
                 "--utc-offset", "60", "--summer-time", "european"});
    CHECK(comma.status == 0);
    CHECK(comma.out.find("decimal comma") != std::string::npos);
    CHECK(runWith({"climate", book.path, "--zone", "Nowhere", "--file", data("logger-mat-1.csv")}).status ==
          2);
    CHECK(runWith({"climate", book.path, "--zone", "Bench 1 · A", "--file", data("targets.csv")}).status ==
          2);
    CHECK(runWith({"climate", book.path}).out.find("no readings") != std::string::npos);
    CHECK(runWith({"climate", book.path, "--file", data("logger-mat-1.csv")}).status == 2);
    const ProgramRun heat = runWith({"climate", book.path, "--heat", "--day", "2026-11-30"});
    CHECK(heat.status == 0);
    CHECK(heat.out.find("ready after") != std::string::npos);
}

TEST_CASE("A logger's readings are kept once, and tell the batches' forecast") {
    const SampleBook book;
    const std::vector<std::string> keep{
        "climate", book.path, "--zone", "Bench 1 · A", "--file", data("logger-mat-1.csv"), "--keep"};
    const ProgramRun first = runWith(keep);
    REQUIRE(first.status == 0);
    CHECK(first.out.find(": 0 readings kept") == std::string::npos);
    const ProgramRun again = runWith(keep);
    CHECK(again.status == 0);
    CHECK(again.out.find(": 0 readings kept") != std::string::npos);
    const ProgramRun house = runWith(
        {"climate", book.path, "--house", "Propagation house", "--file", data("logger-mat-1.csv"), "--keep"});
    CHECK(house.status == 2);
    CHECK(house.error.find("expected the name of a house") != std::string::npos);
    const ProgramRun told = runWith({"climate", book.path, "--day", "2026-11-20"});
    CHECK(told.status == 0);
    CHECK(told.out.find("Bench 1 · A, root zone: ") != std::string::npos);
    CHECK(told.out.find("Outside the range") != std::string::npos);
    CHECK(runWith({"check", book.path}).status == 0);
}
