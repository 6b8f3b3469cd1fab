#include "tests/ui/menu_pictures.h"

#include "core/book/query.h"
#include "tests/ui/window.h"
#include "ui/setup/house_plan.h"

#include <QAction>
#include <QApplication>
#include <QContextMenuEvent>
#include <QLineEdit>
#include <QMenu>
#include <QMouseEvent>
#include <QPainter>
#include <QPushButton>
#include <QTest>

namespace warmbench::tests {
namespace {

void save(OpenWindow& open, const QString& file) {
    QApplication::processEvents();
    QPixmap picture = open.window.grab();
    // A menu is a window of its own.
    if (QWidget* menu = QApplication::activePopupWidget())
        QPainter(&picture).drawPixmap(open.window.mapFromGlobal(menu->pos()), menu->grab());
    if (!picture.save(file)) std::fprintf(stderr, "ui_pictures: %s cannot be written\n", qPrintable(file));
}

void writeBatchMenu(OpenWindow& open, const QString& file) {
    auto* map = open.child<ui::BenchMap>("benchMap");
    const QRect patch =
        map->mapLayout().extent(map->scene(), ui::Selection{map->scene().stays.front().batch});
    const QPoint at = patch.center() + map->origin();
    QContextMenuEvent event(QContextMenuEvent::Mouse, at, map->viewport()->mapToGlobal(at));
    QApplication::sendEvent(map->viewport(), &event);
    save(open, file);
    if (QWidget* menu = QApplication::activePopupWidget()) menu->close();
}

void drag(ui::HousePlan& plan, QPointF from, QPointF to) {
    const QPoint at = plan.onWidget(to).toPoint();
    QTest::mousePress(&plan, Qt::LeftButton, {}, plan.onWidget(from).toPoint());
    QMouseEvent move(QEvent::MouseMove, at, plan.mapToGlobal(at), Qt::NoButton, Qt::LeftButton, {});
    QApplication::sendEvent(&plan, &move);
    QTest::mouseRelease(&plan, Qt::LeftButton, {}, at);
}

/// A house, a bench and a zone drawn with the mouse in an empty book, before the zone's cover and mat are
/// said.
void writeDrawnZone(OpenWindow& open, const QString& file) {
    open.window.setSession(std::make_unique<ui::MemorySession>(HouseBook(), QStringLiteral("new")));
    open.child<QAction>("setup")->trigger();
    const HouseBook& book = open.window.session()->book();
    open.child<QPushButton>("addHouse")->click();
    open.child<QPushButton>("keepThing")->click();
    QApplication::processEvents();
    auto& plan = *open.child<ui::HousePlan>("housePlan");
    const QRectF house = ui::planRect(book.all<House>().begin()->second);
    open.child<QPushButton>("drawBench")->click();
    drag(plan, {0.1 * house.width(), 0.1 * house.height()}, {0.9 * house.width(), 0.4 * house.height()});
    const QRectF bench = ui::planRect(book.all<Bench>().begin()->second);
    open.child<QPushButton>("drawZone")->click();
    drag(plan, bench.topLeft() + QPointF(40, 40), bench.center() + QPointF(40, 0.4 * bench.height()));
    save(open, file);
}

void writeDraftBar(OpenWindow& open, const QString& file) {
    open.child<QAction>("setup")->trigger();
    open.child<QPushButton>("addHouse")->click();
    open.child<QLineEdit>("houseName")->setText(QStringLiteral("Tunnel 9, the far one"));
    open.child<QAction>("house")->trigger();
    open.child<QAction>("setup")->trigger();
    open.child<QPushButton>("addBench")->click();
    save(open, file);
}

} // namespace

void writeMenuPictures(const QString& folder) {
    const auto writeAll = [&](QSize size, ui::Theme theme, const QString& look) {
        const auto in = [&](const char* name, void (*write)(OpenWindow&, const QString&)) {
            OpenWindow open(size);
            open.window.setTheme(theme);
            QApplication::processEvents();
            write(open, folder + QLatin1String(name) + look);
        };
        in("batch-menu", writeBatchMenu);
        in("drawn-zone", writeDrawnZone);
        in("draft-bar", writeDraftBar);
    };
    writeAll({1360, 860}, ui::Theme::Light, QStringLiteral(".png"));
    writeAll({1280, 720}, ui::Theme::Dark, QStringLiteral("-1280-dark.png"));
}

} // namespace warmbench::tests
