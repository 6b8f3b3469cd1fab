#include "core/exchange/calendar/calendar.h"

#include "core/book/command.h"
#include "core/exchange/calendar/season_events.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>
#include <libical/ical.h>

#include <map>
#include <memory>
#include <sstream>

using namespace warmbench;
using namespace warmbench::exchange;
using namespace warmbench::tests;

namespace {

const CalendarStamp stamp{"3f2a", 7, "20270201T063000Z"};

Day day(const char* iso) {
    return *Day::fromIso(iso);
}

std::string property(icalcomponent* event, icalproperty_kind kind) {
    icalproperty* found = icalcomponent_get_first_property(event, kind);
    REQUIRE(found);
    const std::unique_ptr<char, void (*)(void*)> text(icalproperty_get_value_as_string_r(found),
                                                      &icalmemory_free_buffer);
    return text.get();
}

/// Days by UID, as libical reads them back; every event has all that RFC 5545 asks for.
std::map<std::string, std::string> daysRead(const std::string& text) {
    const std::unique_ptr<icalcomponent, void (*)(icalcomponent*)> calendar(
        icalparser_parse_string(text.c_str()), &icalcomponent_free);
    REQUIRE(calendar);
    CHECK(icalcomponent_count_errors(calendar.get()) == 0);
    CHECK(icalrestriction_check(calendar.get()) == 1);
    CHECK(icalcomponent_count_errors(calendar.get()) == 0);
    std::map<std::string, std::string> days;
    for (icalcomponent* event = icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT);
         event; event = icalcomponent_get_next_component(calendar.get(), ICAL_VEVENT_COMPONENT)) {
        CHECK(property(event, ICAL_DTSTAMP_PROPERTY) == "20270201T063000Z");
        CHECK(property(event, ICAL_SEQUENCE_PROPERTY) == "7");
        days[property(event, ICAL_UID_PROPERTY)] = property(event, ICAL_DTSTART_PROPERTY);
    }
    return days;
}

/// The same read by hand: lines of at most 75 octets that end with CRLF, folded ones joined again.
std::map<std::string, std::string> daysUnfolded(const std::string& text) {
    std::string whole;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        REQUIRE_FALSE(line.empty());
        CHECK(line.back() == '\r');
        line.pop_back();
        CHECK(line.size() <= 75);
        if (line.front() == ' ')
            whole.insert(whole.size() - 1, line.substr(1));
        else
            whole += line + "\n";
    }
    std::map<std::string, std::string> days;
    std::string uid;
    std::istringstream joined(whole);
    for (std::string line; std::getline(joined, line);) {
        if (line.rfind("UID:", 0) == 0) uid = line.substr(4);
        if (line.rfind("DTSTART;VALUE=DATE:", 0) == 0) days[uid] = line.substr(19);
    }
    return days;
}

} // namespace

TEST_CASE("A calendar is read back by libical and by hand, with the same days") {
    const SmallBook small = smallBook();
    const std::string text = writeCalendar(small.book, day("2027-01-01"), stamp);
    const auto events = seasonEvents(small.book, day("2027-01-01"));
    REQUIRE(events.size() > 3);
    const auto days = daysRead(text);
    CHECK(days.size() == events.size());
    CHECK(days == daysUnfolded(text));
    const std::string planned = "strike-" + std::to_string(small.planned.number) + "-1-3f2a@warmbench";
    REQUIRE(days.count(planned) == 1);
    CHECK(days.at(planned) == "20270301");
    CHECK(text.find("CATEGORIES:pot-on") != std::string::npos);
}

TEST_CASE("What has moved keeps its UID, so that a second import moves it") {
    SmallBook small = smallBook();
    const auto before = daysRead(writeCalendar(small.book, day("2027-01-01"), stamp));
    std::vector<Stay> later;
    for (const StayId id : small.book.staysOf(small.planned)) {
        later.push_back(small.book.get<Stay>(id));
        later.back().from = later.back().from + 3;
        later.back().to = later.back().to + 3;
    }
    REQUIRE(small.book.perform({PlanBatch{small.planned, day("2027-03-04"), later}}));
    const auto after = daysRead(writeCalendar(small.book, day("2027-01-01"), stamp));
    REQUIRE(before.size() == after.size());
    int moved = 0;
    for (const auto& [uid, when] : before) {
        REQUIRE(after.count(uid) == 1);
        if (after.at(uid) != when) ++moved;
    }
    CHECK(moved >= 2);
}

TEST_CASE("Only what is still to come is in the calendar, and an empty book makes an empty one") {
    const SmallBook small = smallBook();
    for (const SeasonEvent& event : seasonEvents(small.book, day("2027-03-10")))
        CHECK_FALSE(event.day < day("2027-03-10"));
    CHECK(daysRead(writeCalendar(HouseBook(), day("2027-01-01"), stamp)).empty());
}
