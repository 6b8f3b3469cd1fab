#include "app/command/call.h"
#include "app/command/open_book.h"

#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct BackupOptions {
    std::string book;
    std::string out;
};

int backUp(const BackupOptions& options) {
    const auto file = openBook(options.book, OpenMode::Read);
    if (!file) return refuseFile(file.refusal());
    if (auto refusal = (*file)->backup(options.out)) return refuseFile(*refusal, storageFailed);
    std::cout << options.out << ": a copy of the book, opened and found sound\n";
    return done;
}

} // namespace

void addBackup(CLI::App& program, Work& work) {
    CLI::App* call = program.add_subcommand("backup", "Write a consistent copy of a house book");
    const auto options = std::make_shared<BackupOptions>();
    call->add_option("book", options->book, "The house book")->required();
    call->add_option("--out", options->out, "Name of the copy")->required();
    call->callback([&work, options] { work = [options] { return backUp(*options); }; });
}

} // namespace warmbench::app
