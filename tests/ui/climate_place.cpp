#include "ui/climate/climate_chart.h"
#include "ui/climate/import_dialog.h"
#include "ui/climate/time_ticks.h"

#include "core/book/query.h"
#include "core/book/readings.h"
#include "tests/support/temporary_folder.h"
#include "tests/ui/window.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QTreeWidget>

#include <fstream>
#include <set>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

/// A stay in which cuttings root on the small nursery's day, in a zone with a mat.
const Stay& rootingOnMat(const HouseBook& book) {
    for (const auto& [id, stay] : book.all<Stay>()) {
        const bool now = stay.from < smallNurseryToday() && stay.to > smallNurseryToday();
        if (now && stay.stage == Stage::Rooting && book.get<Zone>(stay.zone).mat &&
            book.get<Batch>(stay.batch).state == BatchState::Struck)
            return stay;
    }
    throw std::runtime_error("nothing roots");
}

/// Hourly readings of the 40 days up to the small nursery's day, 4 hours of them at 1 °C.
KeepReadings coldNight(ZoneId zone) {
    ChannelReadings root{Channel::RootZone, {}};
    const std::int32_t end = smallNurseryToday().number() * climate::minutesPerDay;
    for (std::int32_t minute = end - 40 * climate::minutesPerDay; minute < end; minute += 60)
        root.readings.push_back({minute, minute >= end - 300 && minute < end - 60 ? 100 : 2000});
    return {{zone, std::nullopt}, {root}};
}

} // namespace

TEST_CASE("The climate place draws a zone's readings, tells a cold night, and a key takes the readings out") {
    OpenWindow open;
    const HouseBook& book = open.window.session()->book();
    const Stay stay = rootingOnMat(book);
    open.child<QAction>("climate")->trigger();
    CHECK(open.child<QLabel>("climateWords")->text().contains("No readings"));
    REQUIRE_FALSE(open.window.session()->perform(Command{coldNight(stay.zone)}));
    auto* chart = open.child<ui::ClimateChart>("climateChart");
    CHECK(open.child<QComboBox>("climatePlaceChoice")->currentText() ==
          QString::fromStdString(zoneTitle(book, stay.zone)));
    CHECK(chart->pointsDrawn() > 500);
    auto* warnings = open.child<QTreeWidget>("climateWarnings");
    REQUIRE(warnings->topLevelItemCount() == 1);
    CHECK(warnings->topLevelItem(0)->text(1) == "too cold");
    CHECK(warnings->topLevelItem(0)->text(5).contains(
        QString::fromStdString(book.get<Batch>(stay.batch).code)));
    // Enter shows that night, 0 everything, + and - half and double.
    warnings->setCurrentItem(warnings->topLevelItem(0));
    Q_EMIT warnings->itemActivated(warnings->currentItem(), 0);
    const double night = chart->windowTo() - chart->windowFrom();
    CHECK(night < 4 * climate::minutesPerDay);
    QTest::keyClick(chart, Qt::Key_0);
    CHECK(chart->windowTo() - chart->windowFrom() == 40 * climate::minutesPerDay);
    QTest::keyClick(chart, Qt::Key_Plus);
    CHECK(chart->windowTo() - chart->windowFrom() == 20 * climate::minutesPerDay);
    const double from = chart->windowFrom();
    QTest::keyClick(chart, Qt::Key_Left);
    CHECK(chart->windowFrom() < from);
    QTest::keyClick(chart, Qt::Key_Minus);
    open.child<QPushButton>("climateDays0")->click();
    open.child<QPushButton>("climateRemove")->click();
    CHECK(book.all<ReadingMonth>().empty());
    open.child<QAction>("undo")->trigger();
    CHECK_FALSE(book.all<ReadingMonth>().empty());
}

TEST_CASE("A mat is run at the set-point that is chosen from what each costs") {
    OpenWindow open;
    const HouseBook& book = open.window.session()->book();
    open.child<QAction>("climate")->trigger();
    auto* table = open.child<QTreeWidget>("heatTable");
    REQUIRE(table->topLevelItemCount() >= 3);
    CHECK(table->topLevelItem(0)->text(0) == "off");
    CHECK(table->topLevelItem(0)->text(1) == "0 W");
    const Stay stay = [&] {
        const QString named = open.child<QComboBox>("heatBatch")->currentText();
        for (const auto& [id, one] : book.all<Stay>())
            if (one.stage == Stage::Rooting &&
                named.contains(QString::fromStdString(book.get<Batch>(one.batch).code)))
                return one;
        throw std::runtime_error("no stay");
    }();
    table->setCurrentItem(table->topLevelItem(table->topLevelItemCount() - 1));
    const QString chosen = table->currentItem()->text(0);
    open.child<QPushButton>("heatRun")->click();
    const auto running = setPointOn(book, stay.zone, smallNurseryToday());
    REQUIRE(running);
    CHECK(ui::Wording().temperature(*running) == chosen);
    CHECK(setPointOn(book, stay.zone, stay.to - 1) == running);
}

TEST_CASE("A logger's file is shown as it is understood before anything of it is kept") {
    const TemporaryFolder folder;
    const std::string path = (folder.path() / "logger.csv").string();
    std::ofstream(path)
        << "Zeit;Wurzelzone;Feuchte\n01.03.2027 06:00;20,5;80\n01.03.2027 06:00;21,5;80\n"
           "01.03.2027 08:00;20,7;81\n01.03.2027 07:00;20,6;\n01.03.2027 18:00;20,9;70\nkaputt\n";
    OpenWindow open;
    const HouseBook& book = open.window.session()->book();
    const ZoneId zone = book.all<Zone>().begin()->first;
    ui::ImportDialog dialog(
        book, {zone, std::nullopt}, ui::Wording(QLocale(QLocale::English, QLocale::UnitedKingdom)),
        [&](const Command& command) { return open.window.session()->perform(command); }, nullptr);
    auto* keep = dialog.findChild<QPushButton*>("importKeep");
    auto* words = dialog.findChild<QLabel*>("importWords");
    CHECK_FALSE(keep->isEnabled());
    dialog.openFile(QString::fromStdString(folder.path().string() + "/none.csv"));
    CHECK_FALSE(dialog.findChild<QLabel*>("importRefusal")->text().isEmpty());
    dialog.openFile(QString::fromStdString(path));
    CHECK(book.all<ReadingMonth>().empty());
    CHECK(words->text().contains("decimal comma"));
    CHECK(words->text().contains("Doubles left out: 1, of which 1"));
    CHECK(words->text().contains("Put in order: 1"));
    CHECK(words->text().contains("can't be read: 1"));
    CHECK(words->text().contains("Gaps of more than 3 hours: 1, in all 10 h"));
    auto* lines = dialog.findChild<QTreeWidget*>("importLines");
    REQUIRE(lines->topLevelItemCount() == 4);
    CHECK(lines->topLevelItem(1)->text(1).startsWith("20.6"));
    CHECK(lines->topLevelItem(1)->text(2).isEmpty());
    dialog.findChild<QComboBox*>("importUnit")->setCurrentIndex(2);
    CHECK(lines->topLevelItem(0)->text(1).startsWith("-6.4"));
    dialog.findChild<QComboBox*>("importUnit")->setCurrentIndex(0);
    // Without decimal commas the only numbers are the humidity's; with tabs there is no reading at all.
    dialog.findChild<QComboBox*>("importDecimals")->setCurrentIndex(1);
    CHECK(lines->topLevelItemCount() == 0);
    CHECK(dialog.findChild<QLabel*>("importRefusal")->text().contains("no column with temperatures"));
    dialog.findChild<QComboBox*>("importDecimals")->setCurrentIndex(0);
    dialog.findChild<QComboBox*>("importDelimiter")->setCurrentIndex(3);
    CHECK_FALSE(keep->isEnabled());
    CHECK(dialog.findChild<QLabel*>("importRefusal")->text().contains("no line with a time"));
    dialog.findChild<QComboBox*>("importDelimiter")->setCurrentIndex(0);
    CHECK(lines->topLevelItem(0)->text(1).startsWith("20.5"));
    keep->click();
    CHECK(dialog.result() == QDialog::Accepted);
    const ReadingPlace place{zone, std::nullopt};
    CHECK(readingsBetween(book, place, Channel::RootZone, Day::first(), Day::last()).size() == 4);
    CHECK(readingsBetween(book, place, Channel::Humidity, Day::first(), Day::last()).size() == 3);
    // The same file once more has nothing new.
    ui::ImportDialog again(
        book, place, ui::Wording(),
        [&](const Command& command) { return open.window.session()->perform(command); }, nullptr);
    again.openFile(QString::fromStdString(path));
    CHECK_FALSE(again.findChild<QPushButton*>("importKeep")->isEnabled());
}

TEST_CASE("Marks of time are round, few, and no two have the same words") {
    const ui::Wording wording(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const double begins = Day::make(2026, 11, 27)->number() * 1440.0 + 7;
    for (const double days : {0.25, 1.0, 3.0, 10.0, 30.0, 100.0, 400.0, 2000.0, 9000.0}) {
        const auto ticks = ui::timeTicks(begins, begins + days * 1440, 10, wording);
        INFO(days);
        CHECK(ticks.size() >= 1);
        CHECK(ticks.size() <= 26);
        std::set<QString> words;
        for (const ui::TimeTick& tick : ticks) words.insert(tick.words);
        CHECK(words.size() == ticks.size());
    }
}
