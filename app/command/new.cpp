#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/open_book.h"

#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct NewOptions {
    std::string book;
    std::string from;
};

int makeBook(const NewOptions& options) {
    HouseBook book;
    if (!options.from.empty()) {
        auto read = readBookFile(options.from);
        if (!read) return refuseFile(read.refusal());
        book = std::move(*read);
    }
    if (auto refusal = BookFile::create(options.book, book)) return refuseFile(*refusal);
    std::cout << options.book << ": a new house book with "
              << counted(book.all<House>().size(), "house", "houses") << ", "
              << counted(book.all<Zone>().size(), "zone", "zones") << ", "
              << counted(book.all<Target>().size(), "target", "targets") << ", "
              << counted(book.all<Batch>().size(), "batch", "batches") << "\n";
    return done;
}

} // namespace

void addNew(CLI::App& program, Work& work) {
    CLI::App* call = program.add_subcommand("new", "Make a house book, empty or from a description");
    const auto options = std::make_shared<NewOptions>();
    call->add_option("book", options->book, "Name of the new file")->required();
    call->add_option("--from", options->from, "A house book as JSON, written by hand or by an export");
    call->callback([&work, options] { work = [options] { return makeBook(*options); }; });
}

} // namespace warmbench::app
