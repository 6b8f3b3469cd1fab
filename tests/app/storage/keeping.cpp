#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

#include <csignal>

#include <sys/resource.h>

using namespace warmbench;
using namespace warmbench::tests;
using app::BookFile;
using app::OpenMode;

namespace {

/// While it lives, no file of this process grows beyond `bytes`.
class FileSizeLimit {
public:
    explicit FileSizeLimit(rlim_t bytes) {
        std::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit limit{bytes, m_before.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &limit);
    }
    FileSizeLimit(const FileSizeLimit&) = delete;
    FileSizeLimit& operator=(const FileSizeLimit&) = delete;
    ~FileSizeLimit() { ::setrlimit(RLIMIT_FSIZE, &m_before); }

private:
    rlimit m_before{};
};

} // namespace

TEST_CASE("A book that is kept is read back the same, in either mode") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    CHECK(opened(file, OpenMode::Read)->book() == smallBook().book);
    CHECK(opened(file, OpenMode::Write)->book() == smallBook().book);
    CHECK(folder.files().size() == 1);
}

TEST_CASE("A shared book that is kept is read back the same, in either mode") {
    const BookFolder folder(Kept::Shared);
    const std::string file = folder.smallBookFile();
    CHECK(opened(file, OpenMode::Read)->book() == smallBook().book);
    CHECK(opened(file, OpenMode::Write)->book() == smallBook().book);
}

TEST_CASE("An empty book is kept and read back the same") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    REQUIRE(!BookFile::create(folder.path("empty.wbook"), HouseBook{}));
    CHECK(opened(folder.path("empty.wbook"), OpenMode::Read)->book() == HouseBook{});
}

TEST_CASE("A new book never takes the place of a file") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    const auto before = folder.files();
    const auto refusal = BookFile::create(file, HouseBook{});
    REQUIRE(refusal);
    CHECK(refusal->text() == file + ": there is a file of this name already; choose another");
    CHECK(folder.files() == before);
}

TEST_CASE("What was done is in the file when perform returns, and in its journal") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const std::string file = folder.smallBookFile();
    SmallBook small = smallBook();
    const auto book = opened(file, OpenMode::Write);
    const std::vector<Command> commands{
        {StrikeBatch{small.planned, day("2027-03-02")}},
        {RecordLoss{{{}, small.struck, 1, day("2027-03-20"), 2, "rot"}}},
        {PotOn{small.struck, day("2027-03-25"), {{2, 4, 1}}, ""}},
        {SetMatRuns{small.warm, day("2027-03-01"), day("2027-03-05"), {}}},
        {RemoveStay{small.weaning}},
    };
    for (const Command& command : commands) {
        const std::string said = words(small.book, command).text();
        const Change change = perform(small.book, command);
        REQUIRE(!book->perform(command));
        CHECK(book->book() == small.book);
        const auto other = opened(file, OpenMode::Read);
        CHECK(other->book() == small.book);
        const auto journal = other->journal();
        REQUIRE(journal);
        CHECK(journal->back().words == said);
        CHECK(journal->back().change == change);
        CHECK(!journal->back().who.empty());
        CHECK(journal->back().at.ends_with("Z"));
    }
    CHECK(book->check().empty());
}

TEST_CASE("Undo and redo are kept and journaled too") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const std::string file = folder.smallBookFile();
    const HouseBook before = smallBook().book;
    const auto book = opened(file, OpenMode::Write);
    REQUIRE(!book->perform(handsOf(1)));
    const HouseBook after = book->book();
    CHECK(book->undoWords() == "Add hand day 2030-01-02");
    REQUIRE(!book->undo());
    CHECK(opened(file, OpenMode::Read)->book() == before);
    CHECK(book->redoWords() == "Add hand day 2030-01-02");
    REQUIRE(!book->redo());
    CHECK(opened(file, OpenMode::Read)->book() == after);
    CHECK(book->journal()->back().words == "Redo: Add hand day 2030-01-02");
    REQUIRE(!book->undo());
    CHECK(book->undo()->text() == "there is nothing to undo");
    CHECK(book->check().empty());
}

TEST_CASE("A refused command leaves file and journal alone") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const std::string file = folder.smallBookFile();
    const auto book = opened(file, OpenMode::Write);
    const std::size_t entries = book->journal()->size();
    CHECK(book->perform({Remove<House>{{1}}}));
    CHECK(book->book() == smallBook().book);
    CHECK(book->journal()->size() == entries);
}

TEST_CASE("A write that fails takes the change back, and the next one goes on") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    const auto book = opened(file, OpenMode::Write);
    REQUIRE(!book->perform(handsOf(1)));
    const HouseBook before = book->book();
    {
        const FileSizeLimit full(4096);
        const auto refusal = book->perform(handsOf(2));
        REQUIRE(refusal);
        CHECK(refusal->place == file);
        CHECK(book->book() == before);
    }
    CHECK(opened(file, OpenMode::Read)->book() == before);
    REQUIRE(!book->perform(handsOf(3)));
    CHECK(opened(file, OpenMode::Read)->book() == book->book());
    CHECK(book->check().empty());
}

TEST_CASE("A new book that can't be written whole leaves nothing behind") {
    const BookFolder folder;
    {
        const FileSizeLimit full(16'384);
        CHECK(BookFile::create(folder.path("new.wbook"), smallBook().book));
    }
    CHECK(folder.files().empty());
}

TEST_CASE("A whole book goes into an empty one only") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    REQUIRE(!BookFile::create(folder.path("empty.wbook"), HouseBook{}));
    const auto book = opened(folder.path("empty.wbook"), OpenMode::Write);
    REQUIRE(!book->adopt(smallBook().book, "Import"));
    CHECK(opened(folder.path("empty.wbook"), OpenMode::Read)->book() == smallBook().book);
    CHECK(book->adopt(smallBook().book, "Import"));
    CHECK(book->check().empty());
}

TEST_CASE("A backup is a sound copy, and never takes the place of a file") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const std::string file = folder.smallBookFile();
    const auto book = opened(file, OpenMode::Write);
    REQUIRE(!book->perform(handsOf(1)));
    REQUIRE(!book->backup(folder.filePath("copy.wbook")));
    const auto copy = opened(folder.filePath("copy.wbook"), OpenMode::Read);
    CHECK(copy->book() == book->book());
    CHECK(copy->check().empty());
    CHECK(book->backup(folder.filePath("copy.wbook")));
    CHECK(book->backup(folder.filePath("nowhere/copy.wbook")));
}

TEST_CASE("A backup that can't be written whole leaves nothing behind") {
    const BookFolder folder;
    const auto book = opened(folder.smallBookFile(), OpenMode::Write);
    const std::size_t files = folder.files().size();
    const FileSizeLimit full(16'384);
    CHECK(book->backup(folder.path("copy.wbook")));
    CHECK(folder.files().size() == files);
}

TEST_CASE("A check tells what was done behind the program's back") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const std::string file = folder.smallBookFile();
    REQUIRE(!opened(file, OpenMode::Write)->perform(handsOf(1)));
    CHECK(opened(file, OpenMode::Read)->check().empty());
    tamper(file, "UPDATE taxa SET caution = 'irritates the skin' WHERE id = 1");
    auto wrong = opened(file, OpenMode::Read)->check();
    REQUIRE(wrong.size() == 1);
    CHECK(wrong.front().text() == "journal: it does not lead to what the book holds");
    tamper(file, "UPDATE journal SET words = 'nothing' WHERE seq = 1");
    wrong = opened(file, OpenMode::Read)->check();
    REQUIRE(wrong.size() == 2);
    CHECK(wrong.front().text() == "journal entry 1: it, or one before it, has been tampered with");
}
