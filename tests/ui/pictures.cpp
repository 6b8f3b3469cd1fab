#include "core/book/query.h"
#include "core/book/refit.h"
#include "core/exchange/book/book_json.h"
#include "core/exchange/file/file.h"
#include "tests/core/season/season_book.h"
#include "tests/ui/away_pictures.h"
#include "tests/ui/backup_pictures.h"
#include "tests/ui/carry_pictures.h"
#include "tests/ui/menu_pictures.h"
#include "tests/ui/root_pictures.h"
#include "tests/ui/window.h"
#include "ui/form/form_style.h"
#include "ui/language/language.h"
#include "ui/map/map_sheet.h"
#include "ui/month/hands_dialog.h"
#include "ui/paper/print_dialog.h"
#include "ui/plan/plan_dialog.h"
#include "ui/setup/refit_dialog.h"
#include "ui/setup/refit_words.h"
#include "ui/shell/style.h"
#include "ui/wants/list_dialog.h"
#include "ui/wants/stock_dialog.h"
#include "ui/wants/target_dialog.h"
#include "ui/whatif/what_if_dialog.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QPixmap>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTreeView>
#include <QTreeWidget>

#include <cstdio>

/// Writes pictures of the map and of the window in several states into a folder, for people to look at.
namespace warmbench::tests {
namespace {

constexpr std::size_t mostSampleBytes = std::size_t{64} << 20;

void grab(OpenWindow& open, const QString& file) {
    QApplication::processEvents();
    if (!open.window.grab().save(file))
        std::fprintf(stderr, "ui_pictures: %s was not written\n", qPrintable(file));
}

/// The batch of the small nursery that is furthest on the map's first zone, and its first planned one.
BatchId firstStanding(OpenWindow& open) {
    return open.child<ui::BenchMap>("benchMap")->scene().stays.front().batch;
}

/// Every place of the window, in its order.
void writePlaces(OpenWindow& open, const QString& folder, const QString& look) {
    QStringList places;
    for (const QPushButton* button : open.window.findChildren<QPushButton*>())
        if (button->property("place").toBool() && button->objectName().endsWith(QStringLiteral("Place")))
            places += button->objectName().chopped(5);
    for (const QString& place : places) {
        open.window.findChild<QAction*>(place)->trigger();
        grab(open, folder + QStringLiteral("place-") + place + look + QStringLiteral(".png"));
    }
}

/// Every place in both themes, in a small window, and in a book that is empty.
void writeAllPlaces(const QString& folder) {
    OpenWindow home;
    writePlaces(home, folder, {});
    home.window.setTheme(ui::Theme::Dark);
    writePlaces(home, folder, QStringLiteral("-dark"));
    OpenWindow small({1280, 720});
    writePlaces(small, folder, QStringLiteral("-1280"));
    OpenWindow empty({1280, 720});
    empty.window.setSession(std::make_unique<ui::MemorySession>(HouseBook{}, QStringLiteral("new.wbook")));
    writePlaces(empty, folder, QStringLiteral("-empty"));
}

/// The house as it was after the first step of its journal.
void writePast(const QString& folder) {
    OpenWindow home;
    home.window.choose(firstStanding(home));
    home.window.session()->perform({Put<HandDay>{{{}, smallNurseryToday(), 40, "half a day"}}});
    home.child<QAction>("journal")->trigger();
    auto* table = home.child<QTreeView>("journalTable");
    table->setCurrentIndex(table->model()->index(0, 0));
    grab(home, folder + QStringLiteral("journal.png"));
    home.child<QPushButton>("journalGoBack")->click();
    home.window.setDay(smallNurseryToday());
    grab(home, folder + QStringLiteral("past.png"));
    home.window.setTheme(ui::Theme::Dark);
    grab(home, folder + QStringLiteral("past-dark.png"));
}

void writeWindows(const QString& folder) {
    OpenWindow home;
    grab(home, folder + QStringLiteral("window.png"));
    home.window.choose(firstStanding(home));
    grab(home, folder + QStringLiteral("window-batch.png"));
    home.window.choose(home.child<ui::BenchMap>("benchMap")->scene().zones[1].id);
    grab(home, folder + QStringLiteral("window-zone.png"));
    home.window.setTheme(ui::Theme::Dark);
    grab(home, folder + QStringLiteral("window-dark.png"));
    home.child<QAction>("dayWork")->trigger();
    grab(home, folder + QStringLiteral("day-work.png"));
    home.child<QAction>("strikeList")->trigger();
    grab(home, folder + QStringLiteral("strike-list-dark.png"));
    home.child<QAction>("month")->trigger();
    grab(home, folder + QStringLiteral("month-dark.png"));
    home.child<QAction>("round")->trigger();
    grab(home, folder + QStringLiteral("round-dark.png"));
    home.window.setTheme(ui::Theme::Light);
    grab(home, folder + QStringLiteral("round.png"));
    home.child<QAction>("strikeList")->trigger();
    grab(home, folder + QStringLiteral("strike-list.png"));

    for (const char* place : {"targets", "stocks", "month", "setup"}) {
        home.child<QAction>(place)->trigger();
        grab(home, folder + QString::fromLatin1(place) + QStringLiteral(".png"));
    }
    home.child<QPushButton>("addHouse")->click();
    grab(home, folder + QStringLiteral("setup-house.png"));
    auto* setup = home.child<QTreeWidget>("setupList");
    setup->setCurrentItem(setup->topLevelItem(1)->child(0)->child(0));
    grab(home, folder + QStringLiteral("setup-zone.png"));
    home.window.setTheme(ui::Theme::Dark);
    grab(home, folder + QStringLiteral("setup-zone-dark.png"));
    home.window.setTheme(ui::Theme::Light);

    OpenWindow small({1280, 720});
    small.window.choose(firstStanding(small));
    grab(small, folder + QStringLiteral("window-1280.png"));
    for (int i = 0; i < 7; ++i) small.child<QAction>("zoomIn")->trigger();
    grab(small, folder + QStringLiteral("window-zoomed.png"));

    small.child<QAction>("month")->trigger();
    grab(small, folder + QStringLiteral("month-1280.png"));
    small.child<QAction>("round")->trigger();
    grab(small, folder + QStringLiteral("round-1280.png"));
    auto* due = small.child<QTreeWidget>("roundDue");
    due->setCurrentItem(due->topLevelItem(due->topLevelItemCount() - 1));
    Q_EMIT due->itemClicked(due->currentItem(), 0);
    grab(small, folder + QStringLiteral("round-due-1280.png"));

    OpenWindow empty;
    empty.window.setSession(std::make_unique<ui::MemorySession>(HouseBook{}, QStringLiteral("new.wbook")));
    grab(empty, folder + QStringLiteral("window-empty.png"));
    empty.window.setSession(nullptr);
    grab(empty, folder + QStringLiteral("window-start.png"));

    QApplication::setLayoutDirection(Qt::RightToLeft);
    OpenWindow mirrored;
    grab(mirrored, folder + QStringLiteral("window-right-to-left.png"));
}

/// Places of the season on the sample nursery, in summer, when there is most to cut.
void writeSeason(const QString& folder) {
    SmallNurseryOpener opener;
    auto text = exchange::readFile(WARMBENCH_SOURCE "/sample-data/nursery.json", mostSampleBytes);
    auto book = text ? readBook(std::move(*text)) : Result<HouseBook>(text.refusal());
    if (!book) return (void)std::fprintf(stderr, "ui_pictures: %s\n", book.refusal().text().c_str());
    ui::MainWindow window(opener, *Day::make(2027, 6, 7));
    window.setTheme(ui::Theme::Light);
    window.setSession(std::make_unique<ui::MemorySession>(*book, QStringLiteral("Sample nursery")));
    window.resize(1280, 720);
    window.show();
    const auto take = [&](const char* place, const QString& look) {
        window.findChild<QAction*>(QLatin1String(place))->trigger();
        QApplication::processEvents();
        window.grab().save(folder + QStringLiteral("sample-") + QLatin1String(place) + look);
    };
    for (const char* place : {"targets", "stocks", "month"}) take(place, QStringLiteral(".png"));
    window.setTheme(ui::Theme::Dark);
    for (const char* place : {"targets", "stocks", "month"}) take(place, QStringLiteral("-dark.png"));
    window.setTheme(ui::Theme::Light);
}

/// The dialogs for a new target and a new stock, filled in.
void writeDialogs(const QString& folder, const ui::Palette& palette, const QString& look) {
    testing::SeasonBook nursery;
    const auto refuse = [](const Command&) { return Outcome(Refusal{"picture", "nothing is kept"}); };
    Target target{{}, "T01", nursery.taxon, 100, testing::on(12, 1), Money{120}, {}, {}};
    ui::TargetDialog asksTarget(nursery.book, testing::builtIn(), target, ui::Wording(), refuse, nullptr);
    ui::StockDialog asksStock(nursery.book, testing::builtIn(), nursery.book.get<Stock>(nursery.stock),
                              ui::Wording(), refuse, nullptr);
    ui::ListDialog asksList(nursery.book, testing::builtIn(), season::ListKind::Targets, ui::Wording(),
                            refuse, nullptr);
    asksList.findChild<QPlainTextEdit*>("listText")
        ->setPlainText(
            "plant\tplants\tdate\tworth\tnote\nOlearia × haastii\t120\t1.12.2027\t2,40\tin 9 cm pots\n"
            "Abelia × grandiflora\teighty\t1.6.2028\t3\t\nNonesuch\t40\t1.6.2028\t3\t\n"
            "glossy abelia\t80\t15.6.2028\t3\tfor the hedge\n");
    for (QDialog* dialog : {static_cast<QDialog*>(&asksTarget), static_cast<QDialog*>(&asksStock),
                            static_cast<QDialog*>(&asksList)}) {
        dialog->setPalette(ui::qtPalette(palette));
        dialog->setStyleSheet(ui::windowStyleSheet(palette));
        dialog->show();
        QApplication::processEvents();
        dialog->grab().save(folder + dialog->objectName() + look);
    }
}

/// What a smaller zone does to what stands there, as it is asked.
void writeRefit(const QString& folder, const ui::Palette& palette, const QString& look) {
    const HouseBook book = smallNursery();
    for (const auto& [id, zone] : book.all<Zone>()) {
        if (slotsTaken(book, id, smallNurseryToday()) == 0) continue;
        const Refit refit{smallNurseryToday(), reshaped(zone, {zone.row, zone.col, 2, 3})};
        const auto effect = effectOf(book, refit);
        if (!effect) continue;
        ui::RefitDialog dialog(ui::refitWords(book, *effect, ui::Wording()), nullptr);
        dialog.setPalette(ui::qtPalette(palette));
        dialog.setStyleSheet(ui::windowStyleSheet(palette));
        dialog.show();
        QApplication::processEvents();
        dialog.grab().save(folder + QStringLiteral("refit") + look);
        return;
    }
}

/// What a plan would make of the house, laid over the map.
void writePlanOverMap(const QString& folder) {
    using testing::on;
    testing::SeasonBook nursery;
    nursery.want(40, on(12, 1));
    nursery.want(20, on(12, 20));
    struct Opener : SmallNurseryOpener {
        const RecipeLibrary& recipes() override { return testing::builtIn(); }
    } opener;
    ui::MainWindow window(opener, on(8, 1));
    window.setTheme(ui::Theme::Light);
    window.setSession(std::make_unique<ui::MemorySession>(nursery.book, QStringLiteral("season")));
    window.resize(1280, 720);
    window.show();
    window.findChild<QAction*>(QStringLiteral("planDays"))->trigger();
    auto* dialog = window.findChild<QDialog*>(QStringLiteral("planDialog"));
    auto* plan = dialog->findChild<QPushButton*>(QStringLiteral("planStart"));
    plan->click();
    while (!plan->isEnabled()) QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    window.setDay(on(8, 29));
    QApplication::processEvents();
    window.grab().save(folder + QStringLiteral("plan-over-map.png"));
}

/// The plan dialog before planning and with a proposal, of which a part has no place.
void writePlans(const QString& folder, const ui::Palette& palette, const QString& look) {
    using testing::on;
    testing::SeasonBook nursery;
    nursery.want(40, on(12, 1));
    nursery.want(20, on(12, 20));
    nursery.want(170, on(12, 22));
    ui::PlanDialog dialog(nursery.book, testing::builtIn(), on(8, 1), ui::Wording(),
                          [](const Command&) { return Outcome(); });
    dialog.setPalette(ui::qtPalette(palette));
    dialog.setStyleSheet(ui::windowStyleSheet(palette));
    dialog.show();
    QApplication::processEvents();
    dialog.grab().save(folder + QStringLiteral("plan-before") + look);
    auto* plan = dialog.findChild<QPushButton*>("planStart");
    plan->click();
    while (!plan->isEnabled()) QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    QApplication::processEvents();
    dialog.grab().save(folder + QStringLiteral("plan-proposal") + look);
}

/// The season as it is beside one with fewer hands, and the hands of a day.
void writeTrials(const QString& folder, const ui::Palette& palette, const QString& look) {
    using testing::on;
    testing::SeasonBook nursery;
    nursery.want(40, on(12, 1));
    nursery.want(60, on(12, 20));
    ui::WhatIfDialog dialog(nursery.book, testing::builtIn(), on(8, 2), 28, ui::Wording());
    dialog.setPalette(ui::qtPalette(palette));
    dialog.setStyleSheet(ui::windowStyleSheet(palette));
    dialog.show();
    auto* tryIt = dialog.findChild<QPushButton*>("whatIfTry");
    const auto wait = [&] {
        while (!tryIt->isEnabled()) QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    };
    wait();
    dialog.findChild<QSpinBox*>("whatIfHands")->setValue(20);
    tryIt->click();
    wait();
    QApplication::processEvents();
    dialog.grab().save(folder + QStringLiteral("what-if") + look);
    const auto refuse = [](const Command&) { return Outcome(Refusal{"picture", "nothing is kept"}); };
    ui::HandsDialog hands(nursery.book, on(8, 3), ui::Wording(), refuse, nullptr);
    hands.setPalette(ui::qtPalette(palette));
    hands.setStyleSheet(ui::windowStyleSheet(palette));
    hands.show();
    QApplication::processEvents();
    hands.grab().save(folder + QStringLiteral("hands") + look);
}

/// Labels and a strike list as the print dialog shows them.
void writePrinting(const QString& folder, const ui::Palette& palette, const QString& look) {
    using testing::on;
    testing::SeasonBook nursery;
    nursery.strike(on(8, 2), 30, 60);
    nursery.strike(on(8, 3), 25, 60);
    // What the season's report looks back on.
    const TargetId target = nursery.want(60, on(6, 1));
    for (const unsigned month : {2U, 3U, 4U}) {
        const BatchId ended = nursery.strike(on(month, 1), 40, 60, target);
        (void)nursery.book.perform(
            Command{PotOn{ended, on(month, 1) + 55, {{1, 30 - int(month) * 4, 10}}, ""}});
        (void)nursery.book.perform(Command{Discard{ended, on(month, 1) + 58, {}, "rot"}});
    }
    const forecast::BookForecast forecast(nursery.book, on(8, 2));
    ui::PrintDialog dialog(nursery.book, forecast, on(8, 1), ui::Wording());
    dialog.setPalette(ui::qtPalette(palette));
    dialog.setStyleSheet(ui::windowStyleSheet(palette));
    dialog.show();
    auto* kind = dialog.findChild<QComboBox*>("printKind");
    for (int i = 0; i < kind->count(); ++i) {
        kind->setCurrentIndex(i);
        QApplication::processEvents();
        dialog.grab().save(folder + QStringLiteral("print-%1").arg(i) + look);
    }
}

void writeSheets(const QString& folder) {
    const ui::Wording wording;
    const auto write = [&](const char* name, const ui::SheetOptions& options) {
        const auto refusal = ui::writeMapSheet(smallNursery(), smallNurseryToday(),
                                               folder + QLatin1String(name), options, wording);
        if (refusal) std::fprintf(stderr, "ui_pictures: %s\n", refusal->text().c_str());
    };
    write("map.png", {});
    write("map.svg", {});
    write("map.pdf", {1120, false});
    write("map-dark.png", {1000, true});
    write("map-wide.png", {3000, false});
    write("map-narrow.png", {640, false});
}

} // namespace
} // namespace warmbench::tests

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    QApplication::setStyle(new warmbench::ui::FormStyle);
    const QApplication application(argc, argv);
    warmbench::ui::Planning::searchByRounds(2000);
    if (argc != 2 && argc != 3) {
        std::fputs("ui_pictures: expected one folder, and en or de\n", stderr);
        return 2;
    }
    warmbench::ui::Language language;
    if (argc == 3) language.use(QString::fromLatin1(argv[2]), QLocale());
    const QString folder = QString::fromLocal8Bit(argv[1]) + u'/';
    warmbench::tests::writeSheets(folder);
    warmbench::tests::writeAllPlaces(folder);
    warmbench::tests::writeMenuPictures(folder);
    warmbench::tests::writePast(folder);
    warmbench::tests::writeDialogs(folder, warmbench::ui::lightPalette(), QStringLiteral(".png"));
    warmbench::tests::writeDialogs(folder, warmbench::ui::darkPalette(), QStringLiteral("-dark.png"));
    warmbench::tests::writePlans(folder, warmbench::ui::lightPalette(), QStringLiteral(".png"));
    warmbench::tests::writePlanOverMap(folder);
    warmbench::tests::writeRefit(folder, warmbench::ui::lightPalette(), QStringLiteral(".png"));
    warmbench::tests::writeRefit(folder, warmbench::ui::darkPalette(), QStringLiteral("-dark.png"));
    warmbench::tests::writePlans(folder, warmbench::ui::darkPalette(), QStringLiteral("-dark.png"));
    warmbench::tests::writePrinting(folder, warmbench::ui::lightPalette(), QStringLiteral(".png"));
    warmbench::tests::writePrinting(folder, warmbench::ui::darkPalette(), QStringLiteral("-dark.png"));
    warmbench::tests::writeTrials(folder, warmbench::ui::lightPalette(), QStringLiteral(".png"));
    warmbench::tests::writeTrials(folder, warmbench::ui::darkPalette(), QStringLiteral("-dark.png"));
    warmbench::tests::writeSeason(folder);
    warmbench::tests::writeAwayPictures(folder, warmbench::ui::lightPalette(), QStringLiteral(".png"));
    warmbench::tests::writeAwayPictures(folder, warmbench::ui::darkPalette(), QStringLiteral("-dark.png"));
    warmbench::tests::writeBackupPictures(folder);
    warmbench::tests::writeRootPictures(folder);
    warmbench::tests::writeCarryPictures(folder);
    warmbench::tests::writeWindows(folder);
}
