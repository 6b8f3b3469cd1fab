#include "ui/whatif/what_if_dialog.h"

#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

#include <QApplication>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTreeWidget>

using namespace warmbench;
using namespace warmbench::ui;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

void waitForTrial(WhatIfDialog& dialog, int count) {
    auto* tryIt = dialog.findChild<QPushButton*>("whatIfTry");
    while (!tryIt->isEnabled()) QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    REQUIRE(dialog.triedCount() == count);
}

} // namespace

TEST_CASE("Trials stand beside the season as it is, and one is kept as one step that is undone as one") {
    SeasonBook nursery;
    nursery.want(40, on(12, 20));
    WhatIfDialog dialog(nursery.book, testing::builtIn(), on(8, 2), 28,
                        Wording(QLocale(QLocale::English, QLocale::UnitedKingdom)));
    auto* keep = dialog.findChild<QPushButton*>("whatIfKeep");
    auto* tryIt = dialog.findChild<QPushButton*>("whatIfTry");
    waitForTrial(dialog, 1);
    CHECK_FALSE(keep->isEnabled());

    tryIt->click();
    CHECK(dialog.findChild<QLabel*>("whatIfRefusal")->text().startsWith("Nothing is changed yet"));
    dialog.findChild<QSpinBox*>("whatIfHands")->setValue(50);
    dialog.findChild<QDoubleSpinBox*>("whatIfSureness")->setValue(97);
    tryIt->click();
    waitForTrial(dialog, 2);
    auto* table = dialog.findChild<QTreeWidget*>("whatIfTable");
    CHECK(table->columnCount() == 3);
    CHECK(table->headerItem()->text(1) == "As it is");
    CHECK(table->headerItem()->text(2) == "50 % hands, 97 % sure");
    CHECK(table->topLevelItem(4)->text(0) == "Cuttings to strike");
    CHECK(table->topLevelItem(4)->text(2).contains("(+"));

    REQUIRE(keep->isEnabled());
    const HouseBook before = nursery.book;
    const auto change = nursery.book.perform(dialog.command());
    REQUIRE(change);
    CHECK(nursery.book.nursery().strikesByWeekday[0] == 200);
    CHECK(nursery.book.nursery().surenessPermille == 970);
    CHECK_FALSE(nursery.book.all<Batch>().empty());
    CHECK_FALSE(nursery.book.apply(change->inverse()));
    CHECK(nursery.book == before);
}
