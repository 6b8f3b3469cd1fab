#include "ui/wants/list_dialog.h"

#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

#include <QCheckBox>
#include <QComboBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTreeWidget>

using namespace warmbench;
using namespace warmbench::ui;
using warmbench::testing::builtIn;
using warmbench::testing::SeasonBook;

TEST_CASE("A pasted list is shown as it is understood, and put in without its wrong lines") {
    SeasonBook nursery;
    ListDialog dialog(
        nursery.book, builtIn(), season::ListKind::Targets, Wording(),
        [&](const Command& command) -> Outcome {
            auto change = nursery.book.perform(command);
            return change ? std::nullopt : Outcome(change.refusal());
        },
        nullptr);
    auto* putIn = dialog.findChild<QPushButton*>("listPutIn");
    auto* lines = dialog.findChild<QTreeWidget*>("listLines");
    CHECK_FALSE(putIn->isEnabled());
    dialog.findChild<QPlainTextEdit*>("listText")
        ->setPlainText("daisy bush\t60\t1/12/2027\nNonesuch\t5\t1/12/2027\n");
    REQUIRE(lines->topLevelItemCount() == 2);
    CHECK(lines->topLevelItem(0)->text(6).isEmpty());
    CHECK(lines->topLevelItem(1)->text(6).contains("neither the book"));
    CHECK(putIn->text().contains("1"));
    // A date that may mean two days is read as she says.
    auto* order = dialog.findChild<QComboBox*>("listOrder");
    CHECK(order->currentIndex() == 1);
    order->setCurrentIndex(2);
    CHECK(lines->topLevelItem(0)->text(3).contains("12"));
    // A column that is passed over is missed.
    dialog.findChild<QComboBox*>("listColumn2")->setCurrentIndex(0);
    CHECK(lines->topLevelItem(0)->text(6) == "no number of plants is given");
    CHECK_FALSE(putIn->isEnabled());
    dialog.findChild<QComboBox*>("listColumn2")->setCurrentIndex(2);
    dialog.findChild<QCheckBox*>("listOwnTaxa")->setChecked(true);
    CHECK(lines->topLevelItem(1)->text(6).isEmpty());
    putIn->click();
    CHECK(dialog.result() == QDialog::Accepted);
    REQUIRE(nursery.book.all<Target>().size() == 2);
    CHECK(nursery.book.all<Target>().begin()->second.due == *Day::make(2027, 1, 12));
}

TEST_CASE("A list of earlier results is put in as batches that have ended") {
    SeasonBook nursery;
    ListDialog dialog(
        nursery.book, builtIn(), season::ListKind::Targets, Wording(),
        [&](const Command& command) -> Outcome {
            auto change = nursery.book.perform(command);
            return change ? std::nullopt : Outcome(change.refusal());
        },
        nullptr);
    dialog.findChild<QPlainTextEdit*>("listText")
        ->setPlainText("taxon,wood,struck,cuttings,plants,potted on\n"
                       "daisy bush,semi-ripe,2025-08-20,100,81,2025-11-02\n"
                       "daisy bush,semi-ripe,2025-08-20,100,181,2025-11-02\n");
    auto* lines = dialog.findChild<QTreeWidget*>("listLines");
    auto* kind = dialog.findChild<QComboBox*>("listKind");
    kind->setCurrentIndex(static_cast<int>(season::ListKind::Results));
    REQUIRE(lines->topLevelItemCount() == 2);
    const int trouble = lines->columnCount() - 1;
    CHECK(lines->topLevelItem(0)->text(trouble).isEmpty());
    CHECK(lines->topLevelItem(1)->text(trouble).contains("181 of 100"));
    dialog.findChild<QPushButton*>("listPutIn")->click();
    CHECK(dialog.result() == QDialog::Accepted);
    REQUIRE(nursery.book.all<Batch>().size() == 1);
    CHECK(nursery.book.all<Batch>().begin()->second.state == BatchState::Ended);
    // Recipes have as many columns as figures.
    kind->setCurrentIndex(static_cast<int>(season::ListKind::Recipes));
    CHECK(dialog.findChild<QComboBox*>("listColumn1")->count() > 20);
}
