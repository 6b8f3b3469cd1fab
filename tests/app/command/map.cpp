#include "app/storage/book_file.h"
#include "tests/app/command/program_run.h"
#include "tests/support/small_nursery.h"

#include <catch2/catch.hpp>

#include <QFile>
#include <QTemporaryDir>

#include <algorithm>

using namespace warmbench;
using warmbench::tests::ProgramRun;
using warmbench::tests::runWith;

namespace {

/// A folder with the small nursery in a book.
struct Folder {
    QTemporaryDir at;
    [[nodiscard]] std::string file(const char* name) const {
        return at.filePath(QString::fromLatin1(name)).toStdString();
    }
    Folder() { REQUIRE(!app::BookFile::create(file("nursery.wbook"), tests::smallNursery())); }
    [[nodiscard]] ProgramRun map(const std::string& day, const std::string& out) const {
        return runWith({"map", file("nursery.wbook"), "--day", day, "--out", out});
    }
    [[nodiscard]] QByteArray content(const char* name) const {
        QFile picture(at.filePath(QString::fromLatin1(name)));
        REQUIRE(picture.open(QIODevice::ReadOnly));
        return picture.readAll();
    }
};

} // namespace

TEST_CASE("The map of a book is written as PNG, SVG and PDF with no display") {
    const Folder folder;
    for (const char* name : {"map.png", "map.svg", "map.pdf"}) {
        const ProgramRun run = folder.map("2027-02-04", folder.file(name));
        CHECK(run.status == 0);
        CHECK(run.error.empty());
        CHECK(run.out.empty());
    }
    CHECK(folder.content("map.png").startsWith("\x89PNG"));
    CHECK(folder.content("map.pdf").startsWith("%PDF"));
    CHECK(folder.content("map.svg").contains("Glasshouse 1"));
}

TEST_CASE("A wrong day, suffix, width or book is refused in one line, and nothing is written") {
    const Folder folder;
    const std::string out = folder.file("map.png");
    const ProgramRun day = folder.map("2027-02-30", out);
    CHECK(day.status == 2);
    CHECK(day.error == "warmbench: --day: '2027-02-30'; expected a day such as 2027-02-04\n");
    const ProgramRun suffix = folder.map("2027-02-04", folder.file("map.bmp"));
    CHECK(suffix.status == 2);
    CHECK(suffix.error.find("its name ends in 'bmp'; expected png, svg or pdf") != std::string::npos);
    const ProgramRun width =
        runWith({"map", folder.file("nursery.wbook"), "--day", "2027-02-04", "--out", out, "--width", "5"});
    CHECK(width.status == 2);
    const ProgramRun book = runWith({"map", folder.file("none.wbook"), "--day", "2027-02-04", "--out", out});
    CHECK(book.status == 2);
    for (const ProgramRun& run : {day, suffix, width, book})
        CHECK(std::count(run.error.begin(), run.error.end(), '\n') == 1);
    CHECK(!QFile::exists(QString::fromStdString(out)));
}

TEST_CASE("A picture that cannot be written is a failure of storage") {
    const Folder folder;
    CHECK(folder.map("2027-02-04", folder.file("none/map.png")).status == 3);
}
