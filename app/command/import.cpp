#include "app/command/call.h"
#include "app/command/open_book.h"

#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct ImportOptions {
    std::string book;
    std::string file;
};

int importBook(const ImportOptions& options) {
    const auto file = openBook(options.book, OpenMode::Write);
    if (!file) return refuseFile(file.refusal());
    const auto read = readBookFile(options.file);
    if (!read) return refuseFile(read.refusal());
    if (auto refusal = (*file)->adopt(*read, "Import " + options.file)) return refuseFile(*refusal);
    std::cout << options.book << ": it now holds what " << options.file << " describes\n";
    return done;
}

} // namespace

void addImport(CLI::App& program, Work& work) {
    CLI::App* call = program.add_subcommand("import", "Fill an empty house book from a JSON export");
    const auto options = std::make_shared<ImportOptions>();
    call->add_option("book", options->book, "The house book, empty so far")->required();
    call->add_option("file", options->file, "A house book as JSON")->required();
    call->callback([&work, options] { work = [options] { return importBook(*options); }; });
}

} // namespace warmbench::app
