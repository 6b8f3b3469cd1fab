#include "tests/ui/window.h"
#include "ui/dayline/day_line.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QLabel>
#include <QTest>
#include <QTextBrowser>
#include <QTreeWidget>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

int plannedUntil(const HouseBook& book, Day day) {
    int count = 0;
    for (const auto& [id, batch] : book.all<Batch>())
        count += batch.state == BatchState::Planned && batch.strikeDay <= day ? 1 : 0;
    return count;
}

} // namespace

TEST_CASE("Enter on the day's list strikes what was left from days before, and undo brings it back") {
    OpenWindow open;
    const HouseBook& book = open.window.session()->book();
    const Day today = smallNurseryToday();
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.state == BatchState::Planned) {
            REQUIRE_FALSE(open.window.session()->perform(Command{PlanBatch{id, today - 2, {}}}).has_value());
            break;
        }
    const int planned = plannedUntil(book, today);
    open.child<QAction>("dayWork")->trigger();
    auto* list = open.child<QTreeWidget>("todayList");
    REQUIRE(planned > 0);
    REQUIRE(list->topLevelItemCount() >= planned);
    CHECK(open.child<QTextBrowser>("todayNotes")->toPlainText().contains("To take"));
    list->setCurrentItem(list->topLevelItem(list->topLevelItemCount() - 1));
    CHECK_FALSE(open.child<QWidget>("todaySlots")->isVisible()); // the round is all over the house
    list->setCurrentItem(list->topLevelItem(0));
    QTest::keyClick(list, Qt::Key_Return);
    CHECK(plannedUntil(book, today) == planned - 1);
    open.child<QAction>("undo")->trigger();
    CHECK(plannedUntil(book, today) == planned);
}

TEST_CASE("A day to come is shown with its work, of which nothing can be done yet") {
    OpenWindow open;
    const HouseBook& book = open.window.session()->book();
    Day last = smallNurseryToday();
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.state == BatchState::Planned) last = std::max(last, batch.strikeDay);
    REQUIRE(last > smallNurseryToday());
    open.child<ui::DayLine>("dayLine")->setDay(last);
    open.child<QAction>("dayWork")->trigger();
    auto* list = open.child<QTreeWidget>("todayList");
    const int planned = plannedUntil(book, last);
    REQUIRE(list->topLevelItemCount() >= planned);
    list->setCurrentItem(list->topLevelItem(0));
    QTest::keyClick(list, Qt::Key_Return);
    CHECK(plannedUntil(book, last) == planned);
    CHECK(open.child<QLabel>("todayRefusal")->text().contains("still to come"));
}
