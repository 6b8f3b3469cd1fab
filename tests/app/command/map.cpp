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
struct Bench {
    QTemporaryDir folder;
    [[nodiscard]] std::string file(const char* name) const {
        return folder.filePath(QString::fromLatin1(name)).toStdString();
    }
    Bench() { REQUIRE(!app::BookFile::create(file("nursery.wbook"), tests::smallNursery())); }
    [[nodiscard]] ProgramRun map(const std::string& day, const std::string& out) const {
        return runWith({"map", file("nursery.wbook"), "--day", day, "--out", out});
    }
    [[nodiscard]] QByteArray content(const char* name) const {
        QFile picture(folder.filePath(QString::fromLatin1(name)));
        REQUIRE(picture.open(QIODevice::ReadOnly));
        return picture.readAll();
    }
};

} // namespace

TEST_CASE("The map of a book is written as PNG, SVG and PDF with no display") {
    const Bench bench;
    for (const char* name : {"map.png", "map.svg", "map.pdf"}) {
        const ProgramRun run = bench.map("2027-02-04", bench.file(name));
        CHECK(run.status == 0);
        CHECK(run.error.empty());
        CHECK(run.out.empty());
    }
    CHECK(bench.content("map.png").startsWith("\x89PNG"));
    CHECK(bench.content("map.pdf").startsWith("%PDF"));
    CHECK(bench.content("map.svg").contains("Glasshouse 1"));
}

TEST_CASE("A wrong day, suffix, width or book is refused in one line, and nothing is written") {
    const Bench bench;
    const std::string out = bench.file("map.png");
    const ProgramRun day = bench.map("2027-02-30", out);
    CHECK(day.status == 2);
    CHECK(day.error == "warmbench: --day: '2027-02-30'; expected a day such as 2027-02-04\n");
    const ProgramRun suffix = bench.map("2027-02-04", bench.file("map.bmp"));
    CHECK(suffix.status == 2);
    CHECK(suffix.error.find("its name ends in 'bmp'; expected png, svg or pdf") != std::string::npos);
    const ProgramRun width =
        runWith({"map", bench.file("nursery.wbook"), "--day", "2027-02-04", "--out", out, "--width", "5"});
    CHECK(width.status == 2);
    const ProgramRun book = runWith({"map", bench.file("none.wbook"), "--day", "2027-02-04", "--out", out});
    CHECK(book.status == 2);
    for (const ProgramRun& run : {day, suffix, width, book})
        CHECK(std::count(run.error.begin(), run.error.end(), '\n') == 1);
    CHECK(!QFile::exists(QString::fromStdString(out)));
}

TEST_CASE("A picture that cannot be written is a failure of storage") {
    const Bench bench;
    CHECK(bench.map("2027-02-04", bench.file("none/map.png")).status == 3);
}
