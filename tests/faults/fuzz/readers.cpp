#include "tests/faults/fuzz/readers.h"

#include "app/storage/shared_address.h"
#include "core/book/rules.h"
#include "core/crop/library/library.h"
#include "core/exchange/book/book_json.h"
#include "core/exchange/book/book_table.h"
#include "core/exchange/logger/logger_file.h"
#include "core/exchange/table/readings.h"
#include "core/exchange/table/sightings.h"
#include "core/planner/format/answer_format.h"
#include "core/planner/format/problem_format.h"
#include "core/planner/verify/verify.h"
#include "core/round/results.h"
#include "core/season/list/thing_list.h"
#include "tests/support/small_book.h"

#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>

namespace warmbench::tests {

void mustBe(bool so, const char* what) {
    if (so) return;
    std::fprintf(stderr, "not so: %s\n", what);
    std::abort();
}

namespace {

const HouseBook& bookToReadInto() {
    static const HouseBook book = smallBook().book;
    return book;
}

std::string resource(const char* name) {
    std::ostringstream content;
    content << std::ifstream(std::string(WARMBENCH_SOURCE "/resources/recipe/") + name).rdbuf();
    return content.str();
}

const RecipeLibrary& builtIn() {
    static const RecipeLibrary library = *RecipeLibrary::read(
        {resource("sources.csv"), resource("recipes.csv"), resource("recipes_memory.csv"),
         resource("common_practice.csv"), resource("wood_defaults.csv"), resource("cautions.csv")});
    return library;
}

const planner::Problem& exampleProblem() {
    static const planner::Problem problem =
        *planner::readProblemFile(WARMBENCH_TEST_DATA "/data/planning/example-problem.json");
    return problem;
}

void feedAddress(std::string_view text) {
    const auto address = app::SharedAddress::read(text);
    if (!address) return;
    mustBe(*app::SharedAddress::read(address->withPassword()) == *address,
           "an address is read back the same");
    app::SharedAddress open = *address;
    open.password.clear();
    mustBe(*app::SharedAddress::read(address->shown()) == open, "an address is shown without its password");
}

void feedBook(std::string_view text) {
    const auto book = readBook(text);
    if (!book) return;
    mustBe(audit(*book).empty(), "a book that is read keeps every rule");
    const auto again = readBook(writeBook(*book));
    mustBe(again && *again == *book, "a book is read back the same");
    for (const std::string& list : tableNames()) (void)csvText(*bookTable(*book, list));
}

void feedChange(std::string_view text) {
    const auto change = readChange(text);
    if (!change) return;
    const auto again = readChange(writeChange(*change));
    mustBe(again && *again == *change, "a change is read back the same");
    HouseBook book = bookToReadInto();
    if (book.apply(*change)) {
        mustBe(book == bookToReadInto(), "a refused change changes nothing");
        return;
    }
    mustBe(audit(book).empty(), "a change that is done keeps every rule");
    mustBe(!book.apply(change->inverse()) && book == bookToReadInto(), "a change is taken back");
}

void feedProblem(std::string_view text) {
    (void)planner::readProblem(text);
}

void feedAnswer(std::string_view text) {
    (void)planner::readAnswer(text, exampleProblem());
    (void)planner::verifyAnswer(exampleProblem(), text);
}

void feedLibrary(std::string_view text) {
    // One text after the other; the first line end that stands alone parts them.
    LibraryTexts texts;
    std::string* const files[] = {&texts.sources,        &texts.published, &texts.memory,
                                  &texts.commonPractice, &texts.defaults,  &texts.cautions};
    for (std::string* file : files) {
        const std::size_t end = text.find("\n\n");
        *file = text.substr(0, end);
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 2);
    }
    (void)RecipeLibrary::read(texts);
}

void feedList(std::string_view text) {
    for (const auto kind : {season::ListKind::Targets, season::ListKind::Stocks, season::ListKind::Recipes,
                            season::ListKind::Results}) {
        const HouseBook& book = bookToReadInto();
        const auto shape = season::listShape(text, kind, book, builtIn());
        const auto list =
            season::readThingList(text, kind, shape, book, builtIn(), season::UnknownTaxa::TakeAsOwn);
        if (list.right == 0) continue;
        HouseBook filled = book;
        mustBe(bool(filled.perform(list.command)), "lines without trouble are put in");
        mustBe(audit(filled).empty(), "lines that are put in keep every rule");
    }
}

void feedLogger(std::string_view text) {
    const auto file = exchange::readLogger("f", text, {60, exchange::SummerTime::European});
    if (!file) return;
    mustBe(!file->readings.empty(), "a logger's file that is read has a reading");
    for (std::size_t i = 1; i < file->readings.size(); ++i)
        mustBe(file->readings[i - 1].second < file->readings[i].second, "readings stand in order, each once");
}

void feedReadings(std::string_view text) {
    (void)exchange::readReadings("f", std::string(text));
}

void feedResults(std::string_view text) {
    (void)round::readResults(bookToReadInto(), "f", std::string(text), day("2027-03-20"));
}

void feedSightings(std::string_view text) {
    (void)exchange::readSightings("f", std::string(text), false);
    (void)exchange::readSightings("f", std::string(text), true);
}

} // namespace

const std::vector<FuzzedReader>& fuzzedReaders() {
    static const std::vector<FuzzedReader> readers{
        {"address", feedAddress}, {"answer", feedAnswer},      {"book", feedBook},
        {"change", feedChange},   {"library", feedLibrary},    {"list", feedList},
        {"logger", feedLogger},   {"problem", feedProblem},    {"readings", feedReadings},
        {"results", feedResults}, {"sightings", feedSightings}};
    return readers;
}

} // namespace warmbench::tests
