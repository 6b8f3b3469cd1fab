#include "tests/ui/window.h"

#include "core/book/query.h"
#include "ui/paper/print_dialog.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QApplication>
#include <QContextMenuEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QStatusBar>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>

using namespace warmbench;
using namespace warmbench::tests;
using namespace warmbench::ui;

namespace {

/// The window with the menu of batches asked for where something is in sight.
struct WindowWithMenu : OpenWindow {
    const HouseBook& book = window.session()->book();
    BenchMap* map = child<BenchMap>("benchMap");

    QMenu* menu() { return qobject_cast<QMenu*>(QApplication::activePopupWidget()); }
    void askAt(QWidget* widget, QPoint at, QContextMenuEvent::Reason reason) {
        QContextMenuEvent event(reason, at, widget->mapToGlobal(at));
        QApplication::sendEvent(widget, &event);
    }
    /// Does an entry of the menu by its name, and closes it.
    void choose(const char* entry) {
        QMenu* shown = menu();
        REQUIRE(shown);
        auto* action = child<QAction>(entry);
        REQUIRE(shown->actions().contains(action));
        REQUIRE(action->isEnabled());
        shown->close();
        action->trigger();
    }
    BatchId struckOnMap() {
        for (const SceneStay& stay : map->scene().stays)
            if (book.get<Batch>(stay.batch).state == BatchState::Struck) return stay.batch;
        FAIL("nothing struck stands on the map");
        return {};
    }
};

} // namespace

TEST_CASE("The right button on a batch of the map, and the menu key, offer what can be done with it") {
    WindowWithMenu open;
    QApplication::processEvents();
    const BatchId batch = open.struckOnMap();
    const QRect patch = open.map->mapLayout().extent(open.map->scene(), Selection{batch});
    open.askAt(open.map->viewport(), patch.center() + open.map->origin(), QContextMenuEvent::Mouse);
    REQUIRE(open.menu());
    CHECK(open.window.selection() == Selection{batch});
    for (const char* entry :
         {"moveBatch", "splitBatch", "checkBatch", "weanBatch", "potOnBatch", "printLabels"})
        CHECK(open.child<QAction>(entry)->isEnabled());
    CHECK_FALSE(open.child<QAction>("strike")->isEnabled());
    open.menu()->close();

    open.map->setFocus();
    open.askAt(open.map, open.map->rect().center(), QContextMenuEvent::Keyboard);
    open.choose("splitBatch");
    auto* containers = open.child<QLineEdit>("placingContainers");
    CHECK(containers->isVisible());
    CHECK(containers->hasFocus());
}

TEST_CASE("The ground of the map has no menu") {
    WindowWithMenu open;
    open.askAt(open.map->viewport(), {1, 1}, QContextMenuEvent::Mouse);
    CHECK_FALSE(open.menu());
}

TEST_CASE("A card of the tray has the same menu; a planned batch is struck from it") {
    WindowWithMenu open;
    auto* tray = open.child<QListWidget>("strikeTray");
    const auto batchIn = [&](int row) {
        const QVariant id = tray->item(row)->data(Qt::UserRole);
        return id.isValid() ? open.book.find<Batch>({id.toLongLong()}) : nullptr;
    };
    int row = 0;
    while (row < tray->count() && (!batchIn(row) || batchIn(row)->state != BatchState::Planned)) ++row;
    REQUIRE(row < tray->count());
    const BatchId batch = batchIn(row)->id;
    open.askAt(tray->viewport(), tray->visualItemRect(tray->item(row)).center(), QContextMenuEvent::Mouse);
    CHECK_FALSE(open.child<QAction>("weanBatch")->isEnabled());
    open.choose("strike");
    CHECK(open.book.get<Batch>(batch).state == BatchState::Struck);
}

TEST_CASE("A line of the round has the menu by key, and labels are those of its batch alone") {
    WindowWithMenu open;
    open.child<QAction>("round")->trigger();
    auto* stops = open.window.findChild<QTreeWidget*>(QStringLiteral("roundStops"));
    REQUIRE(stops);
    REQUIRE(stops->topLevelItemCount() > 0);
    stops->setCurrentItem(stops->topLevelItem(0));
    open.askAt(stops->viewport(), stops->visualItemRect(stops->topLevelItem(0)).center(),
               QContextMenuEvent::Keyboard);
    const auto* batch = std::get_if<BatchId>(&open.window.selection());
    REQUIRE(batch);
    bool looked = false;
    QTimer::singleShot(0, [&] {
        auto* dialog = qobject_cast<PrintDialog*>(QApplication::activeModalWidget());
        if (!dialog) return;
        looked = true;
        CHECK(dialog->windowTitle().contains(text(open.book.get<Batch>(*batch).code)));
        dialog->reject();
    });
    open.choose("printLabels");
    CHECK(looked);
}

TEST_CASE("What is not due, or not worth a look, is said on the round") {
    WindowWithMenu open;
    QApplication::processEvents();
    const BatchId batch = open.struckOnMap();
    open.map->select(Selection{batch});
    open.window.choose(Selection{batch});
    open.child<QAction>("potOnBatch")->trigger();
    CHECK(open.child<QWidget>("roundPage")->isVisible());
    CHECK(open.window.statusBar()->currentMessage().contains(QStringLiteral("is not due to be potted on")));
}
