#include "app/storage/rescue.h"
#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>

#include <sys/wait.h>
#include <unistd.h>

using namespace warmbench;
using namespace warmbench::tests;
using app::BookFile;
using app::OpenMode;

namespace {

/// The words with which both modes refuse a file; refusing changes nothing and leaves nothing beside it.
std::string refused(const BookFolder& folder, const std::string& name) {
    const auto before = folder.files();
    std::string said;
    for (const OpenMode mode : {OpenMode::Read, OpenMode::Write}) {
        const auto file = BookFile::open(folder.path(name), mode);
        REQUIRE(!file);
        CHECK(file.refusal().place == folder.path(name));
        said = file.refusal().what.text();
    }
    CHECK(folder.files() == before);
    return said;
}

void write(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

/// What a user without special rights is told when the file is opened for writing.
std::string refusedToOrdinaryUser(const std::string& path) {
    int ends[2];
    REQUIRE(::pipe(ends) == 0);
    const pid_t child = ::fork();
    if (child == 0) {
        if (::getuid() == 0 && ::setuid(65534) != 0) ::_exit(2);
        const auto file = BookFile::open(path, OpenMode::Write);
        const std::string said = file ? "opened" : file.refusal().what.text();
        ::_exit(::write(ends[1], said.data(), said.size()) < 0 ? 1 : 0);
    }
    ::close(ends[1]);
    std::string said(1000, '\0');
    const ssize_t count = ::read(ends[0], said.data(), said.size());
    ::close(ends[0]);
    int status = 0;
    ::waitpid(child, &status, 0);
    CHECK(status == 0);
    said.resize(static_cast<std::size_t>(std::max<ssize_t>(count, 0)));
    return said;
}

} // namespace

TEST_CASE("What is no house book is refused and left alone") {
    const BookFolder folder;
    CHECK(refused(folder, "missing.wbook") == "there is no such file");
    std::filesystem::create_directory(folder.path("folder.wbook"));
    for (const OpenMode mode : {OpenMode::Read, OpenMode::Write})
        CHECK(BookFile::open(folder.path("folder.wbook"), mode).refusal().what ==
              "found a folder, expected a house book");
    std::filesystem::remove(folder.path("folder.wbook"));
    const std::string other =
        "this is no house book (found another kind of file, expected one made by Warmbench)";
    write(folder.path("empty.wbook"), "");
    CHECK(refused(folder, "empty.wbook") == other);
    write(folder.path("text.wbook"), std::string(5000, 'x'));
    CHECK(refused(folder, "text.wbook") == other);
    tamper(folder.path("foreign.wbook"), "CREATE TABLE plants (name TEXT)");
    CHECK(refused(folder, "foreign.wbook") == "this is no house book (found another program's database)");
}

TEST_CASE("A book of a newer program is refused and left alone") {
    const BookFolder folder;
    tamper(folder.smallBookFile(), "PRAGMA user_version = 5");
    CHECK(refused(folder, "small.wbook") ==
          "it was written by a newer Warmbench (found version 5, expected at most 4); use that one");
}

TEST_CASE("A damaged book is refused and left alone") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    std::string bytes = folder.files().at("small.wbook");
    write(folder.path("cut.wbook"), bytes.substr(0, bytes.size() / 2));
    CHECK(refused(folder, "cut.wbook") == "the file is damaged; open a backup, and keep this file as it is");
    for (std::size_t page = 1; page < bytes.size() / 4096; page += 2)
        std::fill_n(bytes.begin() + static_cast<std::ptrdiff_t>(page * 4096), 4096, '\xA5');
    write(folder.path("torn.wbook"), bytes);
    CHECK(!refused(folder, "torn.wbook").empty());
}

TEST_CASE("A book in which somebody has hidden statements is refused, and rescued without them") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    // A table that never ends, in the place of one of the book's own.
    tamper(file, "ALTER TABLE targets RENAME TO hidden");
    tamper(file, "CREATE VIEW targets AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) "
                 "SELECT i AS id FROM n");
    CHECK(refused(folder, "small.wbook") ==
          "something stands in it that no house book has (view 'targets'); open a backup, and keep this file "
          "as it is");
    const auto rescued = app::rescueBook(file, folder.path("rescued.wbook"));
    REQUIRE(rescued);
    CHECK(rescued->journalWhole);
    CHECK(opened(folder.path("rescued.wbook"), OpenMode::Read)->book() == smallBook().book);
}

TEST_CASE("A book whose rows tell nonsense is refused and left alone") {
    const BookFolder folder;
    const auto after = [&](const char* statement) {
        std::filesystem::remove(folder.path("small.wbook"));
        tamper(folder.smallBookFile(), statement);
        return refused(folder, "small.wbook");
    };
    CHECK(after("DELETE FROM batches WHERE id = 1") ==
          "the file is damaged: stay 1: its batch, number 1, is not in this book (and 1 more)");
    CHECK(after("UPDATE stays SET \"to\" = '2000-01-01' WHERE id = 1") ==
          "the file is damaged: 27-046-A: a stay that begins on 2027-02-15 can't end on 2000-01-01");
    CHECK(after("UPDATE zones SET cover = 'rain'") ==
          "the file is damaged: zone number 1: found nothing that can be its cover");
    CHECK(after("UPDATE stays SET places = '[1]'") ==
          "the file is damaged: stay number 1: found nothing that can be its places");
    CHECK(after("DELETE FROM nursery") == "the file is damaged: nursery: a book has one, number 1");
    CHECK(after("DROP TABLE losses").starts_with("the file is damaged"));
}

TEST_CASE("A book that can't be written is refused for writing and read all the same") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    const std::string readOnly =
        "it is read-only (the file or its folder can't be written), so nothing can be changed in it";
    namespace fs = std::filesystem;
    const fs::path inside = fs::path(file).parent_path();
    fs::permissions(inside, fs::perms::all);
    fs::permissions(file, fs::perms(0444));
    const auto before = folder.files();
    CHECK(refusedToOrdinaryUser(file) == readOnly);
    fs::permissions(file, fs::perms(0666));
    fs::permissions(inside, fs::perms(0555));
    CHECK(refusedToOrdinaryUser(file) == readOnly);
    CHECK(opened(file, OpenMode::Read)->book() == smallBook().book);
    fs::permissions(inside, fs::perms(0700));
    CHECK(folder.files() == before);
}

TEST_CASE("A book opened for reading is not changed, and changes nothing") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    const auto before = folder.files();
    {
        const auto book = opened(file, OpenMode::Read);
        CHECK(book->perform(handsOf(1))->text() == file + ": it was opened for reading only");
        CHECK(book->check().empty());
    }
    CHECK(folder.files() == before);
}
