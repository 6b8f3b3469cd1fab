#include "app/command/call.h"
#include "app/command/open_book.h"
#include "core/exchange/book/book_json.h"
#include "core/exchange/book/book_table.h"
#include "core/exchange/file/file.h"

#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct ExportOptions {
    std::string book;
    std::string as;
    std::string what;
    std::string out;
};

Result<std::string> textOf(const HouseBook& book, const ExportOptions& options) {
    if (options.as == "json") return writeBook(book);
    if (options.as != "csv") return Refusal{"--as", "found '" + options.as + "', expected json or csv"};
    auto table = writeTable(book, options.what);
    if (table) return *table;
    return Refusal{"--what", "found '" + options.what + "', expected one of " + tableNames()};
}

int exportBook(const ExportOptions& options) {
    const auto file = openBook(options.book, OpenMode::Read);
    if (!file) return refuseFile(file.refusal());
    const auto text = textOf((*file)->book(), options);
    if (!text) return refuse(text.refusal());
    if (options.out.empty()) {
        std::cout << *text;
        return done;
    }
    if (auto refusal = exchange::replaceFile(options.out, *text)) return refuseFile(*refusal, storageFailed);
    return done;
}

} // namespace

void addExport(CLI::App& program, Work& work) {
    CLI::App* call = program.add_subcommand("export", "Write a house book, or one of its lists, for others");
    const auto options = std::make_shared<ExportOptions>();
    call->add_option("book", options->book, "The house book")->required();
    call->add_option("--as", options->as, "json: the whole book; csv: one list")->required();
    call->add_option("--what", options->what, "The list for csv, such as targets");
    call->add_option("--out", options->out, "The file; standard output without it");
    call->callback([&work, options] { work = [options] { return exportBook(*options); }; });
}

} // namespace warmbench::app
