#include "core/exchange/workbook/workbook.h"

#include "core/book/command.h"
#include "tests/support/process.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::exchange;
using namespace warmbench::tests;

namespace {

std::string part(const std::filesystem::path& workbook, const std::string& name) {
    const ProgramRun run = runProcess("/usr/bin/unzip", {"-p", workbook.string(), name});
    REQUIRE(run.status == 0);
    return run.out;
}

} // namespace

TEST_CASE("A workbook holds numbers and days as such, and a text that looks like a formula as text") {
    SmallBook small = smallBook();
    Taxon odd;
    odd.name = "=1+1";
    REQUIRE(small.book.perform({Put<Taxon>{odd}}));
    const TemporaryFolder folder;
    const std::filesystem::path file = folder.path() / "lists.xlsx";
    const BookTable batches = *bookTable(small.book, "batches");
    REQUIRE_FALSE(
        writeWorkbook(file, {{"batches", batches}, {"taxa", *bookTable(small.book, "taxa")}}).has_value());
    const std::string sheet = part(file, "xl/worksheets/sheet1.xml");
    CHECK(has(sheet, "<pane ySplit=\"1\""));
    // 2027-03-01 is day 46447 of the spreadsheet's count from 1900.
    CHECK(has(sheet, "<v>46447</v>"));
    CHECK_FALSE(has(sheet, "<f>"));
    const std::string taxa = part(file, "xl/worksheets/sheet2.xml");
    CHECK_FALSE(has(taxa, "<f>"));
    CHECK(has(part(file, "xl/sharedStrings.xml"), "<t>=1+1</t>"));
    CHECK_FALSE(std::filesystem::exists(file.string() + ".part"));
}

TEST_CASE("A text too long for a cell is not cut in silence") {
    const TemporaryFolder folder;
    const std::filesystem::path file = folder.path() / "long.xlsx";
    REQUIRE_FALSE(writeWorkbook(file, {{"one", {{{std::string(40'000, 'x'), {}}}}}}).has_value());
    CHECK(has(part(file, "xl/sharedStrings.xml"),
              "(40000 bytes, too long for a cell; CSV and JSON hold them)"));
}

TEST_CASE("A workbook that can't be written leaves nothing behind") {
    const TemporaryFolder folder;
    const std::filesystem::path file = folder.path() / "nowhere" / "lists.xlsx";
    const Outcome refusal = writeWorkbook(file, {{"taxa", *bookTable(smallBook().book, "taxa")}});
    REQUIRE(refusal);
    CHECK(refusal->text().find(file.string() + ": it can't be written") == 0);
}
