#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/open_book.h"

#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct CopyOptions {
    std::string from;
    std::string to;
};

int copyBook(const CopyOptions& options) {
    const auto book = openBook(options.from, OpenMode::Read);
    if (!book) return refuseFile(book.refusal());
    if (auto refusal = (*book)->copyTo(options.to)) return refuseFile(*refusal, storageFailed);
    // The new book's own name for itself has no password in it.
    const auto copy = openBook(options.to, OpenMode::Read);
    if (!copy) return refuseFile(copy.refusal(), storageFailed);
    const auto entries = (*copy)->journal();
    if (!entries) return refuseFile(entries.refusal(), storageFailed);
    std::cout << (*copy)->path() << ": a copy of " << (*book)->path() << " with "
              << (entries->size() == 1 ? "the " : "all ") << counted(entries->size(), "entry", "entries")
              << " of its journal, opened and compared\n";
    return done;
}

} // namespace

void addCopy(CLI::App& program, Work& work) {
    CLI::App* call =
        program.add_subcommand("copy", "Copy a house book with its journal to a new file or shared database");
    const auto options = std::make_shared<CopyOptions>();
    call->add_option("from", options->from, "The house book")->required();
    call->add_option("to", options->to, "Name of the new file, or postgresql:// and an empty database")
        ->required();
    call->callback([&work, options] { work = [options] { return copyBook(*options); }; });
}

} // namespace warmbench::app
