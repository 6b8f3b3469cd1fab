#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/cost_json.h"
#include "app/command/figures.h"
#include "app/command/interrupt.h"
#include "app/command/number_option.h"
#include "app/command/worth_table.h"

#include "core/planner/format/answer_format.h"
#include "core/planner/format/problem_format.h"
#include "core/planner/planner.h"
#include "core/planner/worth/worth.h"
#include "core/quantity/decimal.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <filesystem>
#include <iostream>
#include <memory>

#include <unistd.h>

namespace warmbench::app {
namespace {

namespace fs = std::filesystem;
using planner::Ending;
using planner::Problem;
using planner::Solved;

struct SolveAsked {
    std::string problem;
    std::string answer;
    double seconds = planner::Options{}.seconds;
    std::int64_t rounds = 0; ///< 0: by time
    std::int64_t seed = 1;
    std::int64_t threads = planner::Options{}.threads;
    bool progress = false;
    bool worth = false;
    bool why = false;
    bool json = false;
};

/// What is wrong with the place of the answer, found before the work begins.
Outcome checkAnswerPlace(const SolveAsked& asked) {
    const fs::path path = asked.answer;
    const fs::path folder = path.has_parent_path() ? path.parent_path() : fs::path(".");
    std::error_code none;
    const auto refusal = [&](const std::string& expected) {
        return Refusal{"--out", "found '" + asked.answer + "', expected " + expected};
    };
    if (path.empty() || fs::is_directory(path, none)) return refusal("the name of a file");
    if (!fs::is_directory(folder, none)) return refusal("a file in a folder that is there");
    const bool isDevice = fs::exists(path, none) && !fs::is_regular_file(path, none);
    if (!isDevice && ::access(folder.c_str(), W_OK) != 0)
        return refusal("a file in a folder that can be written to");
    if (fs::equivalent(path, asked.problem, none)) return refusal("another file than the problem");
    return std::nullopt;
}

void printProgress(const planner::Progress& progress) {
    std::cerr << fixedText(progress.seconds, 1) << " s: best " << decimalText(progress.best, 3) << ", bound "
              << decimalText(progress.bound, 3) << ", round " << progress.rounds << '\n';
}

/// Tells of progress where something has changed.
class ProgressLines {
public:
    void operator()(const planner::Progress& progress) {
        if (progress.best == m_best && progress.bound == m_bound) return;
        m_best = progress.best;
        m_bound = progress.bound;
        printProgress(progress);
    }

private:
    std::int64_t m_best = -1;
    std::int64_t m_bound = -1;
};

planner::Options optionsOf(const SolveAsked& asked) {
    planner::Options options;
    options.seconds = asked.seconds;
    if (asked.rounds > 0) options.rounds = asked.rounds;
    options.seed = static_cast<std::uint64_t>(asked.seed);
    options.threads = static_cast<int>(asked.threads);
    if (asked.progress) options.progress = ProgressLines{};
    return options;
}

const char* endingName(Ending ending) {
    switch (ending) {
    case Ending::Proven:
        return "proven";
    case Ending::TimeUp:
        return "time-up";
    case Ending::RoundsUp:
        return "rounds-up";
    case Ending::Stopped:
        break;
    }
    return "stopped";
}

/// How far the total can be from the best possible, in per cent of that; nothing where no bound is known.
std::optional<double> greatestGap(const planner::Answer& answer) {
    const std::int64_t total = answer.cost.total();
    if (answer.bound == total) return 0;
    if (answer.bound <= 0) return std::nullopt;
    return 100.0 * static_cast<double>(total - answer.bound) / static_cast<double>(answer.bound);
}

std::string gapWords(const planner::Answer& answer) {
    const auto gap = greatestGap(answer);
    if (!gap) return "no bound is known";
    if (*gap == 0) return "the best possible";
    return "at most " + fixedText(std::ceil(*gap * 10) / 10, 1) + " % from the best possible";
}

std::string costWords(const Problem& problem, const planner::Cost& cost) {
    return "cost " + decimalText(cost.total(), 3) + " (unplaced " + decimalText(cost.unplaced, 3) +
           ", late " + decimalText(cost.late, 3) + ", off ideal " + decimalText(cost.offIdeal, 3) +
           ", mats " + decimalText(cost.mats, 3) + ", moves " + decimalText(cost.moves, 3) + ", scatter " +
           decimalText(cost.scatter, 3) +
           (problem.version == 2 ? ", changes " + decimalText(cost.changes, 3) : "") + ")";
}

/// What more room, stock, hands and mats are worth, if that is asked for.
std::optional<planner::Worth> worthOf(const SolveAsked& asked, const Problem& problem, const Solved& solved,
                                      const std::stop_token& stop) {
    if (!asked.worth || solved.ending == Ending::Stopped) return std::nullopt;
    planner::Options options = optionsOf(asked);
    options.seconds /= 4;
    options.progress = nullptr;
    return planner::worth(problem, solved, options, stop);
}

/// A line for each batch that is left out, late or off its ideal heat.
void printWhy(const Problem& problem, const Solved& solved) {
    const auto print = [&](int batch, const std::string& words) {
        std::cout << problem.batches[static_cast<std::size_t>(batch)].id << ' ' << words << '\n';
    };
    for (const planner::UnplacedBatch& unplaced : solved.answer.unplaced)
        print(unplaced.batch, "is left out: " + unplaced.reason);
    for (const planner::Compromise& compromise : solved.compromises)
        print(compromise.batch, compromise.reason);
}

/// The same as a list.
nlohmann::ordered_json whyJson(const Problem& problem, const Solved& solved) {
    nlohmann::ordered_json list = nlohmann::ordered_json::array();
    const auto add = [&](int batch, bool placed, const std::string& reason) {
        list.push_back({{"batch", problem.batches[static_cast<std::size_t>(batch)].id},
                        {"placed", placed},
                        {"reason", reason}});
    };
    for (const planner::UnplacedBatch& unplaced : solved.answer.unplaced)
        add(unplaced.batch, false, unplaced.reason);
    for (const planner::Compromise& compromise : solved.compromises)
        add(compromise.batch, true, compromise.reason);
    return list;
}

void report(const SolveAsked& asked, const Problem& problem, const Solved& solved, double seconds,
            const std::stop_token& stop) {
    const planner::Answer& answer = solved.answer;
    const auto worth = worthOf(asked, problem, solved, stop);
    if (asked.json) {
        const auto gap = greatestGap(answer);
        nlohmann::ordered_json json{
            {"placed", answer.placed.size()},
            {"batches", problem.batches.size()},
            {"cost", costJson(answer.cost, problem.version)},
            {"bound", unitsJson(answer.bound)},
            {"gap_percent", gap ? nlohmann::ordered_json(*gap) : nlohmann::ordered_json()},
            {"ending", endingName(solved.ending)},
            {"rounds", solved.rounds},
            {"seconds", seconds}};
        if (asked.why) json["why"] = whyJson(problem, solved);
        if (worth) json["worth"] = worthJson(problem, *worth);
        printJson(json);
        return;
    }
    std::cout << answer.placed.size() << " of " << counted(problem.batches.size(), "batch", "batches")
              << " placed, " << costWords(problem, answer.cost) << "; " << gapWords(answer) << "; "
              << fixedText(seconds, 1) << (solved.ending == Ending::Stopped ? " s, stopped\n" : " s\n");
    if (asked.why) printWhy(problem, solved);
    if (worth) std::cout << worthTable(problem, *worth);
}

int runSolve(const SolveAsked& asked) {
    if (const auto refusal = checkAnswerPlace(asked)) return refuse(*refusal);
    const auto problem = planner::readProblemFile(asked.problem);
    if (!problem) return refuseFile(problem.refusal());
    if (const auto refusal = planner::checkSize(*problem))
        return refuseFile({asked.problem + ": /days", refusal->what});
    const auto begin = std::chrono::steady_clock::now();
    const Interrupt interrupt;
    const auto solved = planner::solve(*problem, optionsOf(asked), interrupt.token());
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - begin;
    if (!solved) {
        refuseFile({asked.problem, solved.refusal().text()});
        return answerIsNo;
    }
    if (const auto refusal = planner::writeAnswerFile(asked.answer, *problem, solved->answer)) {
        refuseFile(*refusal);
        return storageFailed;
    }
    report(asked, *problem, *solved, spent.count(), interrupt.token());
    return done;
}

} // namespace

void addSolve(CLI::App& program, Work& work) {
    CLI::App& call = *program.add_subcommand("solve", "Plan a planning problem, and write the answer.");
    const auto asked = std::make_shared<SolveAsked>();
    call.add_option("problem", asked->problem, "the planning problem, as JSON")->required();
    call.add_option("--out", asked->answer, "file for the answer, replaced only when it is complete")
        ->required();
    addNumber(call, "--seconds", asked->seconds, atLeast(0),
              "time for the search; ignored beside --rounds. Ctrl-C ends it with the best plan by then");
    addWholeNumber(call, "--seed", asked->seed, atLeast(0), "another seed searches another way");
    addWholeNumber(call, "--threads", asked->threads, between(1, 256), "threads that search");
    addWholeNumber(call, "--rounds", asked->rounds, atLeast(1),
                   "rounds of search in place of time: the same answer on every machine");
    call.add_flag("--progress", asked->progress, "tell of progress on standard error");
    call.add_flag("--why", asked->why,
                  "tell why each batch that is left out, late or off its ideal heat is so");
    call.add_flag(
        "--worth", asked->worth,
        "tell what one more unit of each zone, stock and working day would save, and what each mat "
        "costs and saves; zones, mats and the five dearest stocks and days are solved again, each in "
        "a quarter of --seconds");
    call.add_flag("--json", asked->json, "print JSON");
    call.callback([asked, &work] { work = [asked] { return runSolve(*asked); }; });
}

} // namespace warmbench::app
