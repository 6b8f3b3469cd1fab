#include "tests/app/command/program_run.h"
#include "tests/support/planning_data.h"
#include "tests/support/process.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>

#include <algorithm>

using namespace warmbench::tests;
namespace fs = std::filesystem;

namespace {

std::string problemFile(const std::string& name) {
    return planningData(name).string();
}

bool isOneLine(const std::string& text) {
    return std::count(text.begin(), text.end(), '\n') == 1 && text.back() == '\n';
}

std::string edited(const std::string& name, const std::string& find, const std::string& replacement) {
    std::string text = fileText(planningData(name));
    REQUIRE(has(text, find));
    return text.replace(text.find(find), find.size(), replacement);
}

void write(const fs::path& path, const std::string& text) {
    std::ofstream(path, std::ios::binary) << text;
}

/// A folder for answers, with the name of one in it.
struct Answers {
    TemporaryFolder folder;
    std::string answer = (folder.path() / "answer.json").string();
    [[nodiscard]] bool empty() const { return fs::is_empty(folder.path()); }
};

} // namespace

TEST_CASE("The program solves a problem and finds its own answer valid") {
    const Answers answers;
    const ProgramRun solved =
        runProcess(WARMBENCH_PROGRAM, {"solve", problemFile("p01-tiny.json"), "--out", answers.answer,
                                       "--rounds", "200", "--seed", "7", "--threads", "1"});
    CHECK(solved.status == 0);
    CHECK(solved.error.empty());
    CHECK(isOneLine(solved.out));
    CHECK(has(solved.out,
              "2 of 3 batches placed, cost 11.8 (unplaced 5, late 2, off ideal 1.5, mats 3, moves 0.3"));
    const ProgramRun verified =
        runProcess(WARMBENCH_PROGRAM, {"verify", problemFile("p01-tiny.json"), answers.answer});
    CHECK(verified.status == 0);
    CHECK(verified.out.rfind("valid total=11.8 bound=", 0) == 0);
    CHECK(verified.error.empty());
}

TEST_CASE("The program tells what one more unit and each mat are worth") {
    const Answers answers;
    std::vector<std::string> call = {"solve",   problemFile("p01-tiny.json"),
                                     "--out",   answers.answer,
                                     "--worth", "--rounds",
                                     "200",     "--threads",
                                     "1"};
    const ProgramRun told = runProcess(WARMBENCH_PROGRAM, call);
    CHECK(told.status == 0);
    CHECK(has(told.out, "2 of 3 batches placed, cost 11.8"));
    CHECK(has(told.out, "\nMat of"));
    call.push_back("--json");
    const ProgramRun written = runProcess(WARMBENCH_PROGRAM, call);
    CHECK(written.status == 0);
    const auto worth = nlohmann::json::parse(written.out).at("worth");
    CHECK(worth.at("total") == 11.8);
    REQUIRE(worth.at("mats").size() == 2);
    // Without its mat, zone a can take none of the three, whose values are 5, 20 and 3.
    CHECK(worth.at("mats").at(0).at("zone") == "a");
    CHECK(worth.at("mats").at(0).at("cost") == 3);
    CHECK(worth.at("mats").at(0).at("saves") == 28 - 11.8);
}

TEST_CASE("The program tells why each batch is left out, late or off its ideal heat, in words and as JSON") {
    const Answers answers;
    std::vector<std::string> call = {"solve", problemFile("p01-tiny.json"),
                                     "--out", answers.answer,
                                     "--why", "--rounds",
                                     "200",   "--threads",
                                     "1"};
    const ProgramRun told = runWith(call);
    CHECK(told.status == 0);
    // By hand: C takes 5 cuttings, and there are none before day 5; A is two days late, and 5 degrees off for
    // six days.
    CHECK(
        has(told.out, "\nC is left out: stock s gives 0 cuttings by day 4, 5 short of the 5 that it takes"));
    CHECK(has(told.out, "\nA ends 2 days late, which counts as 2.00: "));
    CHECK(has(told.out, "\nA is off its ideal heat, which counts as 1.50: "));
    call.push_back("--json");
    const ProgramRun written = runWith(call);
    CHECK(written.status == 0);
    const auto why = nlohmann::json::parse(written.out).at("why");
    REQUIRE(why.size() == 3);
    CHECK(why[0]["batch"] == "C");
    CHECK(why[0]["placed"] == false);
    CHECK(why[1]["batch"] == "A");
    CHECK(why[1]["placed"] == true);
    for (const auto& one : why) CHECK(has(told.out, one["reason"].get<std::string>()));
}

TEST_CASE("A problem that no memory holds is wrong input, at its place") {
    const Answers answers;
    auto problem = nlohmann::json::parse(fileText(planningData("p01-tiny.json")));
    problem["days"] = 1'000'000'000;
    problem["batches"][0]["strike"][1] = 999'999'999;
    const std::string file = (answers.folder.path() / "problem.json").string();
    write(file, problem.dump());
    const ProgramRun run = runWith({"solve", file, "--out", answers.answer});
    CHECK(run.status == 2);
    CHECK(isOneLine(run.error));
    CHECK(run.error.rfind(file + ": /days: found ", 0) == 0);
    CHECK_FALSE(fs::exists(answers.answer));
}

TEST_CASE("A plan made again over its own answer stays, and its changes are in the cost") {
    const Answers answers;
    const std::string file = (answers.folder.path() / "problem.json").string();
    REQUIRE(runWith({"solve", problemFile("p02-small.json"), "--out", answers.answer, "--rounds", "300"})
                .status == 0);
    auto problem = nlohmann::json::parse(fileText(planningData("p02-small.json")));
    problem["version"] = 2;
    problem["previous"] = nlohmann::json::parse(fileText(answers.answer)).at("placed");
    problem["change_cost"] = 1000;
    write(file, problem.dump());
    const ProgramRun again =
        runWith({"solve", file, "--out", answers.answer, "--rounds", "20", "--seed", "5"});
    CHECK(again.status == 0);
    CHECK(has(again.out, ", changes 0); "));
    CHECK(runWith({"verify", file, answers.answer}).status == 0);
    // One that cannot stand as before costs a change wherever it goes.
    problem["previous"][0]["stays"] = nlohmann::json::array();
    write(file, problem.dump());
    const ProgramRun moved =
        runWith({"solve", file, "--out", answers.answer, "--rounds", "20", "--seed", "5", "--json"});
    CHECK(nlohmann::json::parse(moved.out).at("cost").at("changes") == 1000);
    const ProgramRun verified = runWith({"verify", file, answers.answer, "--json"});
    CHECK(nlohmann::json::parse(verified.out).at("cost") == nlohmann::json::parse(moved.out).at("cost"));
}

TEST_CASE("The program's exit status says whether an answer, the input or storage is wrong") {
    const Answers answers;
    const std::string tiny = problemFile("p01-tiny.json");
    CHECK(runProcess(WARMBENCH_PROGRAM, {"verify", tiny, problemFile("example-answer.json")}).status == 1);
    CHECK(runProcess(WARMBENCH_PROGRAM, {"verify", tiny, problemFile("nowhere.json")}).status == 1);
    CHECK(runProcess(WARMBENCH_PROGRAM, {"verify", problemFile("nowhere.json"), tiny}).status == 2);
    CHECK(runProcess(WARMBENCH_PROGRAM, {"solve", tiny}).status == 2);
    const ProgramRun full =
        runProcess(WARMBENCH_PROGRAM, {"solve", tiny, "--out", "/dev/full", "--rounds", "10"});
    CHECK(full.status == 3);
    CHECK(full.error ==
          "/dev/full: cannot be written: No space left on device, expected room for a file there\n");
}

TEST_CASE("Malformed problems are refused in one line, and an answer that was there stays") {
    const Answers answers;
    write(answers.answer, "what was there");
    for (const BadProblem& bad : badProblems()) {
        const std::string file = problemFile("bad/" + bad.file);
        INFO(bad.file << ": " << bad.what);
        for (const auto& call : {std::vector<std::string>{"solve", file, "--out", answers.answer},
                                 std::vector<std::string>{"verify", file, answers.answer}}) {
            const ProgramRun run = runWith(call);
            CHECK(run.status == 2);
            CHECK(run.out.empty());
            CHECK(isOneLine(run.error));
            CHECK(run.error.rfind(file + ": " + bad.pointer + ": ", 0) == 0);
        }
    }
    CHECK(fileText(answers.answer) == "what was there");
    CHECK(std::distance(fs::directory_iterator(answers.folder.path()), fs::directory_iterator()) == 1);
}

TEST_CASE("A wrong line names the option, what was found and what was expected") {
    const Answers answers;
    const auto errorOf = [&](std::vector<std::string> options) {
        options.insert(options.begin(), {"solve", problemFile("p01-tiny.json"), "--out", answers.answer});
        const ProgramRun run = runWith(options);
        CHECK(run.status == 2);
        CHECK(isOneLine(run.error));
        return run.error;
    };
    CHECK(errorOf({"--seconds", "-1"}) ==
          "warmbench: --seconds: found '-1', expected a number of at least 0\n");
    CHECK(errorOf({"--seconds", "soon"}) ==
          "warmbench: --seconds: found 'soon', expected a number of at least 0\n");
    CHECK(errorOf({"--seconds", "nan"}) ==
          "warmbench: --seconds: found 'nan', expected a number of at least 0\n");
    CHECK(errorOf({"--seed", "1.5"}) ==
          "warmbench: --seed: found '1.5', expected a whole number of at least 0\n");
    CHECK(errorOf({"--threads", "0"}) ==
          "warmbench: --threads: found '0', expected a whole number from 1 to 256\n");
    CHECK(errorOf({"--rounds", "0"}) ==
          "warmbench: --rounds: found '0', expected a whole number of at least 1\n");
    CHECK(has(errorOf({"--second", "1"}), "found '--second', expected only its own options: "));
    CHECK(has(errorOf({"more"}), "found 'more', expected only its own options: "));
    CHECK(answers.empty());
}

TEST_CASE("A place where no answer can be written is refused before the search") {
    const Answers answers;
    const std::string tiny = problemFile("p01-tiny.json");
    const auto errorOf = [&](const std::string& out) {
        const ProgramRun run = runWith({"solve", tiny, "--out", out, "--seconds", "1000"});
        CHECK(run.status == 2);
        CHECK(isOneLine(run.error));
        return run.error;
    };
    const std::string folder = answers.folder.path().string();
    CHECK(errorOf(folder) == "warmbench: --out: found '" + folder + "', expected the name of a file\n");
    CHECK(errorOf(folder + "/no/answer.json") ==
          "warmbench: --out: found '" + folder +
              "/no/answer.json', expected a file in a folder that is there\n");
    CHECK(errorOf(tiny) ==
          "warmbench: --out: found '" + tiny + "', expected another file than the problem\n");
    CHECK(errorOf("") == "warmbench: --out: found '', expected the name of a file\n");
}

TEST_CASE("Pins and held batches that cannot be kept together are told in one line, without an answer") {
    const Answers answers;
    const std::string problem = (answers.folder.path() / "problem.json").string();
    // Pinned to the slots on which a held batch stands, which is no fault of the pin alone.
    write(
        problem,
        edited("example-problem.json", "\"pin\": { \"strike_day\": 3, \"zone\": \"north-1\" }",
               "\"pin\": { \"strike_day\": 0, \"zone\": \"north-1\", \"slots\": [[0, 1, 1, 1], [0, 2, 1, 1], "
               "[0, 3, 1, 1], [0, 4, 1, 1], [0, 5, 1, 1], [0, 6, 1, 1], [1, 1, 1, 1], [1, 2, 1, 1], "
               "[1, 3, 1, 1], [1, 4, 1, 1], [1, 5, 1, 1], [1, 6, 1, 1]] }"));
    const ProgramRun run = runWith({"solve", problem, "--out", answers.answer, "--rounds", "50"});
    CHECK(run.status == 1);
    CHECK(run.out.empty());
    CHECK(isOneLine(run.error));
    CHECK(run.error.rfind(problem + ": ", 0) == 0);
    CHECK(has(run.error, "T14-a"));
    CHECK_FALSE(fs::exists(answers.answer));
}

TEST_CASE("The same seed and rounds give the same answer on any number of threads") {
    const Answers answers;
    std::string first;
    for (const char* threads : {"1", "2", "3"}) {
        REQUIRE(runWith({"solve", problemFile("p02-small.json"), "--out", answers.answer, "--rounds", "100",
                         "--seed", "3", "--threads", threads})
                    .status == 0);
        const std::string text = fileText(answers.answer);
        if (first.empty()) first = text;
        CHECK(text == first);
    }
}

TEST_CASE("Progress is told on standard error, and only when it is asked for") {
    const Answers answers;
    const std::vector<std::string> call{
        "solve", problemFile("p02-small.json"), "--out", answers.answer, "--rounds", "50"};
    CHECK(runWith(call).error.empty());
    std::vector<std::string> asking = call;
    asking.push_back("--progress");
    const ProgramRun run = runWith(asking);
    CHECK(run.status == 0);
    CHECK(has(run.error, " s: best "));
    CHECK(isOneLine(run.out));
}

TEST_CASE("Both calls give JSON that agrees") {
    const Answers answers;
    const ProgramRun solved = runWith(
        {"solve", problemFile("p01-tiny.json"), "--out", answers.answer, "--rounds", "200", "--json"});
    REQUIRE(solved.status == 0);
    const auto plan = nlohmann::json::parse(solved.out);
    CHECK(plan["placed"] == 2);
    CHECK(plan["batches"] == 3);
    CHECK(plan["cost"]["total"] == 11.8);
    const ProgramRun verified = runWith({"verify", problemFile("p01-tiny.json"), answers.answer, "--json"});
    CHECK(verified.status == 0);
    const auto verdict = nlohmann::json::parse(verified.out);
    CHECK(verdict["valid"] == true);
    CHECK(verdict["cost"] == plan["cost"]);
    CHECK(verdict["bound"] == plan["bound"]);
    CHECK(verdict["violations"].empty());

    const ProgramRun other =
        runWith({"verify", problemFile("example-problem.json"), answers.answer, "--json"});
    CHECK(other.status == 1);
    const auto refused = nlohmann::json::parse(other.out);
    CHECK(refused["valid"] == false);
    CHECK(refused["bound"].is_null());
    CHECK(refused["violations"].size() > 3);
}

TEST_CASE("An answer with a fault is invalid: each violation on a line, then their number") {
    const Answers answers;
    write(answers.answer, edited("example-answer.json", "[2, 0, 1, 1]", "[1, 0, 1, 1]"));
    const ProgramRun run = runWith({"verify", problemFile("example-problem.json"), answers.answer});
    CHECK(run.status == 1);
    CHECK(run.error.empty());
    CHECK(has(run.out, "T14-a stay 0: two containers at [1, 0]\n"));
    CHECK(has(run.out, "\ninvalid "));
    CHECK(run.out.substr(run.out.size() - 12) == " violations\n");
}
