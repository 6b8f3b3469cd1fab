#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/number_option.h"
#include "app/command/open_book.h"
#include "app/command/plan_words.h"
#include "app/resource/built_in_recipes.h"
#include "core/exchange/file/file.h"
#include "core/planner/format/answer_format.h"
#include "core/planner/format/problem_format.h"
#include "core/planner/planner.h"
#include "core/planner/verify/verify.h"
#include "core/quantity/decimal.h"

#include <algorithm>
#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct PlanOptions {
    std::string book;
    std::string from;
    int days = 28;
    double sure = 0; ///< 0: as the nursery's settings say
    double seconds = 2;
    std::int64_t rounds = 0; ///< 0: by time
    bool again = false;
    double changeCost = season::usualChangeCost.units();
    bool accept = false;
    bool json = false;
    std::string keep;
    std::string kept;
};

/// Longest period that may be asked for, in days: a year.
constexpr int mostDays = 366;
constexpr double mostChangeCost = 1'000'000;

Result<season::PlanRequest> readRequest(const PlanOptions& options, const Nursery& nursery) {
    season::PlanRequest request;
    const auto from = Day::fromIso(options.from);
    if (!from) return Refusal{"--from", "found '" + options.from + "', expected a date such as 2027-02-01"};
    request.from = *from;
    if (options.days < 1 || options.days > mostDays)
        return Refusal{"--days", "found " + std::to_string(options.days) + ", expected 1 to 366"};
    request.days = options.days;
    request.surenessPermille = nursery.surenessPermille;
    if (options.sure != 0) {
        if (!(options.sure >= 0.5 && options.sure <= 0.999))
            return Refusal{"--sure", "found " + std::to_string(options.sure) + ", expected 0.5 to 0.999"};
        request.surenessPermille = permilleOf(options.sure);
    }
    if (options.again) {
        if (!(options.changeCost >= 0 && options.changeCost <= mostChangeCost))
            return Refusal{"--change-cost",
                           "found " + std::to_string(options.changeCost) + ", expected 0 to 1000000"};
        request.changeCost = Money::fromUnits(options.changeCost);
    }
    if (!(options.seconds > 0 && options.seconds <= 3600))
        return Refusal{"--seconds",
                       "found " + std::to_string(options.seconds) + ", expected above 0, at most 3600"};
    return request;
}

Outcome keep(const std::string& folder, const planner::Problem& problem, const planner::Answer& answer) {
    std::error_code failed;
    std::filesystem::create_directories(folder, failed);
    if (failed) return Refusal{folder, "the folder can't be made: " + failed.message()};
    const std::filesystem::path path(folder);
    if (auto refusal = exchange::replaceFile(path / "problem.json", planner::problemText(problem)))
        return refusal;
    return planner::writeAnswerFile(path / "answer.json", problem, answer);
}

/// The plan that was kept in a folder. Refused where the book asks for another one by now.
Result<planner::Answer> keptAnswer(const std::string& folder, const planner::Problem& problem) {
    const std::filesystem::path path(folder);
    const auto asked = exchange::readFile(path / "problem.json", planner::largestFile);
    if (!asked) return asked.refusal();
    if (*asked != planner::problemText(problem))
        return Refusal{folder,
                       "the plan kept there was made for other days or another sureness, or before the book "
                       "was changed; plan anew"};
    const auto text = exchange::readFile(path / "answer.json", planner::largestFile);
    if (!text) return text.refusal();
    const planner::Verdict verdict = planner::verifyAnswer(problem, *text);
    if (!verdict.valid())
        return Refusal{(path / "answer.json").string(), "it breaks a rule: " + verdict.violations.front()};
    return planner::readAnswer(*text, problem);
}

/// An argument as a shell takes it.
std::string quoted(const std::string& argument) {
    const bool plain =
        !argument.empty() && std::all_of(argument.begin(), argument.end(), [](unsigned char c) {
            return std::isalnum(c) != 0 ||
                   std::string_view("/._-:@+,").find(static_cast<char>(c)) != std::string_view::npos;
        });
    if (plain) return argument;
    std::string text = "'";
    for (const char c : argument) text += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return text + "'";
}

/// How just this plan is put into the book: planned anew, another one might be found.
std::string howToAccept(const PlanOptions& options, const season::PlanRequest& request) {
    std::string call = "warmbench plan " + quoted(options.book) + " --from " + request.from.iso() +
                       " --days " + std::to_string(request.days);
    if (options.sure != 0) call += " --sure " + decimalText(request.surenessPermille, 3);
    if (request.changeCost) call += " --again --change-cost " + decimal(*request.changeCost);
    const std::string& folder = options.kept.empty() ? options.keep : options.kept;
    if (!folder.empty())
        return "\nTo put just this plan into the book:\n  " + call + " --kept " + quoted(folder) +
               " --accept\n";
    return "\nNothing is in the book yet, and --accept plans anew, maybe otherwise. To look at a plan first "
           "and "
           "then accept just that one, keep it:\n  " +
           call + " --keep FOLDER\n";
}

struct Planned {
    planner::Answer answer;
    std::vector<planner::Compromise> compromises;
};

/// The plan kept in a folder, or a new one.
Result<Planned> planned(const PlanOptions& options, const planner::Problem& problem) {
    if (!options.kept.empty()) {
        auto answer = keptAnswer(options.kept, problem);
        if (!answer) return answer.refusal();
        return Planned{std::move(*answer), {}};
    }
    planner::Options how;
    how.seconds = options.seconds;
    if (options.rounds > 0) how.rounds = options.rounds;
    auto solved = planner::solve(problem, how);
    if (!solved)
        return Refusal{options.book, "no plan keeps all that stands or is fixed: " + solved.refusal().text()};
    return Planned{std::move(solved->answer), std::move(solved->compromises)};
}

int plan(const PlanOptions& options) {
    auto store = openBook(options.book, options.accept ? OpenMode::Write : OpenMode::Read);
    if (!store) return refuseFile(store.refusal());
    const HouseBook& book = (*store)->book();
    const auto request = readRequest(options, book.nursery());
    if (!request) return refuse(request.refusal());
    const season::MonthProblem month = season::monthProblem(book, builtInRecipes(), *request);
    const auto found = planned(options, month.problem);
    if (!found) return refuse(found.refusal(), options.kept.empty() ? answerIsNo : badInput);
    const season::Proposal proposal = season::proposalFrom(book, month, found->answer, found->compromises);
    if (!options.keep.empty())
        if (auto refusal = keep(options.keep, month.problem, found->answer))
            return refuseFile(*refusal, storageFailed);
    const std::string told =
        options.json ? planJson(book, proposal) : planWords(book, proposal, builtInRecipes());
    if (options.accept)
        if (auto refusal = (*store)->perform(proposal.command())) return refuseFile(*refusal, storageFailed);
    std::cout << told;
    if (!options.accept && !options.json) std::cout << howToAccept(options, *request);
    if (options.accept && !options.json)
        std::cout << "\nThe plan is in the book: " << counted(proposal.changes(), "batch", "batches")
                  << " new or moved\n";
    return done;
}

} // namespace

void addPlan(CLI::App& program, Work& work) {
    CLI::App* call =
        program.add_subcommand("plan", "Plan the striking of a period: what, when, where, how warm");
    const auto options = std::make_shared<PlanOptions>();
    call->add_option("book", options->book, "The house book")->required();
    call->add_option("--from", options->from, "First day, such as 2027-02-01")->required();
    call->add_option("--days", options->days, "Days on which may be struck")->required();
    call->add_option("--sure", options->sure, "Sureness with which targets are met, 0.5 to 0.999");
    call->add_option("--seconds", options->seconds, "Time to search; ignored beside --rounds")
        ->capture_default_str();
    addWholeNumber(*call, "--rounds", options->rounds, atLeast(1),
                   "Rounds of search in place of time: the same plan on every machine");
    call->add_flag(
        "--again", options->again,
        "Let batches that are planned and not struck move, where that saves more than it costs; "
        "those with an earlier day than the first, or with no place, are planned anew in any case");
    call->add_option("--change-cost", options->changeCost, "With --again: what moving one batch counts as")
        ->capture_default_str();
    call->add_option("--keep", options->keep, "Keep problem.json and answer.json in this folder");
    call->add_option("--kept", options->kept,
                     "Take the plan that --keep has kept in this folder, instead of planning anew")
        ->excludes("--keep");
    call->add_flag("--accept", options->accept, "Put the batches and mats into the book");
    call->add_flag("--json", options->json, "Print the plan as JSON");
    call->callback([&work, options] { work = [options] { return plan(*options); }; });
}

} // namespace warmbench::app
