#include "app/storage/backups.h"
#include "app/storage/rescue.h"
#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <sstream>

using namespace warmbench;
using namespace warmbench::tests;
using app::BookFile;
using app::OpenMode;

namespace {

namespace fs = std::filesystem;

constexpr int commands = 40;
constexpr std::array<const char*, 4> kinds{"a byte is another", "a sector of 512 bytes is zero",
                                           "a page of 4096 bytes is another's", "the end is cut off"};

std::string bytesOf(const std::string& file) {
    std::ostringstream content;
    content << std::ifstream(file, std::ios::binary).rdbuf();
    return content.str();
}

std::string damaged(std::string bytes, std::size_t kind, std::mt19937_64& random) {
    const auto below = [&](std::size_t end) { return static_cast<std::size_t>(random() % end); };
    const std::size_t page = 4096;
    switch (kind) {
    case 0:
        bytes[below(bytes.size())] ^= static_cast<char>(1 + below(255));
        break;
    case 1:
        bytes.replace(below(bytes.size() / 512) * 512, 512, 512, '\0');
        break;
    case 2:
        bytes.replace(below(bytes.size() / page) * page, page, bytes, below(bytes.size() / page) * page,
                      page);
        break;
    default:
        bytes.resize(below(bytes.size()));
    }
    return bytes;
}

struct Counts {
    int runs = 0;
    int same = 0;     ///< the damage touched nothing that counts: the book is what it was, and sound
    int found = 0;    ///< refused, or told by `check`
    int unseen = 0;   ///< another book than it was, and nothing says so
    int whole = 0;    ///< of those that were found: all of it saved to a new book
    int partly = 0;   ///< of those: some of it
    int nothing = 0;  ///< of those: nothing could be saved, and that was said
    int touched = 0;  ///< damaged files that were changed by looking at them
    int restored = 0; ///< of those that were found: brought back from the backup
};

struct Prototype {
    HouseBook book;
    std::string bytes;
    std::string backup;
};

void strike(const Prototype& prototype, std::size_t kind, std::mt19937_64& random, const fs::path& folder,
            Counts& counts) {
    fs::create_directories(folder);
    const std::string file = (folder / "book").string();
    const std::string bytes = damaged(prototype.bytes, kind, random);
    std::ofstream(file, std::ios::binary) << bytes;
    ++counts.runs;
    bool found = true;
    {
        const auto book = BookFile::open(file, OpenMode::Read);
        if (book && (*book)->check().empty()) {
            found = false;
            const bool same = (*book)->book() == prototype.book && (*book)->journal()->size() == commands + 1;
            ++(same ? counts.same : counts.unseen);
        }
    }
    if (found) {
        ++counts.found;
        const std::string saved = (folder / "saved").string();
        const auto rescue = app::rescueBook(file, saved);
        const auto again = rescue ? BookFile::open(saved, OpenMode::Read) : Refusal{};
        if (!rescue || !again)
            ++counts.nothing;
        else
            ++((*again)->book() == prototype.book ? counts.whole : counts.partly);
    }
    counts.touched += bytesOf(file) == bytes ? 0 : 1;
    if (found) {
        const auto kept = app::restoreBackup(prototype.backup, file);
        const auto back = BookFile::open(file, OpenMode::Read);
        counts.restored +=
            kept && back && (*back)->book() == prototype.book && bytesOf(*kept) == bytes ? 1 : 0;
    }
    fs::remove_all(folder);
}

} // namespace

/// faults_damage [TIMES]: damages a book's file, so many times in all, and looks at what is said of it, what
/// is saved of it, and whether its backup brings it back. Prints what it counted; exit status 1 where damage
/// went unseen, a damaged file was changed by being looked at, or a backup did not bring the book back.
int main(int argc, char** argv) {
    const int times = argc > 1 ? std::atoi(argv[1]) : 400;
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    Prototype prototype;
    {
        const auto book = opened(file, OpenMode::Write);
        for (int n = 0; n < commands; ++n)
            if (const auto refusal = book->perform(handsOf(n))) {
                std::fprintf(stderr, "%s\n", refusal->text().c_str());
                return 3;
            }
        prototype.book = book->book();
        if (book->backUpOn(day("2027-03-02"))) return 3;
    }
    prototype.bytes = bytesOf(file);
    prototype.backup = app::backupsOf(file).front().path;
    std::mt19937_64 random(20'261'127);
    std::array<Counts, kinds.size()> counts;
    for (int i = 0; i < times; ++i) {
        const std::size_t kind = static_cast<std::size_t>(i) % kinds.size();
        strike(prototype, kind, random, folder.path("struck"), counts[kind]);
    }
    int wrong = 0;
    for (std::size_t kind = 0; kind < kinds.size(); ++kind) {
        const Counts& one = counts[kind];
        std::printf(
            "%-34s %3d times: %3d without effect, %3d found, %d unseen; saved whole %3d, in part %3d, not "
            "at all %3d; changed by looking %d; back from the backup %3d\n",
            kinds[kind], one.runs, one.same, one.found, one.unseen, one.whole, one.partly, one.nothing,
            one.touched, one.restored);
        wrong += one.unseen + one.touched + (one.found - one.restored);
    }
    return wrong == 0 ? 0 : 1;
}
