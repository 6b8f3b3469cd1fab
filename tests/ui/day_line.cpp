#include "ui/dayline/day_line.h"

#include "core/book/query.h"
#include "tests/support/small_nursery.h"

#include <catch2/catch.hpp>

#include <QAccessible>
#include <QSignalSpy>
#include <QTest>

using namespace warmbench;
using namespace warmbench::ui;

namespace {

struct ShownLine {
    HouseBook book = tests::smallNursery();
    Day today = tests::smallNurseryToday();
    TypeSizes type = typeSizes(QFont());
    Wording wording;
    DayLine line{today};

    ShownLine() {
        line.setLook(lightPalette(), type, wording);
        line.setSource([this](Day from, Day to) { return slotLoad(book, from, to); });
        line.resize(900, 132);
        line.show();
        line.setFocus();
    }
    Day press(Qt::Key key) {
        QTest::keyClick(&line, key);
        return line.day();
    }
};

} // namespace

TEST_CASE("Keys move the day line by a day, a week, and back to today") {
    ShownLine shown;
    const QSignalSpy changes(&shown.line, &DayLine::dayChanged);
    CHECK(shown.press(Qt::Key_Right) == shown.today + 1);
    CHECK(shown.press(Qt::Key_PageDown) == shown.today + 8);
    CHECK(shown.press(Qt::Key_PageUp) == shown.today + 1);
    CHECK(shown.press(Qt::Key_Left) == shown.today);
    CHECK(shown.press(Qt::Key_Left) == shown.today - 1);
    CHECK(shown.press(Qt::Key_Home) == shown.today);
    CHECK(shown.press(Qt::Key_Home) == shown.today);
    CHECK(changes.count() == 6);
}

TEST_CASE("The handle follows the mouse, and every day has a place of its own") {
    ShownLine shown;
    for (int ahead = -20; ahead < 80; ++ahead)
        CHECK(shown.line.dayAt(shown.line.xOf(shown.today + ahead)) == shown.today + ahead);
    const auto at = [&](int ahead) {
        return QPoint(static_cast<int>(shown.line.xOf(shown.today + ahead)), 60);
    };
    QTest::mousePress(&shown.line, Qt::LeftButton, {}, at(10));
    CHECK(shown.line.day() == shown.today + 10);
    QTest::mouseMove(&shown.line, at(20));
    QTest::mouseRelease(&shown.line, Qt::LeftButton, {}, at(20));
    CHECK(shown.line.day() == shown.today + 20);
}

TEST_CASE("The line moves on when the handle nears its end, and goes on showing the book") {
    ShownLine shown;
    for (int week = 0; week < 40; ++week) {
        const Day day = shown.press(Qt::Key_PageDown);
        CHECK(shown.line.load().from <= day);
        CHECK(day < shown.line.load().from + shown.line.load().days());
    }
    shown.line.setDay(shown.today - 30);
    int taken = 0;
    for (const auto& [id, zone] : shown.book.all<Zone>())
        taken += slotsTaken(shown.book, id, shown.today - 30);
    CHECK(shown.line.load().taken(shown.today - 30) == taken);
}

TEST_CASE("Space plays the days and stops them") {
    ShownLine shown;
    shown.press(Qt::Key_Space);
    CHECK(shown.line.isPlaying());
    CHECK(QTest::qWaitFor([&] { return shown.line.day() > shown.today; }, 5000));
    shown.press(Qt::Key_Space);
    CHECK(!shown.line.isPlaying());
}

TEST_CASE("The fullest day shown has as many slots taken as any") {
    ShownLine shown;
    REQUIRE(shown.line.fullest());
    const SlotLoad& load = shown.line.load();
    for (int i = 0; i < load.days(); ++i)
        CHECK(load.taken(load.from + i) <= load.taken(*shown.line.fullest()));
}

TEST_CASE("Assistive programs see a slider whose value is the day in words") {
    ShownLine shown;
    QAccessibleInterface* line = QAccessible::queryAccessibleInterface(&shown.line);
    REQUIRE(line);
    CHECK(line->role() == QAccessible::Slider);
    CHECK(line->text(QAccessible::Value) ==
          QStringLiteral("Thursday 4 February 2027, 451 of 826 slots taken"));
    QAccessibleValueInterface* value = line->valueInterface();
    REQUIRE(value);
    value->setCurrentValue((shown.today + 3).number());
    CHECK(shown.line.day() == shown.today + 3);
}
