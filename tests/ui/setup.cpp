#include "tests/ui/window.h"

#include "core/book/query.h"
#include "core/book/rules.h"
#include "ui/setup/house_plan.h"
#include "ui/setup/refit_words.h"
#include "ui/shell/facts.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>

using namespace warmbench;
using namespace warmbench::tests;
using namespace warmbench::ui;

namespace {

/// The nursery's place with a zone chosen in which something stands.
struct WindowWithPlan : OpenWindow {
    const HouseBook& book = window.session()->book();
    HousePlan* plan;
    ZoneId zone;

    WindowWithPlan() {
        child<QAction>("setup")->trigger();
        plan = child<HousePlan>("housePlan");
        for (const auto& [id, one] : book.all<Zone>())
            if (slotsTaken(book, id, smallNurseryToday()) > 0) zone = id;
        chooseInList(QStringLiteral("%1, ").arg(text(book.get<Zone>(zone).name)),
                     text(book.get<Bench>(book.get<Zone>(zone).bench).name));
        QApplication::processEvents();
    }
    void chooseInList(const QString& words, const QString& under) {
        auto* list = child<QTreeWidget>("setupList");
        for (QTreeWidgetItem* item : list->findItems(words, Qt::MatchStartsWith | Qt::MatchRecursive))
            if (item->parent() && item->parent()->text(0) == under) list->setCurrentItem(item);
    }
    [[nodiscard]] QPoint at(const PlanThing& thing, double right, double front) const {
        const QRectF rect = planRect(book, thing);
        return plan->onWidget(QPointF(rect.left() + right * rect.width(), rect.top() + front * rect.height()))
            .toPoint();
    }
    void drag(QPoint from, QPoint to) {
        QTest::mousePress(plan, Qt::LeftButton, {}, from);
        QTest::mouseMove(plan, (from + to) / 2);
        QMouseEvent move(QEvent::MouseMove, to, plan->mapToGlobal(to), Qt::NoButton, Qt::LeftButton, {});
        QApplication::sendEvent(plan, &move);
        QTest::mouseRelease(plan, Qt::LeftButton, {}, to);
    }
    /// Answers the dialog that opens meanwhile, and keeps what it told.
    QStringList told;
    void answer(const char* button) {
        QTimer::singleShot(0, [this, button] {
            QWidget* dialog = QApplication::activeModalWidget();
            if (!dialog) return;
            const auto* list = dialog->findChild<QListWidget*>(QStringLiteral("refitWords"));
            for (int row = 0; list && row < list->count(); ++row) told += list->item(row)->text();
            dialog->findChild<QPushButton*>(QLatin1String(button))->click();
        });
    }
};

int placesOn(const HouseBook& book, Day day) {
    int places = 0;
    for (const auto& [id, stay] : book.all<Stay>())
        if (stay.from <= day && day < stay.to) places += static_cast<int>(stay.places.size());
    return places;
}

} // namespace

TEST_CASE("A click on what is chosen leaves the new thing that was begun, and shows it again") {
    WindowWithPlan open;
    auto* list = open.child<QTreeWidget>("setupList");
    const auto clickChosen = [&] {
        QTest::mouseClick(list->viewport(), Qt::LeftButton, {},
                          list->visualItemRect(list->currentItem()).center());
    };
    open.child<QPushButton>("addHouse")->click();
    CHECK(open.child<QPushButton>("keepThing")->text() == "&Add it");
    CHECK_FALSE(open.plan->isVisible());
    clickChosen();
    CHECK(open.child<QPushButton>("keepThing")->text() == "&Keep");
    CHECK(open.plan->isVisible());
}

TEST_CASE("A zone in use is made smaller by its edge: what loses its place is told first, and can be left") {
    WindowWithPlan open;
    const HouseBook before = open.book;
    REQUIRE(open.plan->isVisible());
    open.answer("refitLeave");
    open.drag(open.at(open.zone, 1, 0.5), open.at(open.zone, 0.05, 0.5));
    CHECK(!open.told.isEmpty());
    CHECK(open.book == before);

    open.told.clear();
    open.answer("refitChange");
    open.drag(open.at(open.zone, 1, 0.5), open.at(open.zone, 0.05, 0.5));
    CHECK(open.told.filter(QStringLiteral("waits in the tray; its containers are kept")).size() > 0);
    CHECK(open.book.get<Zone>(open.zone).cols < before.get<Zone>(open.zone).cols);
    CHECK(placesOn(open.book, smallNurseryToday()) < placesOn(before, smallNurseryToday()));
    CHECK(open.book.all<Batch>() == before.all<Batch>());
    CHECK(audit(open.book).empty());
    open.child<QAction>("undo")->trigger();
    CHECK(open.book == before);
}

TEST_CASE("A mat is said to be out of order in its zone's form: what it no longer does is told first") {
    WindowWithPlan open;
    const Day today = smallNurseryToday();
    const ZoneId id = [&] {
        for (const auto& [zone, one] : open.book.all<Zone>())
            if (setPointOn(open.book, zone, today) && setPointOn(open.book, zone, today - 1)) return zone;
        return ZoneId{};
    }();
    REQUIRE(id != ZoneId{});
    const Zone zone = open.book.get<Zone>(id);
    open.chooseInList(QStringLiteral("%1, ").arg(text(zone.name)),
                      text(open.book.get<Bench>(zone.bench).name));
    auto* hasMat = open.child<QCheckBox>("zoneHasMat");
    hasMat->setChecked(false);
    open.child<QPushButton>("keepThing")->click();
    CHECK(open.child<QLabel>("setupRefusal")->text().contains("say from which day on it is out of order"));
    hasMat->setChecked(true);
    auto* from = open.child<QDateEdit>("matOutFrom");
    CHECK_FALSE(from->isEnabled());
    open.child<QCheckBox>("matIsOut")->setChecked(true);
    CHECK(from->isEnabled());
    CHECK(from->date() == qDate(today));
    open.answer("refitChange");
    open.child<QPushButton>("keepThing")->click();
    CHECK(open.told.filter(QStringLiteral("no longer runs at")).size() == 1);
    CHECK(open.book.get<Zone>(id).mat->outOfOrderFrom == today);
    CHECK(setPointOn(open.book, id, today - 1));
    CHECK_FALSE(setPointOn(open.book, id, today));
    CHECK(audit(open.book).empty());
    // The form shows it as it is, and the zone's facts say it.
    CHECK(open.child<QCheckBox>("matIsOut")->isChecked());
    bool isSaid = false;
    for (const Fact& fact : zoneFacts(open.book, id, today, {}, Wording(), today).facts)
        isSaid = isSaid || fact.html.contains(QStringLiteral("out of order since"));
    CHECK(isSaid);
    open.child<QCheckBox>("matIsOut")->setChecked(false);
    open.child<QPushButton>("keepThing")->click();
    CHECK_FALSE(open.book.get<Zone>(id).mat->outOfOrderFrom);
}

TEST_CASE("The same by numbers asks the same") {
    WindowWithPlan open;
    const HouseBook before = open.book;
    open.child<QSpinBox>("zoneCols")->setValue(1);
    open.answer("refitChange");
    open.child<QPushButton>("keepThing")->click();
    CHECK(!open.told.isEmpty());
    CHECK(open.book.get<Zone>(open.zone).cols == 1);
    CHECK(open.book.all<Batch>() == before.all<Batch>());
}

TEST_CASE("By keys alone a zone is made smaller: arrows draw it, Escape leaves it, Enter asks for it") {
    WindowWithPlan open;
    const HouseBook before = open.book;
    open.plan->setFocus();
    QTest::keyClick(open.plan, Qt::Key_Left, Qt::ShiftModifier);
    REQUIRE(open.plan->drawn());
    CHECK(open.child<QLabel>("planWords")->text().contains(QStringLiteral("Enter keeps it so")));
    QTest::keyClick(open.plan, Qt::Key_Escape);
    CHECK(!open.plan->drawn());
    CHECK(open.book == before);
    QTest::keyClick(open.plan, Qt::Key_Left, Qt::ShiftModifier);
    open.answer("refitChange");
    QTest::keyClick(open.plan, Qt::Key_Return);
    CHECK(open.book.get<Zone>(open.zone).cols == before.get<Zone>(open.zone).cols - 1);
}

TEST_CASE("Slots are blocked with the mouse, by keys and by numbers; what stands there is told first") {
    WindowWithPlan open;
    const HouseBook before = open.book;
    const Zone& zone = before.get<Zone>(open.zone);
    const auto centre = [&](Slot slot) {
        return open.at(open.zone, (slot.col + 0.5) / zone.cols, (slot.row + 0.5) / zone.rows);
    };
    const auto blocked = [&]() -> const std::vector<Slot>& { return open.book.get<Zone>(open.zone).blocked; };
    std::vector<Slot> free;
    for (int row = 0; row < zone.rows; ++row)
        for (int col = 0; col < zone.cols; ++col) {
            bool taken = std::count(zone.blocked.begin(), zone.blocked.end(), Slot{row, col}) > 0;
            for (const StayId id : before.staysIn(open.zone))
                for (const warmbench::Place& place : before.get<Stay>(id).places)
                    taken = taken || place.slots.covers({row, col});
            if (!taken) free.push_back({row, col});
        }
    REQUIRE(free.size() >= 2);
    open.child<QPushButton>("blockSlots")->click();
    QTest::mouseClick(open.plan, Qt::LeftButton, {}, centre(free.back()));
    CHECK(blocked().size() == zone.blocked.size() + 1);
    CHECK(std::count(blocked().begin(), blocked().end(), free.back()) == 1);
    CHECK(open.plan->tool() == HousePlan::Tool::BlockSlots);
    QTest::mouseClick(open.plan, Qt::LeftButton, {}, centre(free.back()));
    CHECK(open.book == before);

    // By keys: to the first free slot, Space, Enter.
    open.child<QPushButton>("blockSlots")->click();
    open.child<QPushButton>("blockSlots")->click();
    open.plan->setFocus();
    for (int i = 0; i < free.front().row; ++i) QTest::keyClick(open.plan, Qt::Key_Down);
    for (int i = 0; i < free.front().col; ++i) QTest::keyClick(open.plan, Qt::Key_Right);
    QTest::keyClick(open.plan, Qt::Key_Space);
    CHECK(open.child<QLabel>("planWords")->text().contains(QStringLiteral("is blocked")));
    QTest::keyClick(open.plan, Qt::Key_Return);
    CHECK(std::count(blocked().begin(), blocked().end(), free.front()) == 1);
    QTest::keyClick(open.plan, Qt::Key_Escape);
    CHECK(open.plan->tool() == HousePlan::Tool::Choose);

    // By numbers, over what stands there.
    const auto standing = open.book.staysMeeting(open.zone, smallNurseryToday(), smallNurseryToday() + 1);
    REQUIRE(!standing.empty());
    const Stay& stay = open.book.get<Stay>(*standing.begin());
    const Slot taken{stay.places.front().slots.row, stay.places.front().slots.col};
    auto* field = open.child<QLineEdit>("zoneBlocked");
    field->setText(QStringLiteral("1 by 3"));
    open.child<QPushButton>("keepThing")->click();
    CHECK(open.child<QLabel>("setupRefusal")->text().contains(QStringLiteral("expected row/column")));
    field->setText(QStringLiteral("%1/%2").arg(taken.row + 1).arg(taken.col + 1));
    open.answer("refitChange");
    open.child<QPushButton>("keepThing")->click();
    CHECK(!open.told.isEmpty());
    CHECK(blocked() == std::vector<Slot>{taken});
    CHECK(audit(open.book).empty());
}

TEST_CASE("A bench is drawn on the floor and a zone on it, with the mouse") {
    WindowWithPlan open;
    open.window.setSession(std::make_unique<MemorySession>(HouseBook(), QStringLiteral("new")));
    open.child<QAction>("setup")->trigger();
    const HouseBook& book = open.window.session()->book();
    open.child<QPushButton>("addHouse")->click();
    open.child<QPushButton>("keepThing")->click();
    REQUIRE(book.all<House>().size() == 1);
    QApplication::processEvents();
    const HouseId house = book.all<House>().begin()->first;
    const auto inHouse = [&](double right, double front) {
        const QRectF rect = planRect(book.get<House>(house));
        return open.plan->onWidget(QPointF(right * rect.width(), front * rect.height())).toPoint();
    };
    open.child<QPushButton>("drawBench")->click();
    open.drag(inHouse(0.1, 0.1), inHouse(0.9, 0.4));
    REQUIRE(book.all<Bench>().size() == 1);
    const Bench& bench = book.all<Bench>().begin()->second;
    CHECK(bench.cols > 1);
    CHECK(!open.child<QPushButton>("drawBench")->isChecked());
    open.child<QPushButton>("drawZone")->click();
    const QRectF on = planRect(bench);
    const auto slotCentre = [&](int row, int col) {
        const double slot = static_cast<double>(bench.slot.parts);
        return open.plan->onWidget(on.topLeft() + QPointF((col + 0.5) * slot, (row + 0.5) * slot)).toPoint();
    };
    open.drag(slotCentre(0, 1), slotCentre(bench.rows - 1, 4));
    // Its cover and its mat are asked for before it is put in, as one step.
    REQUIRE(book.all<Zone>().empty());
    CHECK(open.plan->isVisible());
    CHECK(open.plan->drawn());
    auto* cover = open.child<QComboBox>("zoneCover");
    CHECK(cover->hasFocus());
    // Both are in sight, in a small window too.
    open.window.resize(1280, 720);
    QApplication::processEvents();
    for (const char* asked : {"zoneCover", "zoneHasMat"}) {
        const auto* field = open.child<QWidget>(asked);
        CHECK(field->visibleRegion().boundingRect().size() == field->size());
    }
    cover->setCurrentIndex(static_cast<int>(Cover::Mist));
    open.child<QCheckBox>("zoneHasMat")->setChecked(true);
    open.child<QLineEdit>("matName")->setText(QStringLiteral("Mat 7"));
    open.child<QPushButton>("keepThing")->click();
    REQUIRE(book.all<Zone>().size() == 1);
    const Zone zone = book.all<Zone>().begin()->second;
    CHECK(zone.onBench() == SlotRect{0, 1, bench.rows, 4});
    CHECK(zone.cover == Cover::Mist);
    REQUIRE(zone.mat);
    CHECK(zone.mat->name == "Mat 7");
    open.child<QAction>("undo")->trigger();
    CHECK(book.all<Zone>().empty());
}

TEST_CASE("A zone in which something has stood is not taken away, and the place says why") {
    WindowWithPlan open;
    open.child<QPushButton>("removeThing")->click();
    CHECK(open.child<QLabel>("setupRefusal")->text().contains(QStringLiteral("make the zone smaller")));
}

TEST_CASE("In a full house a new bench is not asked for, and the place says what can be done") {
    WindowWithPlan open;
    open.window.setSession(std::make_unique<MemorySession>(HouseBook(), QStringLiteral("new")));
    open.child<QAction>("setup")->trigger();
    open.child<QPushButton>("addHouse")->click();
    open.child<QDoubleSpinBox>("houseWidth")->setValue(1.5);
    open.child<QPushButton>("keepThing")->click();
    const HouseBook& book = open.window.session()->book();
    for (std::size_t benches = 0; !open.child<QLabel>("setupRefusal")->isVisible(); ++benches) {
        REQUIRE(book.all<Bench>().size() == benches);
        REQUIRE(benches < 50);
        open.child<QPushButton>("addBench")->click();
        if (!open.child<QLabel>("setupRefusal")->isVisible()) open.child<QPushButton>("keepThing")->click();
    }
    CHECK(open.child<QLabel>("setupRefusal")->text().startsWith(QStringLiteral("House 1 is full")));
    CHECK(audit(book).empty());
}
