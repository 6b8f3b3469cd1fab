#include "core/exchange/csv/csv_reader.h"

#include <catch2/catch.hpp>

using warmbench::exchange::CsvReader;

namespace {

CsvReader opened(const std::string& text) {
    auto reader = CsvReader::open("f.csv", text, {{"a"}, {"b"}, {"note", false}});
    INFO((reader.ok() ? std::string{} : reader.refusal().text()));
    REQUIRE(reader.ok());
    return *reader;
}

std::string refusedHeader(const std::string& text) {
    const auto reader = CsvReader::open("f.csv", text, {{"a"}, {"b"}, {"note", false}});
    return reader.ok() ? "" : reader.refusal().text();
}

std::string refusedRecord(const std::string& text) {
    CsvReader reader = opened(text);
    for (auto read = reader.next();; read = reader.next()) {
        if (!read.ok()) return read.refusal().text();
        if (!*read) return "";
    }
}

} // namespace

TEST_CASE("Columns are found by name in any order, others are passed over") {
    CsvReader reader = opened("x,b,a\n1,2,3\n4,5,6\n");
    REQUIRE(*reader.next());
    CHECK(reader.cell(0) == "3");
    CHECK(reader.cell(1) == "2");
    CHECK_FALSE(reader.has(2));
    CHECK(reader.cell(2).empty());
    REQUIRE(*reader.next());
    CHECK(reader.cell(0) == "6");
    CHECK(reader.line() == 3);
    CHECK_FALSE(*reader.next());
}

TEST_CASE("Quoted cells hold commas, line ends and quotation marks") {
    CsvReader reader = opened("a,\"b\"\r\n\"x,\"\"y\"\"\r\nz\",\" 1 \"\r\n2, 3 \r\n");
    REQUIRE(*reader.next());
    CHECK(reader.cell(0) == "x,\"y\"\r\nz");
    CHECK(reader.cell(1) == " 1 ");
    REQUIRE(*reader.next());
    CHECK(reader.line() == 4);
    CHECK(reader.cell(1) == "3");
    CHECK_FALSE(*reader.next());
}

TEST_CASE("A byte order mark, any line ends and empty lines are no matter") {
    for (const char* text : {"\xEF\xBB\xBF"
                             "a,b\n1,2",
                             "a,b\r\n1,2\r\n", "a,b\r\r1,2\r", "\n\na,b\n\n1,2\n\n"}) {
        CsvReader reader = opened(text);
        REQUIRE(*reader.next());
        CHECK(reader.cell(0) == "1");
        CHECK(reader.cell(1) == "2");
        CHECK_FALSE(*reader.next());
    }
}

TEST_CASE("What is wrong with a CSV file is said in one line with its place") {
    CHECK(refusedHeader("") ==
          "f.csv: found an empty file, expected a first line that names the columns a, b");
    CHECK(refusedHeader("a,c\n1,2\n") == "f.csv: line 1: found the columns 'a, c', expected one named b");
    CHECK(refusedHeader("a,b,a\n") == "f.csv: line 1: found the column a twice, expected it once");
    CHECK(refusedHeader("a,b\n1,2\n\xB0,3\n") ==
          "f.csv: line 3: found bytes that are not UTF-8 text, expected a CSV file saved as UTF-8");
    CHECK(refusedHeader("\xFF\xFE"
                        "a,b")
              .find("not UTF-8") != std::string::npos);
    CHECK(refusedHeader("a,b\n\xED\xA0\x80,1\n").find("line 2") != std::string::npos);
    CHECK(refusedRecord("a,b\n1,2\n3\n") == "f.csv: line 3: found 1 cell, expected 2 as in the first line");
    CHECK(refusedRecord("a,b\n1,2,3\n") == "f.csv: line 2: found 3 cells, expected 2 as in the first line");
    CHECK(refusedRecord("a,b\n1,x\"y\n").find("line 2: found a quotation mark inside 'x\"y'") !=
          std::string::npos);
    CHECK(refusedRecord("a,b\n\"1,2\n3,4\n")
              .find("line 2: found a cell whose quotation mark is never closed") != std::string::npos);
    CHECK(refusedRecord("a,b\n\"1\"x,2\n").find("found text after a closing quotation mark") !=
          std::string::npos);
}

TEST_CASE("A refusal of a cell names file, line, column, what was found and what was expected") {
    CsvReader reader = opened("a,b\n-3,\n");
    REQUIRE(*reader.next());
    CHECK(reader.refusal(0, "a number above 0").text() ==
          "f.csv: line 2, a: found '-3', expected a number above 0");
    CHECK(reader.refusal(1, "a number").text() == "f.csv: line 2, b: found nothing, expected a number");
}
