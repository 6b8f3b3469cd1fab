#include "tests/app/command/program_run.h"

#include <nlohmann/json.hpp>

#include <catch2/catch.hpp>

#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

using warmbench::tests::ProgramRun;
using warmbench::tests::runWith;

namespace fs = std::filesystem;

namespace {

/// A folder of its own for one test, gone with it.
class Folder {
public:
    Folder() : m_path(fs::temp_directory_path() / ("warmbench-calls-" + std::to_string(::getpid()))) {
        fs::remove_all(m_path);
        fs::create_directories(m_path);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { fs::remove_all(m_path); }
    [[nodiscard]] std::string operator/(const char* name) const { return (m_path / name).string(); }

private:
    fs::path m_path;
};

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
    const Folder folder;
    const std::string book = folder / "sample.warmbench";
    REQUIRE(runWith({"new", book, "--from", sample()}).status == 0);
    const ProgramRun planned = runWith({"plan", book, "--from", "2026-12-01", "--days", "28", "--seconds",
                                        "1", "--json", "--accept", "--keep", folder / "kept"});
    REQUIRE(planned.status == 0);
    const auto plan = nlohmann::json::parse(planned.out);
    CHECK(plan["cuttings_wanted"].get<int>() > 500);
    CHECK(plan["cuttings_placed"].get<int>() * 10 >= plan["cuttings_wanted"].get<int>() * 9);
    const ProgramRun verified =
        runWith({"verify", folder / "kept/problem.json", folder / "kept/answer.json"});
    CHECK(verified.status == 0);
    CHECK(verified.out.find("valid total=") != std::string::npos);
    CHECK(runWith({"check", book}).status == 0);
}

TEST_CASE("A book goes to JSON and back without a loss") {
    const Folder folder;
    const std::string first = folder / "a.warmbench";
    const std::string second = folder / "b.warmbench";
    REQUIRE(runWith({"new", first, "--from", sample()}).status == 0);
    REQUIRE(runWith({"export", first, "--as", "json", "--out", folder / "a.json"}).status == 0);
    REQUIRE(runWith({"new", second}).status == 0);
    REQUIRE(runWith({"import", second, folder / "a.json"}).status == 0);
    REQUIRE(runWith({"export", second, "--as", "json", "--out", folder / "b.json"}).status == 0);
    CHECK(content(folder / "a.json") == content(folder / "b.json"));
    const ProgramRun again = runWith({"import", second, folder / "a.json"});
    CHECK(again.status == 2);
    CHECK(again.error.find("not empty") != std::string::npos);
    CHECK(runWith({"check", second}).status == 0);
}

TEST_CASE("A backup is a book, and takes no other file's place") {
    const Folder folder;
    const std::string book = folder / "a.warmbench";
    REQUIRE(runWith({"new", book, "--from", sample()}).status == 0);
    REQUIRE(runWith({"backup", book, "--out", folder / "copy.warmbench"}).status == 0);
    CHECK(runWith({"check", folder / "copy.warmbench"}).status == 0);
    CHECK(runWith({"backup", book, "--out", folder / "copy.warmbench"}).status == 3);
    CHECK(runWith({"new", book}).status == 2);
}

TEST_CASE("What is no house book is refused in one line and left as it is") {
    const Folder folder;
    const std::string text = folder / "note.txt";
    std::ofstream(text) << "a shopping list\n";
    for (const auto& call :
         std::vector<std::vector<std::string>>{{"check", text},
                                               {"check", folder / "absent.warmbench"},
                                               {"plan", text, "--from", "2026-12-01", "--days", "7"},
                                               {"export", text, "--as", "json"},
                                               {"new", folder / "x.warmbench", "--from", text},
                                               {"backup", text, "--out", folder / "y.warmbench"}}) {
        const ProgramRun run = runWith(call);
        INFO(call[0] << " " << call[1]);
        CHECK(run.status == 2);
        CHECK(std::count(run.error.begin(), run.error.end(), '\n') == 1);
    }
    CHECK(content(text) == "a shopping list\n");
    CHECK_FALSE(fs::exists(folder / "x.warmbench"));
    CHECK_FALSE(fs::exists(folder / "y.warmbench"));
}

TEST_CASE("A list that opens in a spreadsheet runs no formula") {
    const Folder folder;
    const std::string description = folder / "house.json";
    std::ofstream(description) << R"({"format": "warmbench-house-book", "version": 1,
        "taxa": [{"id": 1, "name": "=1+1"}, {"id": 2, "name": "Plain, with a comma"}]})";
    const std::string book = folder / "a.warmbench";
    REQUIRE(runWith({"new", book, "--from", description}).status == 0);
    const ProgramRun run = runWith({"export", book, "--as", "csv", "--what", "taxa"});
    REQUIRE(run.status == 0);
    CHECK(run.out.find("1,'=1+1,") != std::string::npos);
    CHECK(run.out.find("2,\"Plain, with a comma\",") != std::string::npos);
    CHECK(runWith({"export", book, "--as", "csv", "--what", "weather"}).status == 2);
}
