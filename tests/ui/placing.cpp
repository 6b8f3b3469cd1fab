#include "core/book/query.h"
#include "core/book/whereabouts.h"
#include "tests/ui/window.h"
#include "ui/map/bench_map.h"

#include <catch2/catch.hpp>

#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

#include <private/qguiapplication_p.h>
#include <qpa/qplatformaccessibility.h>
#include <qpa/qplatformintegration.h>

using namespace warmbench;
using namespace warmbench::ui;
using namespace warmbench::tests;

namespace {

/// The window, with what placing by hand needs of it.
struct Hands : OpenWindow {
    BenchMap& map = *child<BenchMap>("benchMap");
    QWidget& bar = *child<QWidget>("placingBar");
    QLabel& words = *child<QLabel>("placingWords");
    QListWidget& tray = *child<QListWidget>("strikeTray");

    [[nodiscard]] const HouseBook& book() const { return window.session()->book(); }
    [[nodiscard]] BatchId batchOf(const char* taxon) const {
        for (const auto& [id, batch] : book().all<Batch>())
            if (book().get<Taxon>(batch.taxon).name == taxon) return id;
        throw std::logic_error("no such taxon");
    }
    void press(int key) { QTest::keyClick(&map, static_cast<Qt::Key>(key)); }
    [[nodiscard]] int zoneNamed(const char* name) const {
        int index = 0;
        while (map.scene().zones[nth(index)].name != QLatin1String(name)) ++index;
        return index;
    }
    /// A slot of a zone in the viewport of the map.
    [[nodiscard]] QPoint slot(const char* zone, int row, int col) const {
        return map.mapLayout().slots(map.scene(), zoneNamed(zone), {row, col, 1, 1}).center() + map.origin();
    }
    [[nodiscard]] QPoint potOf(BatchId batch) const {
        const SceneStay& stay = *map.scene().find(batch);
        return map.mapLayout()
                   .slots(map.scene(), stay.zone, map.scene().pots[nth(stay.firstPot)].slots)
                   .center() +
               map.origin();
    }
    void drag(QPoint from, QPoint to) {
        QTest::mousePress(map.viewport(), Qt::LeftButton, {}, from);
        QTest::mouseMove(map.viewport(), from + QPoint(20, 8));
        QTest::mouseMove(map.viewport(), to - QPoint(2, 2));
        QTest::mouseMove(map.viewport(), to);
    }
    void drop(QPoint at) { QTest::mouseRelease(map.viewport(), Qt::LeftButton, {}, at); }
    [[nodiscard]] std::string zoneNameOf(BatchId batch, int container, Day day) const {
        const Stay* stay = stayOf(book(), batch, container, day);
        return stay ? book().get<Zone>(stay->zone).name : "none";
    }
};

} // namespace

TEST_CASE("A planned batch is taken up, aimed and put down by keys alone, as one step of undo") {
    Hands hands;
    const HouseBook before = hands.book();
    const BatchId batch = hands.batchOf("Ribes sanguineum");
    CHECK(hands.book().staysOf(batch).empty());
    CHECK(!hands.bar.isVisible());
    hands.window.choose(batch);
    hands.map.setFocus();
    hands.press(Qt::Key_Space);
    REQUIRE(hands.bar.isVisible());
    CHECK(hands.child<QLabel>("placingTitle")->text().contains(QStringLiteral("all 30 pots")));
    hands.press(Qt::Key_Tab);
    CHECK(hands.words.text().contains(QStringLiteral("suits")));
    CHECK(hands.words.text().contains(QStringLiteral("Ready on")));
    CHECK(hands.words.text().contains(QStringLiteral("Cost by the planner")));
    hands.press(Qt::Key_Right);
    hands.press(Qt::Key_Return);
    CHECK(!hands.bar.isVisible());
    const auto stays = staysInOrder(hands.book(), batch);
    REQUIRE(stays.size() == 1);
    CHECK(stays.front()->places.size() == 30);
    CHECK(stays.front()->from == hands.book().get<Batch>(batch).strikeDay);
    auto* undo = hands.child<QAction>("undo");
    CHECK(undo->text().contains(QStringLiteral("Give")));
    undo->trigger();
    CHECK(hands.book() == before);
    CHECK(!undo->isEnabled());
    hands.child<QAction>("redo")->trigger();
    CHECK(hands.book().staysOf(batch).size() == 1);
}

TEST_CASE("Escape puts back what is carried, and nothing has changed") {
    Hands hands;
    const HouseBook before = hands.book();
    hands.window.choose(hands.batchOf("Ribes sanguineum"));
    hands.map.setFocus();
    hands.press(Qt::Key_M);
    hands.press(Qt::Key_Tab);
    hands.press(Qt::Key_Escape);
    CHECK(!hands.bar.isVisible());
    hands.press(Qt::Key_Return);
    CHECK(hands.book() == before);
}

TEST_CASE("A zone that does not suit says why, and takes nothing") {
    Hands hands;
    const HouseBook before = hands.book();
    const BatchId batch = hands.batchOf("Ribes sanguineum"); // hardwood in the open, at 12 °C
    hands.window.choose(batch);
    hands.child<QAction>("moveBatch")->trigger();
    REQUIRE(hands.bar.isVisible());
    QTest::mouseMove(hands.map.viewport(), hands.slot("A", 1, 1));
    QTest::mouseClick(hands.map.viewport(), Qt::LeftButton, {}, hands.slot("A", 1, 1));
    CHECK(hands.words.text().contains(QStringLiteral("does not suit")));
    CHECK(hands.words.text().contains(QStringLiteral("under mist")));
    CHECK(!hands.child<QPushButton>("placingPlace")->isEnabled());
    hands.press(Qt::Key_Return);
    CHECK(hands.book() == before);
    CHECK(hands.bar.isVisible());
}

TEST_CASE("Struck cuttings that are dragged ask before they move") {
    Hands hands;
    const HouseBook before = hands.book();
    const BatchId batch = hands.batchOf("Myrtus communis"); // in H, under mist at 15 °C
    const QPoint from = hands.potOf(batch);
    const QPoint to = hands.slot("H", 1, 11);
    const Day today = hands.window.day();
    hands.drag(from, to);
    REQUIRE(hands.bar.isVisible());
    CHECK(hands.window.selection() == Selection{batch});
    INFO(hands.words.text().toStdString());
    INFO(to.x() << ' ' << to.y() << " now " << hands.slot("H", 1, 11).x() << ' '
                << hands.slot("H", 1, 11).y());
    CHECK(hands.words.text().contains(QStringLiteral("suits")));
    hands.drop(to);
    REQUIRE(hands.bar.isVisible());
    CHECK(hands.words.text().contains(QStringLiteral("have been struck")));
    CHECK(hands.book() == before);
    hands.child<QPushButton>("placingBack")->click();
    CHECK(hands.book() == before);
    CHECK(hands.bar.isVisible());
    hands.press(Qt::Key_Return);
    hands.press(Qt::Key_Return);
    CHECK(!hands.bar.isVisible());
    CHECK(!(hands.book() == before));
    CHECK(stayOf(hands.book(), batch, 1, today)->from == today);
    CHECK(stayOf(hands.book(), batch, 1, today - 1)->to == today);
    hands.child<QAction>("undo")->trigger();
    CHECK(hands.book() == before);
}

TEST_CASE("Containers are picked by their numbers, and a batch is split and joined again") {
    Hands hands;
    const BatchId batch = hands.batchOf("Myrtus communis");
    const Day today = hands.window.day();
    hands.window.choose(batch);
    hands.map.setFocus();
    hands.press(Qt::Key_Space);
    auto* numbers = hands.child<QLineEdit>("placingContainers");
    CHECK(numbers->text() == QStringLiteral("1-52"));
    numbers->setText(QStringLiteral("99"));
    QTest::keyClick(numbers, Qt::Key_Return);
    CHECK(hands.words.text().contains(QStringLiteral("nothing stands in container 99")));
    numbers->setText(QStringLiteral("1-4, 7"));
    QTest::keyClick(numbers, Qt::Key_Return);
    CHECK(hands.child<QLabel>("placingTitle")->text().contains(QStringLiteral("5 pots, number 1-4, 7")));
    hands.press(Qt::Key_Tab);
    // To another zone than that in which the others stand.
    const std::string home = hands.zoneNameOf(batch, 5, today);
    for (int i = 0; i < 8 && hands.words.text().contains(QString::fromStdString("· " + home + " suits")); ++i)
        hands.press(Qt::Key_Tab);
    hands.press(Qt::Key_Return);
    hands.press(Qt::Key_Return);
    CHECK(staysOn(hands.book(), batch, today).size() == 2);
    CHECK(hands.zoneNameOf(batch, 7, today) != home);
    CHECK(hands.zoneNameOf(batch, 5, today) == home);
    CHECK(zonesOn(hands.book(), batch, today).size() == 2);
}

TEST_CASE("A card of the tray is dragged onto the map with the mouse") {
    Hands hands;
    const BatchId batch = hands.batchOf("Buddleja globosa"); // wants a tent at 18 °C
    int row = 0;
    while (hands.tray.item(row)->data(Qt::UserRole).toLongLong() != batch.number) ++row;
    QWidget* list = hands.tray.viewport();
    hands.tray.scrollToItem(hands.tray.item(row));
    const QPoint card = hands.tray.visualItemRect(hands.tray.item(row)).center();
    const auto inTray = [&](QPoint onMap) {
        return list->mapFromGlobal(hands.map.viewport()->mapToGlobal(onMap));
    };
    QTest::mousePress(list, Qt::LeftButton, {}, card);
    QTest::mouseMove(list, card + QPoint(20, 5));
    REQUIRE(hands.bar.isVisible());
    QTest::mouseMove(list, inTray(hands.slot("A", 2, 2)));
    CHECK(hands.words.text().contains(QStringLiteral("does not suit")));
    // Let go where it can't stand it is put back.
    QTest::mouseRelease(list, Qt::LeftButton, {}, inTray(hands.slot("A", 2, 2)));
    CHECK(!hands.bar.isVisible());
    CHECK(hands.book().staysOf(batch).empty());
}

TEST_CASE("Assistive programs find in the bar what is carried and what is aimed at") {
    Hands hands;
    hands.window.choose(hands.batchOf("Ribes sanguineum"));
    hands.map.setFocus();
    hands.press(Qt::Key_Space);
    hands.press(Qt::Key_Tab);
    CHECK(hands.words.accessibleName().contains(QStringLiteral("Ribes sanguineum")));
    CHECK(hands.words.accessibleName().contains(QStringLiteral("suits")));
    CHECK(hands.window.focusWidget() == &hands.map);
}

namespace {

/// What assistive programs are told while it lives, one alert after the other, in words.
class Alerts {
public:
    Alerts() : m_before(QAccessible::installUpdateHandler(hear)) {
        heard().clear();
        platform().setActive(true);
    }
    Alerts(const Alerts&) = delete;
    Alerts& operator=(const Alerts&) = delete;
    ~Alerts() {
        QAccessible::installUpdateHandler(m_before);
        platform().setActive(false);
    }
    /// The last one; empty where there was none since it was asked for.
    [[nodiscard]] QString takeLast() {
        const QString last = heard().isEmpty() ? QString() : heard().last();
        heard().clear();
        return last;
    }

private:
    /// What a running screen reader would switch on.
    static QPlatformAccessibility& platform() {
        return *QGuiApplicationPrivate::platformIntegration()->accessibility();
    }
    static QStringList& heard() {
        static QStringList words;
        return words;
    }
    static void hear(QAccessibleEvent* event) {
        if (event->type() == QAccessible::Alert)
            heard() += event->accessibleInterface()->text(QAccessible::Name);
    }
    QAccessible::UpdateHandler m_before;
};

} // namespace

TEST_CASE("Assistive programs are told of each step of placing by hand as it is done") {
    Hands hands;
    hands.window.choose(hands.batchOf("Ribes sanguineum"));
    hands.map.setFocus();
    Alerts alerts;
    hands.press(Qt::Key_Space);
    CHECK(alerts.takeLast().contains(QStringLiteral("Ribes sanguineum")));
    hands.press(Qt::Key_Tab);
    const QString first = alerts.takeLast();
    CHECK(first.contains(QStringLiteral("suits")));
    hands.press(Qt::Key_Tab);
    const QString second = alerts.takeLast();
    CHECK(!second.isEmpty());
    CHECK(second != first);
    hands.press(Qt::Key_Return);
    CHECK(!hands.bar.isVisible());
    CHECK(!hands.book().staysOf(hands.batchOf("Ribes sanguineum")).empty());
    // What has been struck asks first, and that is told too.
    const BatchId struck = hands.map.scene().stays.front().batch;
    hands.window.choose(struck);
    hands.map.setFocus();
    hands.press(Qt::Key_Space);
    hands.press(Qt::Key_Tab);
    (void)alerts.takeLast();
    hands.press(Qt::Key_Return);
    CHECK(alerts.takeLast().contains(QStringLiteral("struck")));
    hands.press(Qt::Key_Escape);
}
