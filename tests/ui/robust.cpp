#include "tests/core/season/season_book.h"
#include "tests/ui/clipped.h"
#include "tests/ui/german.h"
#include "tests/ui/window.h"
#include "ui/paper/print_dialog.h"
#include "ui/plan/plan_dialog.h"
#include "ui/setup/refit_dialog.h"
#include "ui/shell/style.h"
#include "ui/wants/list_dialog.h"
#include "ui/wants/stock_dialog.h"
#include "ui/wants/target_dialog.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QApplication>
#include <QMenu>
#include <QPushButton>
#include <QScrollBar>
#include <QSettings>
#include <QTest>
#include <QTextBrowser>
#include <QTreeWidget>

using namespace warmbench;
using namespace warmbench::tests;
using namespace warmbench::ui;

namespace {

/// While it lives, the program speaks longer words, from right to left, in larger type.
struct Hardship {
    LongerWords words;
    QFont before = QApplication::font();

    Hardship(bool longer, bool mirrored, double type) {
        if (longer) QApplication::installTranslator(&words);
        if (mirrored) QApplication::setLayoutDirection(Qt::RightToLeft);
        QFont larger = before;
        larger.setPixelSize(qRound(13 * type));
        QApplication::setFont(larger);
    }
    Hardship(const Hardship&) = delete;
    Hardship& operator=(const Hardship&) = delete;
    ~Hardship() {
        QApplication::removeTranslator(&words);
        QApplication::setLayoutDirection(Qt::LeftToRight);
        QApplication::setFont(before);
    }
};

std::string clippedIn(const QWidget& window) {
    QApplication::processEvents();
    return clippedTexts(window).join(QStringLiteral(" | ")).toStdString();
}

/// Goes to every place, and in each to what can be chosen there.
void walkPlaces(OpenWindow& open) {
    const auto buttons = open.window.findChildren<QPushButton*>();
    QStringList names;
    for (const QPushButton* button : buttons)
        if (button->property("place").toBool() && button->objectName().endsWith(QStringLiteral("Place")))
            names += button->objectName().chopped(5);
    REQUIRE(names.size() >= 8);
    for (const QString& name : names) {
        INFO("place " << name.toStdString());
        open.window.findChild<QAction*>(name)->trigger();
        CHECK(clippedIn(open.window) == "");
        if (name == QStringLiteral("setup")) {
            auto* list = open.child<QTreeWidget>("setupList");
            for (QTreeWidgetItem* item : list->findItems(QString(), Qt::MatchContains | Qt::MatchRecursive)) {
                INFO("thing " << item->text(0).toStdString());
                list->setCurrentItem(item);
                CHECK(clippedIn(open.window) == "");
            }
        }
    }
    open.window.findChild<QAction*>(QStringLiteral("house"))->trigger();
    const MapScene scene = open.child<BenchMap>("benchMap")->scene();
    std::vector<Selection> selections{Selection{}};
    for (const SceneZone& zone : scene.zones) selections.emplace_back(zone.id);
    for (const SceneStay& stay : scene.stays) selections.emplace_back(stay.batch);
    for (const Selection& selection : selections) {
        open.window.choose(selection);
        CHECK(clippedIn(open.window) == "");
    }
}

template <class Dialog>
void checkDialog(Dialog& dialog) {
    dialog.setStyleSheet(windowStyleSheet(lightPalette()));
    dialog.show();
    INFO("dialog " << dialog.objectName().toStdString());
    CHECK(dialog.width() <= 1280);
    CHECK(dialog.height() <= 700);
    CHECK(clippedIn(dialog) == "");
}

void walkDialogs() {
    using warmbench::testing::builtIn;
    testing::SeasonBook nursery;
    const auto refuse = [](const Command&) { return Outcome(Refusal{"test", "nothing is kept"}); };
    const Target target{{}, "T01", nursery.taxon, 100, testing::on(12, 1), Money{120}, {}, {}};
    TargetDialog asksTarget(nursery.book, builtIn(), target, Wording(), refuse, nullptr);
    checkDialog(asksTarget);
    StockDialog asksStock(nursery.book, builtIn(), nursery.book.get<Stock>(nursery.stock), Wording(), refuse,
                          nullptr);
    checkDialog(asksStock);
    ListDialog asksList(nursery.book, builtIn(), season::ListKind::Targets, Wording(), refuse, nullptr);
    checkDialog(asksList);
    PlanDialog plan(nursery.book, builtIn(), testing::on(8, 1), Wording(), refuse);
    checkDialog(plan);
    const forecast::BookForecast forecast(nursery.book, testing::on(8, 2));
    PrintDialog print(nursery.book, forecast, testing::on(8, 1), Wording());
    checkDialog(print);
    RefitDialog refit({QStringLiteral("27-048-A: loses its place from 3 Mar on and waits in the tray.")},
                      nullptr);
    checkDialog(refit);
}

} // namespace

TEST_CASE("No text is clipped in any place or dialog at 1280 by 720") {
    OpenWindow open({1280, 720});
    CHECK(open.window.size() == QSize(1280, 720));
    walkPlaces(open);
    walkDialogs();
}

TEST_CASE("No text is clipped in German at 1280 by 720") {
    const InGerman german;
    OpenWindow open({1280, 720});
    CHECK(open.window.size() == QSize(1280, 720));
    walkPlaces(open);
    walkDialogs();
}

TEST_CASE("The strike list needs no scrolling sideways in German at 1280 by 720") {
    const InGerman german;
    OpenWindow open({1280, 720});
    open.child<QAction>("strikeList")->trigger();
    QApplication::processEvents();
    const auto* sheet = open.child<QTextBrowser>("strikeSheet");
    CHECK_FALSE(sheet->toPlainText().isEmpty());
    CHECK(sheet->horizontalScrollBar()->maximum() == 0);
}

TEST_CASE("No text is clipped in words two fifths longer, from right to left, at 1280 by 720") {
    const Hardship hardship(true, true, 1);
    OpenWindow open({1280, 720});
    CHECK(open.window.size() == QSize(1280, 720));
    walkPlaces(open);
    walkDialogs();
}

TEST_CASE("No text is clipped in type of one and a half times and twice the size") {
    for (const double times : {1.5, 2.0}) {
        const Hardship hardship(false, false, times);
        INFO("times " << times);
        OpenWindow open({1920, 1080});
        walkPlaces(open);
    }
}

TEST_CASE(
    "The window opens as it was closed: size, place, colours; but on today, which is another day by then") {
    {
        OpenWindow open({1300, 800});
        open.window.setTheme(Theme::Dark);
        open.child<QAction>("targets")->trigger();
        open.window.setDay(smallNurseryToday() + 9);
        open.window.close();
    }
    {
        SmallNurseryOpener opener;
        MainWindow window(opener, smallNurseryToday());
        (void)window.openBook(QStringLiteral("sample"));
        window.show();
        CHECK(window.size() == QSize(1300, 800));
        CHECK(window.day() == smallNurseryToday());
        CHECK(window.findChild<QWidget*>(QStringLiteral("targetsPage"))->isVisible());
        CHECK(window.findChild<QAction*>(QStringLiteral("darkTheme"))->isChecked());
        window.setTheme(Theme::Light);
        window.setDay(smallNurseryToday());
        window.findChild<QAction*>(QStringLiteral("house"))->trigger();
        window.close();
    }
    SmallNurseryOpener opener;
    const MainWindow window(opener, smallNurseryToday());
    CHECK(window.day() == smallNurseryToday());
    QSettings(QStringLiteral("Warmbench"), QStringLiteral("Warmbench")).clear();
}
