#include "core/exchange/file/file.h"
#include "tests/app/storage/book_folder.h"

#include <QSqlQuery>

#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

#include <fcntl.h>
#include <unistd.h>

using namespace warmbench;

namespace {

void say(int n) {
    const std::string said = std::to_string(n) + "\n";
    if (::write(STDOUT_FILENO, said.data(), said.size()) < 0) std::exit(1);
}

/// Has the database behind every open book leave it to the system when what it writes gets to the disk.
void neverSync() {
    for (const QString& name : QSqlDatabase::connectionNames()) {
        QSqlQuery query(QSqlDatabase::database(name, false));
        if (!query.exec(QStringLiteral("PRAGMA synchronous = OFF"))) std::exit(4);
    }
}

int addHands(const std::string& how, const std::string& file, int first, int count) {
    const auto book = app::BookFile::open(file, app::OpenMode::Write);
    if (!book) return 2;
    if (how == "unsynced") neverSync();
    for (int n = first; n < first + count; ++n) {
        if (how == "early") say(n);
        const Outcome refusal = (*book)->perform(tests::handsOf(n));
        if (refusal && how != "deaf") {
            std::fprintf(stderr, "%s\n", refusal->text().c_str());
            return 3;
        }
        if (how != "early") say(n);
    }
    return 0;
}

int writeFile(const std::string& how, const std::string& from, const std::string& to) {
    const auto content = exchange::readFile(from, 1 << 30);
    if (!content) return 2;
    const std::string name = how == "renamed" ? to + ".new" : to;
    const int file = ::open(name.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    std::string_view left = *content;
    while (!left.empty()) {
        const ssize_t done = ::write(file, left.data(), std::min<std::size_t>(left.size(), 4096));
        if (done < 0) break; // and not a word of it
        left.remove_prefix(static_cast<std::size_t>(done));
    }
    ::close(file);
    return how == "renamed" && ::rename(name.c_str(), to.c_str()) != 0 ? 3 : 0;
}

} // namespace

/// What the product must never do, done on purpose, so that a test can tell whether it would be found.
///   faults_careless unsynced|early|deaf BOOK FIRST COUNT
///       the hands of so many days, each said to be kept: with a database that does not wait for the disk;
///       before it is done; whether or not it was refused
///   faults_careless in-place|renamed FROM TO
///       copies a file over another: into the old one; into a new one that takes its name unsynced
int main(int argc, char** argv) {
    if (argc == 4) return writeFile(argv[1], argv[2], argv[3]);
    return argc == 5 ? addHands(argv[1], argv[2], std::atoi(argv[3]), std::atoi(argv[4])) : 2;
}
