#include "core/placing/stay_moves.h"
#include "core/book/container_numbers.h"
#include "core/book/query.h"
#include "core/book/rules.h"
#include "core/book/whereabouts.h"
#include "core/placing/other_days.h"
#include "tests/support/small_book.h"
#include "tests/support/through_and_back.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::placing;
using namespace warmbench::tests;

namespace {

/// What was made says so in words, and does, is taken back and done again as every command.
void movesThroughAndBack(HouseBook& book, const Result<Command>& made, const std::string& told) {
    if (!made) FAIL(made.refusal().text());
    CHECK(words(book, *made) == told);
    followsThroughAndBack(book, *made);
}

/// `Bench 1 · A 2027-02-15 to 2027-04-01: 1 2 3 4`, in order of days and of their first container.
std::vector<std::string> told(const HouseBook& book, BatchId batch) {
    std::vector<const Stay*> stays = staysInOrder(book, batch);
    std::stable_sort(stays.begin(), stays.end(), [](const Stay* a, const Stay* b) {
        return std::pair(a->from, a->places.front().container) <
               std::pair(b->from, b->places.front().container);
    });
    std::vector<std::string> lines;
    for (const Stay* stay : stays) {
        lines.push_back(book.get<Zone>(stay->zone).name + " " + stay->from.iso() + " to " + stay->to.iso() +
                        ":");
        for (const Place& place : stay->places) lines.back() += " " + std::to_string(place.container);
    }
    return lines;
}

std::vector<Place> column(std::initializer_list<int> containers, int row, int col) {
    std::vector<Place> places;
    for (const int container : containers) places.push_back({container, {row++, col, 1, 1}});
    return places;
}

std::string refusedMove(HouseBook& book, const Result<Command>& command) {
    if (!command) return command.refusal().text();
    const HouseBook before = book;
    const auto change = book.perform(*command);
    CHECK(book == before);
    return change ? "done" : change.refusal().text();
}

using Lines = std::vector<std::string>;

} // namespace

TEST_CASE("A whole batch is moved from a day on, and what has been until then stays in the book") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    movesThroughAndBack(
        book, moveContainers(book, {small.struck, day("2027-03-10"), small.cool, column({1, 2, 3, 4}, 0, 0)}),
        "Move 27-046-A to Bench 1 · B from 2027-03-10 on");
    CHECK(told(book, small.struck) == Lines{"A 2027-02-15 to 2027-03-10: 1 2 3 4",
                                            "B 2027-03-10 to 2027-04-01: 1 2 3 4",
                                            "B 2027-04-01 to 2027-04-15: 1 2 3 4"});
    CHECK(stayOf(book, small.struck, 2, day("2027-03-09"))->zone == small.warm);
    CHECK(stayOf(book, small.struck, 2, day("2027-03-10"))->zone == small.cool);
    CHECK(stayOf(book, small.struck, 2, day("2027-04-15")) == nullptr);
    CHECK(stayOf(book, small.struck, 5, day("2027-03-10")) == nullptr);
    // Moved on its first day it has never stood elsewhere, and keeps its one stay.
    movesThroughAndBack(
        book,
        moveContainers(
            book, {small.planned, day("2027-03-01"), small.warm, {{1, {2, 0, 1, 3}}, {2, {2, 3, 1, 3}}}}),
        "Move 27-060-A within Bench 1 · A from 2027-03-01 on");
    CHECK(book.get<Stay>(small.plannedStay).places.front().slots.row == 2);
}

TEST_CASE("A batch is split over two zones and joined again into one stay") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    movesThroughAndBack(
        book, moveContainers(book, {small.struck, day("2027-03-10"), small.cool, column({3, 4}, 0, 0)}),
        "Move containers 3, 4 of 27-046-A to Bench 1 · B from 2027-03-10 on");
    CHECK(told(book, small.struck) ==
          Lines{"A 2027-02-15 to 2027-03-10: 1 2 3 4", "A 2027-03-10 to 2027-04-01: 1 2",
                "B 2027-03-10 to 2027-04-01: 3 4", "B 2027-04-01 to 2027-04-15: 1 2 3 4"});
    CHECK(zonesOn(book, small.struck, day("2027-03-20")) == std::vector{small.warm, small.cool});
    CHECK(staysOn(book, small.struck, day("2027-03-20")).size() == 2);
    // Back later, on other slots: one stay from that day on.
    HouseBook later = book;
    movesThroughAndBack(
        later, moveContainers(later, {small.struck, day("2027-03-20"), small.warm, column({3, 4}, 2, 0)}),
        "Move containers 3, 4 of 27-046-A to Bench 1 · A from 2027-03-20 on");
    CHECK(told(later, small.struck) ==
          Lines{"A 2027-02-15 to 2027-03-10: 1 2 3 4", "A 2027-03-10 to 2027-03-20: 1 2",
                "B 2027-03-10 to 2027-03-20: 3 4", "A 2027-03-20 to 2027-04-01: 1 2 3 4",
                "B 2027-04-01 to 2027-04-15: 1 2 3 4"});
    // Back on the same day to the slots that they had: as though nothing had been moved.
    const SmallBook untouched = smallBook();
    const Stay& before = untouched.book.get<Stay>(small.rooting);
    std::vector<Place> home;
    for (const Place& place : before.places)
        if (place.container > 2) home.push_back(place);
    perform(book, *moveContainers(book, {small.struck, day("2027-03-10"), small.warm, home}));
    CHECK(book == untouched.book);
}

TEST_CASE("One container is moved on a day to come, and named by its code") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    movesThroughAndBack(
        book, moveContainers(book, {small.struck, day("2027-04-10"), small.warm, column({2}, 3, 0)}),
        "Move 27-046-A/02 to Bench 1 · A from 2027-04-10 on");
    CHECK(told(book, small.struck).back() == "A 2027-04-10 to 2027-04-15: 2");
}

TEST_CASE("Containers that are given another end on the way move what follows along") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    movesThroughAndBack(book,
                        moveContainers(book, {small.struck, day("2027-03-10"), small.warm,
                                              column({1, 2, 3, 4}, 0, 6), day("2027-04-05")}),
                        "Move 27-046-A within Bench 1 · A from 2027-03-10 on");
    CHECK(told(book, small.struck) == Lines{"A 2027-02-15 to 2027-03-10: 1 2 3 4",
                                            "A 2027-03-10 to 2027-04-05: 1 2 3 4",
                                            "B 2027-04-05 to 2027-04-19: 1 2 3 4"});
}

TEST_CASE("A batch without a place is given one, for the days that are named") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    perform(book, {PlanBatch{small.planned, day("2027-03-01"), {}}});
    const std::vector<Place> places{{1, {2, 0, 1, 3}}, {2, {2, 3, 1, 3}}};
    CHECK(refusedMove(book, moveContainers(book, {small.planned, day("2027-03-01"), small.warm, places})) ==
          "27-060-A/01: it has no place on 2027-03-01; say until when it is to stand");
    movesThroughAndBack(
        book, moveContainers(book, {small.planned, day("2027-03-01"), small.warm, places, day("2027-04-01")}),
        "Give 27-060-A a place in Bench 1 · A from 2027-03-01 on");
    CHECK(told(book, small.planned) == Lines{"A 2027-03-01 to 2027-04-01: 1 2"});
}

TEST_CASE("A stay is stretched and shortened, and what comes after it moves along") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    movesThroughAndBack(book, setStayDays(book, small.rooting, day("2027-02-15"), day("2027-04-08")),
                        "Change the days of 27-046-A in Bench 1 · A");
    CHECK(told(book, small.struck) ==
          Lines{"A 2027-02-15 to 2027-04-08: 1 2 3 4", "B 2027-04-08 to 2027-04-22: 1 2 3 4"});
    // The later one begins earlier: the one before ends then.
    movesThroughAndBack(book, setStayDays(book, small.weaning, day("2027-03-25"), day("2027-04-22")),
                        "Change the days of 27-046-A in Bench 1 · B");
    CHECK(told(book, small.struck) ==
          Lines{"A 2027-02-15 to 2027-03-25: 1 2 3 4", "B 2027-03-25 to 2027-04-22: 1 2 3 4"});
    CHECK(book.get<Stay>(small.rooting).to == day("2027-03-25"));
}

TEST_CASE("What was weaned stays so wherever it is moved, split and stretched, and what was not does not "
          "become so") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    perform(book, {WeanStay{small.weaning, day("2027-04-01")}});
    const Move apart{small.struck, day("2027-04-05"), small.warm, {{4, {0, 7, 1, 1}}}, std::nullopt};
    movesThroughAndBack(book, moveContainers(book, apart),
                        "Move 27-046-A/04 to Bench 1 · A from 2027-04-05 on");
    perform(book, *setStayDays(book, small.weaning, day("2027-04-02"), day("2027-04-20")));
    int weaned = 0;
    for (const Stay* stay : staysInOrder(book, small.struck)) {
        CHECK(stay->weanedOn ==
              (stay->stage == Stage::Weaning ? std::optional(day("2027-04-01")) : std::nullopt));
        weaned += stay->stage == Stage::Weaning ? 1 : 0;
    }
    CHECK(weaned > 1);
    CHECK(audit(book).empty());
}

TEST_CASE(
    "A planned batch whose first stay gets other days is struck on the first, and the rest moves along") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    const Stay before = book.get<Stay>(small.plannedStay);
    const Day strikes = before.from;
    const int rooting = before.to - before.from;
    REQUIRE(strikes == book.get<Batch>(small.planned).strikeDay);
    perform(book, {AddStay{{{},
                            small.planned,
                            Stage::Weaning,
                            small.cool,
                            before.to,
                            before.to + 10,
                            {{1, {2, 0, 1, 3}}, {2, {3, 0, 1, 3}}}}}});
    const auto command = otherDays(book, small.plannedStay, strikes + 3, before.to + 9);
    REQUIRE(command);
    movesThroughAndBack(book, command, words(book, *command).text());
    CHECK(book.get<Batch>(small.planned).strikeDay == strikes + 3);
    const auto line = [](const char* zone, Day from, Day to) {
        return std::string(zone) + " " + from.iso() + " to " + to.iso() + ": 1 2";
    };
    CHECK(told(book, small.planned) == Lines{line("A", strikes + 3, strikes + rooting + 9),
                                             line("B", strikes + rooting + 9, strikes + rooting + 19)});
    // Its end alone leaves the strike day.
    const StayId again = staysInOrder(book, small.planned).front()->id;
    perform(book, *otherDays(book, again, strikes + 3, strikes + rooting + 5));
    CHECK(book.get<Batch>(small.planned).strikeDay == strikes + 3);
    CHECK(told(book, small.planned) == Lines{line("A", strikes + 3, strikes + rooting + 5),
                                             line("B", strikes + rooting + 5, strikes + rooting + 15)});
    // What has been struck keeps its day.
    perform(book, *otherDays(book, small.rooting, day("2027-02-15"), day("2027-04-05")));
    CHECK(book.get<Batch>(small.struck).strikeDay == day("2027-02-15"));
    CHECK(audit(book).empty());
}

TEST_CASE("Moves and days that can't be are refused in words") {
    SmallBook small = smallBook();
    HouseBook& book = small.book;
    const Day when = day("2027-03-10");
    CHECK(refusedMove(book, moveContainers(book, {small.struck, when, small.cool, {}})) ==
          "27-046-A: no container was named to move");
    CHECK(refusedMove(book, moveContainers(book, {small.struck, when, small.cool, column({1, 1}, 0, 0)})) ==
          "27-046-A: container 1 is named twice");
    CHECK(refusedMove(book, moveContainers(book, {small.struck, when, small.cool, column({9}, 0, 0),
                                                  when + 5})) == "27-046-A: it has no container 9");
    CHECK(
        refusedMove(book, moveContainers(book, {small.struck, when, small.cool, column({1}, 0, 0), when})) ==
        "27-046-A: a stay that begins on 2027-03-10 can't end on 2027-03-10");
    CHECK(refusedMove(book, moveContainers(book, {small.struck, when, small.warm, column({1}, 1, 0)})) ==
          "27-046-A, container 1: its slot in Bench 1 · A is taken by 27-060-A on 2027-03-10");
    CHECK(refusedMove(book, setStayDays(book, small.rooting, when, when)) ==
          "27-046-A: a stay that begins on 2027-03-10 can't end on 2027-03-10");
    CHECK(refusedMove(book, setStayDays(book, small.weaning, day("2027-02-15"), day("2027-04-01"))) ==
          "27-046-A/01: it would leave no day for the stay before, which begins on 2027-02-15");
    perform(book, {Discard{small.struck, when, {}, "rot"}});
    CHECK(refusedMove(book, moveContainers(book, {small.struck, when, small.cool, column({1}, 0, 0)})) ==
          "27-046-A: nothing stands in it any more");
}

TEST_CASE("Numbers of containers are read and written as ranges") {
    CHECK(containerNumbers({7, 1, 2, 3, 9, 10, 2}) == "1-3, 7, 9, 10");
    CHECK(containerNumbers({}).empty());
    CHECK(*readContainerNumbers(" 7, 1 - 3,2 ") == std::vector{1, 2, 3, 7});
    CHECK(readContainerNumbers("").refusal().text() ==
          "containers: no number was found; expected such as 1-4, 7");
    for (const char* wrong : {"1,", "x", "3-1", "0", "1-2-3", "-", "100001"})
        CHECK_FALSE(readContainerNumbers(wrong));
}
