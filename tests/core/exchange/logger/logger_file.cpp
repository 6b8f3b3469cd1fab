#include "core/exchange/logger/logger_file.h"

#include "tests/core/exchange/logger/moment.h"

#include <catch2/catch.hpp>

using namespace warmbench::exchange;

namespace {

LoggerFile read(const std::string& text, const Clock& clock = {}, const LoggerHints& hints = {}) {
    auto file = readLogger("logger.csv", text, clock, hints);
    if (!file) FAIL(file.refusal().text());
    return *file;
}

} // namespace

TEST_CASE("A plain file with ISO times and points") {
    const LoggerFile file = read("time,celsius\n2026-09-15T00:00,16.9\n2026-09-15T01:00,17.1\n");
    CHECK(file.shape.delimiter == ',');
    REQUIRE(file.readings.size() == 2);
    CHECK(file.readings[1].second == at("2026-09-15T01:00"));
    CHECK(file.readings[1].celsius == 17.1);
    CHECK(file.wrongLines == 0);
}

TEST_CASE("Semicolons, decimal commas and dates with the day first") {
    const LoggerFile file = read("\xEF\xBB\xBFZeit;Wurzelzone °C;Feuchte %\r\n15.09.2026 00:00;16,7;91\r\n"
                                 "15.09.2026 01:00;17,2;88,5\r\n");
    CHECK(file.shape.delimiter == ';');
    CHECK(file.shape.decimalComma);
    CHECK(file.shape.order == DateOrder::DayFirst);
    REQUIRE(file.readings.size() == 2);
    CHECK(file.readings[1].celsius == 17.2);
    CHECK(file.readings[1].humidity == 88.5);
    CHECK(file.readings[0].second == at("2026-09-15T00:00"));
}

TEST_CASE("A humidity in whole numbers does not hide the decimal commas beside it") {
    const LoggerFile file = read("time;Wurzelzone °C;Feuchte %\n01.02.2027 00:00;20,0;60\n"
                                 "01.02.2027 00:01;20,1;61\n");
    CHECK(file.shape.decimalComma);
    REQUIRE(file.readings.size() == 2);
    CHECK(file.readings[1].celsius == 20.1);
    CHECK(file.readings[1].humidity == 61);
}

TEST_CASE("No head, tabs, month first with halves of the day, in Fahrenheit") {
    LoggerHints hints;
    hints.fahrenheit = true;
    const LoggerFile file = read("1\t03/14/2027\t12:30 AM\t68.0\n2\t03/14/2027\t1:00 PM\t50\n", {}, hints);
    CHECK(file.shape.order == DateOrder::MonthFirst);
    REQUIRE(file.readings.size() == 2);
    CHECK(file.readings[0].second == at("2027-03-14T00:30"));
    CHECK(file.readings[1].second == at("2027-03-14T13:00"));
    CHECK(file.readings[0].celsius == Approx(20));
    CHECK(file.readings[1].celsius == Approx(10));
}

TEST_CASE("A head that says Fahrenheit is believed, and lines before it are passed over") {
    const LoggerFile file = read("Logger 7\nSerial: 12\nDate,Time,Temp "
                                 "(°F),RH\n2027-03-14,06:00:00,68,80\n2027-03-14,07:00:00,77,75\n");
    CHECK(file.shape.fahrenheit);
    CHECK(file.shape.timeApart);
    CHECK(file.shape.firstLine == 4);
    CHECK(file.readings[1].celsius == Approx(25));
    CHECK(file.readings[1].humidity == 75);
}

TEST_CASE("A file whose head names no unit is in Fahrenheit where so many degrees Celsius would be too hot") {
    const std::string hot =
        "10/25/2026 01:00 AM,64.4\r\n10/25/2026 02:00 AM,66.2\r\n10/25/2026 03:00 AM,12.2\r\n";
    const auto shape = shapeOf("hot.csv", hot, {});
    REQUIRE(shape);
    CHECK(shape->fahrenheit);
    CHECK(shape->words().text().find("as °F, as so many °C would be too hot") != std::string::npos);
    LoggerHints celsius;
    celsius.fahrenheit = false;
    CHECK_FALSE(shapeOf("hot.csv", hot, celsius)->fahrenheit);
    CHECK_FALSE(shapeOf("hot.csv", "time,temp (C)\n2026-10-25T01:00,64.4\n", {})->fahrenheit);
    CHECK(shapeOf("head.csv", "time\ttemp F\n2026-10-25T01:00\t44.4\n", {})->fahrenheit);
    CHECK_FALSE(shapeOf("leaf.csv", "time,leaf\n2026-10-25T01:00,18.4\n", {})->fahrenheit);
}

TEST_CASE("Offsets from UTC count before the clock's own rule") {
    const LoggerFile file =
        read("time,t\n2027-07-01T12:00+02:00,20\n2027-07-01T12:00Z,21\n", {60, SummerTime::None});
    CHECK(file.readings[0].second == at("2027-07-01T10:00"));
    CHECK(file.readings[1].second == at("2027-07-01T12:00"));
}

TEST_CASE("Doubles are left out, stragglers put in their places, gaps and wrong lines counted") {
    const LoggerFile file = read("time,celsius\n"
                                 "2027-03-01T00:00,16\n"
                                 "2027-03-01T02:00,18\n"
                                 "2027-03-01T01:00,17\n"
                                 "2027-03-01T02:00,18\n"
                                 "2027-03-01T02:00,19\n"
                                 "2027-03-01T03:00,\n"
                                 "2027-03-01T04:00,error\n"
                                 "2027-03-01T12:00,20\n"
                                 "yesterday,20\n");
    REQUIRE(file.readings.size() == 4);
    CHECK(file.readings[1].celsius == 17);
    CHECK(file.outOfOrder == 1);
    CHECK(file.duplicates == 2);
    CHECK(file.contradictions == 1);
    CHECK(file.missing == 1);
    CHECK(file.wrongLines == 2);
    CHECK(file.wrong.front() == "line 8: found 'error', expected a temperature");
    CHECK(file.gaps == 1);
    CHECK(file.gapHours == 10);
}

TEST_CASE("What is no logger's file is refused") {
    CHECK(readLogger("x.csv", "", {}).refusal().text() ==
          "x.csv: found no line with a time and a temperature, expected a logger's readings");
    CHECK_FALSE(readLogger("x.csv", "a,b,c\n1,2,3\n", {}));
    LoggerHints hints;
    hints.celsius = "soil";
    CHECK_FALSE(readLogger("x.csv", "time,t\n2027-03-01T00:00,16\n", {}, hints));
    hints.celsius = "t";
    CHECK(readLogger("x.csv", "time,u,t\n2027-03-01T00:00,16,17\n", {}, hints)->readings[0].celsius == 17);
}

TEST_CASE("A delimiter and a way to write decimals that are told outweigh what fits best") {
    const std::string text = "2027-03-01 00:00;21,5;60\n2027-03-01 00:10;21,6;61\n";
    LoggerHints hints;
    hints.decimalComma = true;
    hints.delimiter = ';';
    const LoggerFile told = *readLogger("x.csv", text, {}, hints);
    CHECK(told.shape.delimiter == ';');
    CHECK(told.readings[0].celsius == 21.5);
    hints.decimalComma = false;
    hints.fahrenheit = false;
    CHECK(readLogger("x.csv", text, {}, hints)->readings[0].celsius == 60);
    hints.delimiter = '\t';
    CHECK_FALSE(readLogger("x.csv", text, {}, hints));
}
