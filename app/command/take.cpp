#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/figures.h"
#include "app/command/number_option.h"
#include "app/command/open_book.h"
#include "app/resource/built_in_recipes.h"
#include "core/book/query.h"
#include "core/take/own_figures.h"
#include "core/take/trial.h"

#include <nlohmann/json.hpp>

#include <iostream>
#include <memory>
#include <sstream>

namespace warmbench::app {
namespace {

struct TakeOptions {
    std::string book;
    std::string by = "taxon";
    std::string from;
    std::string to;
    double level = 0.95;
    std::vector<std::string> first;
    std::vector<std::string> second;
    std::string adopt;
    bool json = false;
};

std::string percentSpan(const rooting::Interval& interval) {
    return fixedText(100 * interval.low, 0) + " to " + fixedText(100 * interval.high, 0) + " %";
}

std::string ofStruck(const rooting::Take& take) {
    return std::to_string(take.rooted) + " of " + std::to_string(take.struck);
}

void sayTable(std::ostream& out, const std::vector<take::TakeRow>& rows, const std::string& by,
              double level) {
    TextTable table({by, "batches", "plants of struck", "take", fixedText(100 * level, 0) + " % (Wilson)",
                     "recipe", "against it", "recipe's source"},
                    1);
    for (const take::TakeRow& row : rows) {
        std::string sources;
        for (const std::string& source : row.sources)
            sources += (sources.empty() ? "" : "; ") + builtInRecipes().sourceText(source);
        table.add({row.group, std::to_string(row.batches.size()), ofStruck(row.take),
                   percentText(row.take.share()), percentSpan(row.interval),
                   percentSpan({row.recipeLow, row.recipeHigh}),
                   row.below()   ? "below"
                   : row.above() ? "above"
                                 : "within",
                   sources});
    }
    out << table.text();
}

void sayTrial(std::ostream& out, const take::TrialResult& result, double level) {
    out << ofStruck(result.first) << " against " << ofStruck(result.second) << ": "
        << fixedText(100 * result.difference, 1) << " points, " << fixedText(100 * level, 0) << " % "
        << fixedText(100 * result.interval.low, 1) << " to " << fixedText(100 * result.interval.high, 1)
        << " (Newcombe); ";
    if (result.settled())
        out << "settled\n";
    else if (result.cuttingsToSettle)
        out << "not settled: if it stays so, " << *result.cuttingsToSettle
            << " cuttings in each way would settle it\n";
    else
        out << "not settled, and no number of cuttings would if it stays so\n";
}

void sayTrials(std::ostream& out, const HouseBook& book, double level) {
    const std::vector<take::Trial> trials = take::trialsIn(book);
    if (trials.empty()) {
        out << "\nNo trials: no two batches of one stock and wood struck within a week differ in hormone, "
               "medium or heat alone\n";
        return;
    }
    out << "\nTrials (batches of one stock and wood struck within a week that differ in one way)\n";
    for (const take::Trial& trial : trials) {
        const Batch& batch = book.get<Batch>(trial.first.front());
        out << "  " << book.get<Taxon>(batch.taxon).name << ", "
            << woodNames[static_cast<std::size_t>(batch.recipe.wood)] << ", about " << batch.strikeDay.iso()
            << ", " << take::groupingNames[static_cast<std::size_t>(trial.way)] << " '" << trial.firstWay
            << "' and '" << trial.secondWay << "':\n    ";
        sayTrial(out, take::compare(take::takeOf(book, trial.first), take::takeOf(book, trial.second), level),
                 level);
    }
}

std::vector<take::OwnFigures> ownFiguresOf(const HouseBook& book) {
    std::vector<take::OwnFigures> found;
    for (const auto& [id, recipe] : book.all<Recipe>())
        if (auto own = take::ownFigures(book, recipe)) found.push_back(std::move(*own));
    return found;
}

std::string rangeWords(const IntRange& range) {
    return std::to_string(range.low) + " to " + std::to_string(range.high);
}

void sayOwn(std::ostream& out, const HouseBook& book) {
    TextTable table(
        {"recipe", "batches", "cuttings", "count as", "take %, recipe", "own", "days, recipe", "own"}, 1);
    for (const take::OwnFigures& own : ownFiguresOf(book)) {
        const Recipe& recipe = book.get<Recipe>(own.recipe);
        table.add({recipeTitle(book, recipe), std::to_string(own.batches.size()),
                   std::to_string(own.take.struck), fixedText(own.cuttingsThatCount, 0),
                   rangeWords(recipe.takePercent.value), rangeWords(own.takePercent),
                   rangeWords(recipe.daysToRoot.value), rangeWords(own.daysToRoot)});
    }
    if (table.empty()) return;
    out << "\nOwn figures, drawn towards the recipe where batches are few; cuttings of one batch count for "
           "less "
           "than as many of several.\nNot used until taken over: warmbench take BOOK --adopt 'TAXON, WOOD'\n"
        << table.text();
}

Result<std::vector<BatchId>> batchesNamed(const HouseBook& book, const std::string& option,
                                          const std::vector<std::string>& codes) {
    std::vector<BatchId> found;
    for (const std::string& code : codes) {
        const Batch* batch = findBatch(book, code);
        if (!batch || batch->state != BatchState::Ended)
            return Refusal{option, "found '" + code + "', expected the code of a batch that has ended"};
        found.push_back(batch->id);
    }
    return found;
}

int compareNamed(const HouseBook& book, const TakeOptions& options) {
    const auto first = batchesNamed(book, "--first", options.first);
    if (!first) return refuse(first.refusal());
    const auto second = batchesNamed(book, "--second", options.second);
    if (!second) return refuse(second.refusal());
    const take::TrialResult result =
        take::compare(take::takeOf(book, *first), take::takeOf(book, *second), options.level);
    if (options.json)
        printJson(
            {{"first", {result.first.rooted, result.first.struck}},
             {"second", {result.second.rooted, result.second.struck}},
             {"difference", result.difference},
             {"newcombe", {result.interval.low, result.interval.high}},
             {"settled", result.settled()},
             {"cuttings_to_settle", result.cuttingsToSettle ? nlohmann::ordered_json(*result.cuttingsToSettle)
                                                            : nlohmann::ordered_json()}});
    else
        sayTrial(std::cout, result, options.level);
    return done;
}

int adopt(BookFile& file, const std::string& named) {
    const HouseBook& book = file.book();
    for (const take::OwnFigures& own : ownFiguresOf(book)) {
        const Recipe& recipe = book.get<Recipe>(own.recipe);
        if (recipeTitle(book, recipe) != named) continue;
        const IntRange takeBefore = recipe.takePercent.value;
        const IntRange daysBefore = recipe.daysToRoot.value;
        if (auto refusal = file.perform(take::adoptCommand(book, own)))
            return refuseFile(*refusal, storageFailed);
        std::cout << named << ": take " << rangeWords(own.takePercent) << " % for " << rangeWords(takeBefore)
                  << " %, " << rangeWords(own.daysToRoot) << " days to root for " << rangeWords(daysBefore)
                  << ", marked as own figures\n";
        return done;
    }
    return refuse({"--adopt", "found '" + named +
                                  "', expected a recipe as the table of own figures names it, such as "
                                  "'Buddleja davidii, softwood'"});
}

void printTakeJson(const HouseBook& book, const std::vector<take::TakeRow>& rows) {
    nlohmann::ordered_json told{{"groups", nlohmann::ordered_json::array()},
                                {"own_figures", nlohmann::ordered_json::array()}};
    for (const take::TakeRow& row : rows)
        told["groups"].push_back({{"group", row.group},
                                  {"batches", row.batches.size()},
                                  {"plants", row.take.rooted},
                                  {"struck", row.take.struck},
                                  {"take", row.take.share()},
                                  {"wilson", {row.interval.low, row.interval.high}},
                                  {"recipe", {row.recipeLow, row.recipeHigh}},
                                  {"sources", row.sources}});
    for (const take::OwnFigures& own : ownFiguresOf(book)) {
        const Recipe& recipe = book.get<Recipe>(own.recipe);
        told["own_figures"].push_back({{"taxon", book.get<Taxon>(recipe.taxon).name},
                                       {"wood", woodNames[static_cast<std::size_t>(recipe.wood)]},
                                       {"batches", own.batches.size()},
                                       {"correlation", own.correlation},
                                       {"cuttings_that_count", own.cuttingsThatCount},
                                       {"take", own.share},
                                       {"take_percent", {own.takePercent.low, own.takePercent.high}},
                                       {"days_to_root", {own.daysToRoot.low, own.daysToRoot.high}}});
    }
    printJson(told);
}

int tellTake(const TakeOptions& options) {
    const auto file = openBook(options.book, options.adopt.empty() ? OpenMode::Read : OpenMode::Write);
    if (!file) return refuseFile(file.refusal());
    const HouseBook& book = (*file)->book();
    if (!options.adopt.empty()) return adopt(**file, options.adopt);
    if (!options.first.empty()) return compareNamed(book, options);
    const auto by = take::groupingFromName(options.by);
    if (!by)
        return refuse({"--by", "found '" + options.by +
                                   "', expected taxon, wood, stock, hormone, medium, heat or month"});
    const auto from = options.from.empty() ? Result<Day>(Day::first()) : readDay("--from", options.from);
    if (!from) return refuse(from.refusal());
    const auto to = options.to.empty() ? Result<Day>(Day::last()) : readDay("--to", options.to);
    if (!to) return refuse(to.refusal());
    const std::vector<take::TakeRow> rows = take::takeTable(book, *by, options.level, *from, *to);
    if (options.json) {
        printTakeJson(book, rows);
        return done;
    }
    if (rows.empty()) {
        std::cout << "No batch has ended yet in these days\n";
        return done;
    }
    std::cout << "Take by " << options.by
              << ": plants potted on of cuttings struck, batches that have ended\n";
    sayTable(std::cout, rows, options.by, options.level);
    sayTrials(std::cout, book, options.level);
    sayOwn(std::cout, book);
    return done;
}

} // namespace

void addTake(CLI::App& program, Work& work) {
    CLI::App* call =
        program.add_subcommand("take", "What you got: takes, trials, and your own figures for recipes");
    const auto options = std::make_shared<TakeOptions>();
    call->add_option("book", options->book, "The house book")->required();
    call->add_option("--by", options->by, "taxon, wood, stock, hormone, medium, heat or month")
        ->capture_default_str();
    call->add_option("--from", options->from, "Batches struck from this day on");
    call->add_option("--to", options->to, "Batches struck up to this day");
    addNumber(*call, "--level", options->level, properShare(), "Of intervals")->capture_default_str();
    CLI::Option* first =
        call->add_option("--first", options->first, "Codes of batches, to compare with --second")
            ->delimiter(',');
    CLI::Option* second = call->add_option("--second", options->second, "Codes of batches")->delimiter(',');
    first->needs(second);
    second->needs(first);
    call->add_option("--adopt", options->adopt, "Take own figures over into a recipe: 'TAXON, WOOD'");
    call->add_flag("--json", options->json, "Print all as JSON");
    call->callback([&work, options] { work = [options] { return tellTake(*options); }; });
}

} // namespace warmbench::app
