#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

/// Memory of this process that is in use, in kB.
long memory() {
    std::ifstream in("/proc/self/statm");
    long pages = 0;
    in >> pages >> pages;
    return pages * (::sysconf(_SC_PAGESIZE) / 1024);
}

double secondsSince(std::chrono::steady_clock::time_point begin) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

/// The n-th of commands that leave a book as large as it was: a stay to and fro, hands of one day, a check
/// and its being taken back.
Outcome one(app::BookFile& book, const SmallBook& small, int n) {
    const Stay& stay = book.book().get<Stay>(small.plannedStay);
    switch (n % 4) {
    case 0:
        return book.perform(
            {MoveStay{stay.id, stay.zone, stay.from, stay.to + (n % 8 == 0 ? 1 : -1), stay.places}});
    case 1:
        return book.perform({Put<HandDay>{{{n == 1 ? 0 : 1}, day("2030-01-01"), n, ""}}});
    case 2:
        return book.perform(
            {RecordCheck{{{}, small.struck, 1, day("2027-03-20"), 5, 1, 1, 2, 1, std::nullopt, ""}}});
    default:
        return book.undo();
    }
}

/// Commands with their memory at each tenth; false where it grows.
bool staysFlat(const std::string& file, int commands) {
    const SmallBook small = smallBook();
    const auto book = opened(file, app::OpenMode::Write);
    const auto begin = std::chrono::steady_clock::now();
    long early = 0;
    for (int n = 0; n < commands; ++n) {
        if (const auto refusal = one(*book, small, n)) {
            std::printf("command %d: %s\n", n, refusal->text().c_str());
            return false;
        }
        if ((n + 1) % (commands / 10) == 0) {
            std::printf("%6d commands, %6.1f s: %ld kB\n", n + 1, secondsSince(begin), memory());
            // By then the steps that can be taken back are as many as are kept.
            if (early == 0 && n + 1 >= 500) early = memory();
        }
    }
    const long grown = memory() - early;
    std::printf("grown by %ld kB since the steps to take back are as many as are kept; found wrong %zu\n",
                grown, book->check().size());
    return grown < 6000;
}

/// Runs the program, with its words on standard output in a file; tells how long it took.
bool takes(const char* what, std::vector<std::string> call) {
    call.insert(call.begin(), WARMBENCH_PROGRAM);
    std::vector<char*> words;
    for (std::string& word : call) words.push_back(word.data());
    words.push_back(nullptr);
    const auto begin = std::chrono::steady_clock::now();
    const pid_t child = ::fork();
    if (child == 0) {
        ::setenv("QT_QPA_PLATFORM", "offscreen", 1);
        ::dup2(::open("/dev/null", O_WRONLY), STDOUT_FILENO);
        ::execv(words[0], words.data());
        ::_exit(127);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    std::printf("%-22s %6.1f s%s\n", what, secondsSince(begin), status == 0 ? "" : ": it failed");
    return status == 0;
}

} // namespace

/// faults_long_life [COMMANDS]: exit status 1 where memory grows, or a book of ten years does not serve.
int main(int argc, char** argv) {
    const int commands = std::max(argc > 1 ? std::atoi(argv[1]) : 10'000, 600);
    const BookFolder folder;
    bool good = staysFlat(folder.smallBookFile(), commands);
    const std::string book = folder.path("ten-years.warmbench");
    // A batch every third day from 2001 to 2010, with ten checks each.
    const HouseBook years = bookOfChecks(1200, 12'000);
    if (const auto refusal = app::BookFile::create(book, years)) {
        std::printf("%s\n", refusal->text().c_str());
        return 1;
    }
    std::printf("ten years: %zu batches, %zu checks, %ju kB\n", years.all<Batch>().size(),
                years.all<RootCheck>().size(),
                static_cast<std::uintmax_t>(std::filesystem::file_size(book) / 1024));
    const auto begin = std::chrono::steady_clock::now();
    (void)opened(book, app::OpenMode::Write);
    std::printf("%-22s %6.1f s\n", "opened", secondsSince(begin));
    good = takes("checked", {"check", book}) && good;
    good =
        takes("planned", {"plan", book, "--from", "2010-10-04", "--days", "28", "--rounds", "2000"}) && good;
    good = takes("map drawn", {"map", book, "--day", "2010-09-01", "--out", folder.path("map.pdf")}) && good;
    good = takes("season printed", {"print", "season", book, "--from", "2009-01-01", "--seen", "2010-01-01",
                                    "--out", folder.path("season.pdf")}) &&
           good;
    good = takes("backed up", {"backup", book, "--out", folder.path("backup")}) && good;
    return good ? 0 : 1;
}
