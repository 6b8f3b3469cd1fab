#include "ui/map/bench_map.h"

#include "tests/support/small_nursery.h"

#include <catch2/catch.hpp>

#include <QAccessible>
#include <QApplication>
#include <QNativeGestureEvent>
#include <QPointingDevice>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>

#include <cmath>
#include <memory>
#include <utility>

using namespace warmbench;
using namespace warmbench::ui;

namespace {

/// The map of the small nursery, shown at 900 by 700.
struct ShownMap {
    TypeSizes type = typeSizes(QFont());
    Wording wording;
    BenchMap map;

    ShownMap() {
        const HouseBook book = tests::smallNursery();
        map.setLook(lightPalette(), type, wording);
        map.resize(900, 700);
        map.showScene(mapScene(book, tests::smallNurseryToday(), Letters(book)));
        map.show();
        map.setFocus();
    }
    [[nodiscard]] QPoint middleOf(const Selection& selection) const {
        return map.mapLayout().extent(map.scene(), selection).center() + map.origin();
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(&map, key, modifiers); }
    void click(QPoint at) { QTest::mouseClick(map.viewport(), Qt::LeftButton, {}, at); }
    [[nodiscard]] const SceneZone& zone(int index) const {
        return map.scene().zones[static_cast<std::size_t>(index)];
    }
    [[nodiscard]] const SceneStay& stay(int index) const {
        return map.scene().stays[static_cast<std::size_t>(index)];
    }
};

} // namespace

TEST_CASE("Two fingers on a touch pad zoom the map about the place between them") {
    ShownMap shown;
    const Selection zone{shown.zone(0).id};
    const QRect before = shown.map.mapLayout().extent(shown.map.scene(), zone);
    const QPointF about = shown.middleOf(zone);
    const QPointF global = shown.map.viewport()->mapToGlobal(about);
    QNativeGestureEvent spread(Qt::ZoomNativeGesture, QPointingDevice::primaryPointingDevice(), 2, about,
                               about, global, 0.5, {});
    QApplication::sendEvent(shown.map.viewport(), &spread);
    const QRect after = shown.map.mapLayout().extent(shown.map.scene(), zone);
    CHECK(after.width() == Approx(1.5 * before.width()).epsilon(0.02));
    // The ends of scrolling may hold it back by a few dots.
    CHECK(std::hypot(shown.middleOf(zone).x() - about.x(), shown.middleOf(zone).y() - about.y()) < 20);
}

TEST_CASE("Two fingers on a touch screen zoom the map") {
    ShownMap shown;
    const Selection zone{shown.zone(0).id};
    const int before = shown.map.mapLayout().extent(shown.map.scene(), zone).width();
    static const std::unique_ptr<QPointingDevice> screen(QTest::createTouchDevice());
    const QPoint middle = shown.map.viewport()->rect().center();
    QWidget* viewport = shown.map.viewport();
    const auto at = [&](int apart) {
        return std::pair(middle - QPoint(apart, 0), middle + QPoint(apart, 0));
    };
    QTest::touchEvent(viewport, screen.get()).press(0, at(60).first).press(1, at(60).second);
    for (int apart = 70; apart <= 120; apart += 10)
        QTest::touchEvent(viewport, screen.get()).move(0, at(apart).first).move(1, at(apart).second);
    QTest::touchEvent(viewport, screen.get()).release(0, at(120).first).release(1, at(120).second);
    CHECK(shown.map.mapLayout().extent(shown.map.scene(), zone).width() > before * 5 / 4);
}

TEST_CASE("A click chooses the batch under it, the zone where no batch stands, nothing beside the benches") {
    ShownMap shown;
    const QSignalSpy changes(&shown.map, &BenchMap::selectionChanged);
    const SceneStay& stay = shown.stay(0);
    const SlotRect& rect = stay.patch[static_cast<std::size_t>(stay.labelRect)];
    shown.click(shown.map.mapLayout().slots(shown.map.scene(), stay.zone, rect).center() +
                shown.map.origin());
    CHECK(shown.map.selection() == Selection{stay.batch});
    shown.click(shown.map.mapLayout().heading(shown.map.scene(), 1).center() + shown.map.origin());
    CHECK(shown.map.selection() == Selection{shown.zone(1).id});
    shown.click({3, 3});
    CHECK(shown.map.selection() == Selection{});
    CHECK(changes.count() == 3);
}

TEST_CASE("Arrows go from zone to zone as they lie, and stay at the edge of the house") {
    ShownMap shown;
    shown.press(Qt::Key_Right);
    CHECK(shown.map.selection() == Selection{shown.zone(0).id});
    shown.press(Qt::Key_Right);
    CHECK(shown.map.selection() == Selection{shown.zone(1).id});
    shown.press(Qt::Key_Down);
    CHECK(shown.map.selection() == Selection{shown.zone(4).id});
    shown.press(Qt::Key_Up);
    shown.press(Qt::Key_Left);
    shown.press(Qt::Key_Left);
    CHECK(shown.map.selection() == Selection{shown.zone(0).id});
}

TEST_CASE("Enter goes from a zone to its batches, arrows from batch to batch, Escape back out") {
    ShownMap shown;
    shown.press(Qt::Key_Right);
    shown.press(Qt::Key_Return);
    const auto* first = std::get_if<BatchId>(&shown.map.selection());
    REQUIRE(first);
    const BatchId batch = *first;
    CHECK(shown.map.scene().find(batch)->zone == 0);
    shown.press(Qt::Key_Right);
    CHECK(std::holds_alternative<BatchId>(shown.map.selection()));
    CHECK(shown.map.selection() != Selection{batch});
    shown.press(Qt::Key_Escape);
    CHECK(std::holds_alternative<ZoneId>(shown.map.selection()));
    shown.press(Qt::Key_Escape);
    CHECK(shown.map.selection() == Selection{});
}

TEST_CASE("Every zone and batch can be reached with the arrows alone") {
    ShownMap shown;
    shown.press(Qt::Key_Right);
    std::set<ZoneId> seen{std::get<ZoneId>(shown.map.selection())};
    for (const Qt::Key row : {Qt::Key_Right, Qt::Key_Left, Qt::Key_Right})
        for (const Qt::Key key : {row, row, row, Qt::Key_Down}) {
            shown.press(key);
            seen.insert(std::get<ZoneId>(shown.map.selection()));
        }
    CHECK(seen.size() == shown.map.scene().zones.size());
}

TEST_CASE("Zooming keeps what is under the pointer there, fitting shows everything again") {
    ShownMap shown;
    const QPointF about(300, 250);
    const double before = shown.map.mapLayout().scale();
    for (int i = 0; i < 6; ++i) shown.map.zoomBy(1.25, about);
    CHECK(shown.map.mapLayout().scale() > 3 * before);
    const MapHit hit = shown.map.mapLayout().at(shown.map.scene(), about - shown.map.origin());
    shown.map.zoomBy(1.25, about);
    const MapHit after = shown.map.mapLayout().at(shown.map.scene(), about - shown.map.origin());
    CHECK(hit.zone == after.zone);
    CHECK(hit.slot == after.slot);
    shown.press(Qt::Key_0);
    CHECK(shown.map.isFitted());
    CHECK(shown.map.mapLayout().size().width() <= shown.map.viewport()->width());
    CHECK(shown.map.mapLayout().size().height() <= shown.map.viewport()->height());
}

TEST_CASE("Dragging the ground moves the map and chooses nothing") {
    ShownMap shown;
    for (int i = 0; i < 6; ++i) shown.map.zoomIn();
    const int before = shown.map.horizontalScrollBar()->value();
    QTest::mousePress(shown.map.viewport(), Qt::LeftButton, {}, {400, 300});
    for (int x = 390; x >= 300; x -= 30) QTest::mouseMove(shown.map.viewport(), {x, 300});
    QTest::mouseRelease(shown.map.viewport(), Qt::LeftButton, {}, {300, 300});
    CHECK(shown.map.horizontalScrollBar()->value() - before == 100);
    CHECK(shown.map.selection() == Selection{});
}

TEST_CASE("Assistive programs find every zone and every batch in it, named by what they hold") {
    ShownMap shown;
    QAccessibleInterface* map = QAccessible::queryAccessibleInterface(&shown.map);
    REQUIRE(map);
    CHECK(map->text(QAccessible::Name) == QStringLiteral("Bench map"));
    REQUIRE(map->childCount() == 8);
    int batches = 0;
    for (int i = 0; i < map->childCount(); ++i) {
        QAccessibleInterface* zone = map->child(i);
        CHECK(map->indexOfChild(zone) == i);
        CHECK(zone->parent() == map);
        CHECK(zone->childCount() == shown.zone(i).endStay - shown.zone(i).firstStay);
        for (int j = 0; j < zone->childCount(); ++j) {
            CHECK(zone->child(j)->parent() == zone);
            CHECK(zone->child(j)
                      ->text(QAccessible::Name)
                      .contains(shown.stay(shown.zone(i).firstStay + j).code));
            CHECK(zone->rect().contains(zone->child(j)->rect()));
            ++batches;
        }
    }
    CHECK(batches == static_cast<int>(shown.map.scene().stays.size()));
    CHECK(map->child(0)
              ->text(QAccessible::Name)
              .startsWith(QStringLiteral("Zone A, 18\u00A0°C under mist, 60 of 96 slots taken")));
    CHECK(!map->child(1)->state().selected);
    shown.map.select(shown.zone(1).id);
    CHECK(map->child(1)->state().selected);
}
