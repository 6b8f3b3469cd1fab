#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/open_book.h"
#include "app/command/round_words.h"
#include "core/exchange/table/table_text.h"
#include "core/round/merge.h"
#include "core/round/results.h"

#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct RoundOptions {
    std::string book;
    std::string day;
    std::string enter;
    std::string merge;
    bool anyway = false;
    bool table = false;
    bool json = false;
};

int record(BookFile& file, const std::vector<RootCheck>& checks, const std::string& label) {
    Group group{label, {}};
    for (const RootCheck& check : checks) group.commands.push_back(Command{RecordCheck{check}});
    if (!checks.empty())
        if (auto refusal = file.perform(Command{group})) return refuseFile(*refusal);
    std::cout << file.path() << ": " << counted(checks.size(), "check", "checks") << " entered\n";
    return done;
}

int enter(const RoundOptions& options, Day day) {
    const auto file = openBook(options.book, OpenMode::Write);
    if (!file) return refuseFile(file.refusal());
    auto text = exchange::readTableText(options.enter);
    if (!text) return refuseFile(text.refusal());
    const auto results = round::readResults((*file)->book(), options.enter, std::move(*text), day);
    if (!results) return refuseFile(results.refusal());
    for (const Refusal& wrong : results->wrong) refuseFile(wrong);
    if (!results->wrong.empty()) return badInput;
    if (!results->questions.empty() && !options.anyway) {
        for (const std::string& question : results->questions) std::cout << question << '\n';
        std::cout << "Nothing was entered. Mend the rows, or enter them as they are with --anyway\n";
        return answerIsNo;
    }
    return record(**file, results->checks, phrase("Enter the round of %1", day).text());
}

int merge(const RoundOptions& options) {
    const auto copy = openBook(options.merge, OpenMode::Read);
    if (!copy) return refuseFile(copy.refusal());
    const auto file = openBook(options.book, OpenMode::Write);
    if (!file) return refuseFile(file.refusal());
    const round::RoundMerge merge = round::mergeRound((*file)->book(), (*copy)->book());
    for (const Refusal& conflict : merge.conflicts) std::cout << conflict.text() << '\n';
    if (!merge.conflicts.empty() && !options.anyway) {
        std::cout
            << "Nothing was brought home. Mend these in one of the books, or bring home the others with "
               "--anyway\n";
        return answerIsNo;
    }
    if (!merge.commands.empty())
        if (auto refusal = (*file)->perform(round::bringHome(merge, options.merge)))
            return refuseFile(*refusal);
    const round::RoundDeeds& all = merge.all;
    std::cout << (*file)->path() << ": " << counted(all.checks, "check", "checks");
    if (all.losses > 0) std::cout << ", " << counted(all.losses, "loss", "losses");
    if (all.weanings > 0) std::cout << ", " << counted(all.weanings, "weaning", "weanings");
    if (all.pottings > 0) std::cout << ", " << counted(all.pottings, "potting on", "pottings on");
    std::cout << " entered\n";
    return done;
}

int print(const RoundOptions& options, Day day) {
    const auto file = openBook(options.book, OpenMode::Read);
    if (!file) return refuseFile(file.refusal());
    const HouseBook& book = (*file)->book();
    const forecast::BookForecast forecast(book, day);
    const std::vector<round::Stop> stops = round::roundOn(book, forecast);
    if (options.table) {
        std::cout << roundTable(book, day, stops);
        return done;
    }
    const std::vector<round::Due> due = round::dueOn(book, forecast);
    std::cout << (options.json ? roundJson(book, day, stops, due) : roundWords(book, day, stops, due));
    return done;
}

int goRound(const RoundOptions& options) {
    const auto day = readDay("--day", options.day);
    if (!day) return refuse(day.refusal());
    if (!options.enter.empty()) return enter(options, *day);
    if (!options.merge.empty()) return merge(options);
    return print(options, *day);
}

} // namespace

void addRound(CLI::App& program, Work& work) {
    CLI::App* call =
        program.add_subcommand("round", "Which containers are worth a look and why; enter what was found");
    const auto options = std::make_shared<RoundOptions>();
    call->add_option("book", options->book, "The house book")->required();
    call->add_option("--day", options->day, "The day, such as 2027-02-01; today without it");
    CLI::Option* entering = call->add_option("--enter", options->enter, "Enter the results in this CSV file");
    call->add_option("--merge", options->merge,
                     "Bring home the checks, losses, weanings and pottings on entered in a copy of the book")
        ->excludes(entering);
    call->add_flag("--anyway", options->anyway,
                   "Enter results that raise questions; bring home all but what is in conflict");
    call->add_flag("--table", options->table, "Print a CSV table to type the results into");
    call->add_flag("--json", options->json, "Print the round as JSON");
    call->callback([&work, options] { work = [options] { return goRound(*options); }; });
}

} // namespace warmbench::app
