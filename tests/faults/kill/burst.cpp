#include "tests/app/storage/book_folder.h"

#include <cstdio>
#include <cstdlib>
#include <string>

#include <unistd.h>

using namespace warmbench;

/// faults_burst BOOK FIRST [COUNT]: adds the hands of one day after another from the FIRST on, and writes
/// each day's number to standard output once it is kept. Without a COUNT it ends only when a change is
/// refused or it is killed.
int main(int argc, char** argv) {
    if (argc < 3) return 2;
    const auto book = app::BookFile::open(argv[1], app::OpenMode::Write);
    if (!book) {
        std::fprintf(stderr, "%s\n", book.refusal().text().c_str());
        return 2;
    }
    const int first = std::atoi(argv[2]);
    for (int n = first; argc < 4 || n < first + std::atoi(argv[3]); ++n) {
        if (const auto refusal = (*book)->perform(tests::handsOf(n))) {
            std::fprintf(stderr, "%s\n", refusal->text().c_str());
            return 3;
        }
        const std::string said = std::to_string(n) + "\n";
        if (::write(STDOUT_FILENO, said.data(), said.size()) < 0) return 1;
    }
    return 0;
}
