#include "tests/ui/carry_pictures.h"

#include "core/book/query.h"
#include "tests/ui/window.h"
#include "ui/setup/house_plan.h"

#include <QAction>
#include <QApplication>
#include <QPushButton>
#include <QTest>
#include <QTreeWidget>

#include <cstdio>

namespace warmbench::tests {
namespace {

struct CarryWindow : OpenWindow {
    ui::BenchMap& map = *child<ui::BenchMap>("benchMap");
    QString folder;
    QString look;

    CarryWindow(const QString& to, ui::Theme theme, QSize size, const QString& suffix)
        : OpenWindow(size), folder(to), look(suffix) {
        window.setTheme(theme);
    }
    void grab(const char* name) {
        QApplication::processEvents();
        const QString file = folder + QLatin1String(name) + look;
        if (!window.grab().save(file))
            std::fprintf(stderr, "ui_pictures: %s was not written\n", qPrintable(file));
    }
    void takeUp(BatchId batch) {
        window.choose(batch);
        map.setFocus();
        QTest::keyClick(&map, Qt::Key_Space);
    }
    void write() {
        const HouseBook& book = window.session()->book();
        for (const auto& [id, batch] : book.all<Batch>()) {
            if (batch.state != BatchState::Planned || !book.staysOf(id).empty()) continue;
            takeUp(id);
            break;
        }
        grab("carry-taken-up");
        QTest::keyClick(&map, Qt::Key_Tab);
        grab("carry-suits");
        QTest::keyClick(&map, Qt::Key_T);
        for (int i = 0; i < 30; ++i) QTest::keyClick(&map, Qt::Key_Right);
        grab("carry-beside");
        QTest::keyClick(&map, Qt::Key_Escape);
        takeUp(map.scene().stays.front().batch);
        QTest::keyClick(&map, Qt::Key_Tab);
        grab("carry-struck");
        QTest::keyClick(&map, Qt::Key_Return);
        grab("carry-asks");
        QTest::keyClick(&map, Qt::Key_Escape);
        QTest::keyClick(&map, Qt::Key_Escape);
        child<QAction>("setup")->trigger();
        auto* setup = child<QTreeWidget>("setupList");
        setup->setCurrentItem(setup->topLevelItem(1)->child(0)->child(0));
        QApplication::processEvents();
        child<QPushButton>("blockSlots")->click();
        auto* plan = child<ui::HousePlan>("housePlan");
        for (const Qt::Key key : {Qt::Key_Space, Qt::Key_Right, Qt::Key_Space, Qt::Key_Down})
            QTest::keyClick(plan, key);
        grab("block-slots");
    }
};

} // namespace

void writeCarryPictures(const QString& folder) {
    CarryWindow(folder, ui::Theme::Light, {1360, 860}, QStringLiteral(".png")).write();
    CarryWindow(folder, ui::Theme::Dark, {1280, 720}, QStringLiteral("-dark.png")).write();
}

} // namespace warmbench::tests
