#include "app/storage/backups.h"

#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/open_book.h"

#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct BackupsOptions {
    std::string book;
    std::string restore;
};

int list(const std::string& book) {
    const std::vector<Backup> backups = backupsOf(book);
    for (const Backup& backup : backups) {
        std::cout << backup.day.iso() << "  ";
        const auto file = BookFile::open(backup.path, OpenMode::Read);
        if (!file) {
            std::cout << file.refusal().what << '\n';
            continue;
        }
        const HouseBook& held = (*file)->book();
        const auto journal = (*file)->journal();
        std::cout << counted(held.all<Batch>().size(), "batch", "batches") << ", "
                  << counted(held.all<RootCheck>().size(), "check", "checks");
        if (journal && !journal->empty()) std::cout << "; last: " << journal->back().words;
        std::cout << '\n';
    }
    std::cout << book << ": " << counted(backups.size(), "backup", "backups") << " that it made of itself\n";
    return done;
}

int restore(const BackupsOptions& options) {
    for (const Backup& backup : backupsOf(options.book)) {
        if (backup.day.iso() != options.restore) continue;
        const auto kept = restoreBackup(backup.path, options.book);
        if (!kept) return refuseFile(kept.refusal(), storageFailed);
        std::cout << options.book << ": as it was at the beginning of " << options.restore;
        if (!kept->empty()) std::cout << "; what stood there is kept as " << *kept;
        std::cout << '\n';
        return done;
    }
    return refuse(
        {"--restore", "found '" + options.restore + "', expected the day of a backup that is there"});
}

} // namespace

void addBackups(CLI::App& program, Work& work) {
    CLI::App* call = program.add_subcommand(
        "backups", "What backups a house book has made of itself; put one in its place");
    const auto options = std::make_shared<BackupsOptions>();
    call->add_option("book", options->book, "The house book, a file")->required();
    call->add_option("--restore", options->restore,
                     "The day of the backup to go back to; close the book first");
    call->callback([&work, options] {
        work = [options] { return options->restore.empty() ? list(options->book) : restore(*options); };
    });
}

} // namespace warmbench::app
