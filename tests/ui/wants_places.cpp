#include "ui/form/table.h"
#include "ui/form/taxon_field.h"
#include "ui/wants/stocks_place.h"
#include "ui/wants/target_dialog.h"
#include "ui/wants/targets_place.h"

#include "tests/ui/german.h"
#include "tests/ui/shown_place.h"

#include <catch2/catch.hpp>

#include <QApplication>
#include <QCompleter>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>
#include <QVBoxLayout>

using namespace warmbench;
using namespace warmbench::ui;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

/// A place of what is wanted and given.
template <class Shown>
struct ShownWants : tests::ShownPlace<Shown> {
    using tests::ShownPlace<Shown>::place;
    template <class Widget>
    Widget* child(const char* name) {
        return place.template findChild<Widget*>(QLatin1String(name));
    }
};

} // namespace

TEST_CASE("A stock tells what stands on it, and warns before it is cut too hard") {
    ShownWants<StocksPlace> stocks;
    stocks.nursery.strike(on(8, 2), 50, 60);
    stocks.show();
    auto* words = stocks.child<QLabel>("stocksYear");
    CHECK(words->text().contains("semi-ripe: 200 cuttings stand on it now, 50 are to be taken"));
    CHECK_FALSE(words->text().contains("▲"));
    CHECK_FALSE(stocks.child<QLabel>("stocksWords")->isVisibleTo(&stocks.place));
    stocks.nursery.strike(on(8, 20), 160, 60);
    stocks.show();
    CHECK(words->text().contains("▲ on 20 Aug 160 are to be taken and 150 stand"));
    CHECK(stocks.child<QLabel>("stocksWords")->text() == "▲ Cut too hard: Row 2 on 20 Aug, by 10.");
    CHECK(stocks.child<QTreeWidget>("stocksTable")->topLevelItem(0)->text(4) == "200");
}

TEST_CASE("A stock is renewed by a target of its own, filled in and put in by keys") {
    ShownWants<StocksPlace> stocks;
    stocks.show();
    QTimer::singleShot(0, [] {
        auto* dialog = QApplication::activeModalWidget();
        REQUIRE(dialog);
        CHECK(dialog->findChild<QSpinBox*>("targetPlants")->value() == 20);
        QTest::keyClick(dialog, Qt::Key_Return);
    });
    stocks.child<QPushButton>("stocksRenew")->click();
    REQUIRE(stocks.nursery.book.all<Target>().size() == 1);
    CHECK(stocks.nursery.book.all<Target>().begin()->second.note == "renews stock Row 2");
}

TEST_CASE("Targets show what is struck and expected with its band, and those in trouble first") {
    ShownWants<TargetsPlace> targets;
    const TargetId covered = targets.nursery.want(10, *Day::make(2028, 6, 1));
    targets.nursery.want(20, on(12, 24));
    targets.nursery.strike(on(8, 1), 40, 100, covered);
    targets.show();
    auto* table = targets.child<QTreeWidget>("targetsTable");
    REQUIRE(table->topLevelItemCount() == 2);
    CHECK(table->topLevelItem(0)->text(0) == "T2");
    CHECK(table->topLevelItem(0)->text(7).startsWith("▲ 20 missing: strike "));
    CHECK(table->topLevelItem(1)->text(4) == "40");
    CHECK(table->topLevelItem(1)->text(5).contains(" to "));
    CHECK(table->topLevelItem(1)->text(7).startsWith("covered"));
    CHECK(targets.child<QLabel>("targetsWords")->text().startsWith("1 of 2 targets are covered, 1 short."));
    const QString answer = targets.child<QLabel>("targetsAnswer")->text();
    CHECK(answer.contains("semi-ripe cuttings from 2 Aug to 29 Sept"));
    CHECK(answer.contains("under a tent, then 30 days in the open. Stock gives Row 2: 360"));
    CHECK(answer.contains("Nothing is in the way."));
}

TEST_CASE(
    "A target whose window lies months ahead shows at once all that it will take, and what is missing") {
    ShownWants<TargetsPlace> targets;
    targets.nursery.want(40, *Day::make(2028, 12, 20));
    targets.seenOn = on(12, 1);
    targets.show();
    auto* table = targets.child<QTreeWidget>("targetsTable");
    REQUIRE(table->topLevelItemCount() == 1);
    CHECK(table->topLevelItem(0)->text(7).contains("semi-ripe cuttings from 15 Jul 2028 to 25 Sept 2028"));
    CHECK(table->topLevelItem(0)->text(7).startsWith("40 missing: strike "));
    auto* answer = targets.child<QLabel>("targetsAnswer");
    INFO(answer->text().toStdString());
    CHECK(answer->text().contains("semi-ripe cuttings from 15 Jul 2028 to 25 Sept 2028, by the recipe"));
    CHECK(answer->text().contains(
        "for 56 days at 18\u00a0°C, under a tent, then 30 days in the open. Stock gives "
        "Row 2: 600."));
    CHECK(answer->text().contains("Nothing is in the way."));
    REQUIRE(targets.nursery.book.perform(Command{Remove<Stock>{targets.nursery.stock}}));
    targets.show();
    INFO(answer->text().toStdString());
    CHECK(answer->text().contains("In the way: the book has no stock of it, which would have to give "));
    CHECK(table->topLevelItem(0)->text(7).contains("; in the way: the book has no stock of it"));
}

TEST_CASE("A date that no season meets is said so, with what the next one would give") {
    ShownWants<TargetsPlace> targets;
    targets.nursery.want(40, *Day::make(2028, 2, 1));
    targets.seenOn = on(11, 1);
    targets.show();
    auto* answer = targets.child<QLabel>("targetsAnswer");
    INFO(answer->text().toStdString());
    CHECK(answer->text().contains(" · no season meets the date: "));
    CHECK(answer->text().contains("would have to be struck by 7 Nov 2027; give it a later date, "
                                  "9 Oct 2028 at the earliest. Strike "));
    CHECK(answer->text().contains("semi-ripe cuttings from 15 Jul 2028 to 30 Sept 2028"));
    CHECK(answer->text().contains("251 days late"));
}

TEST_CASE("A target that is put in is the one that is chosen and answered then") {
    ShownWants<TargetsPlace> targets;
    targets.nursery.want(40, on(12, 20));
    targets.show();
    QTimer::singleShot(0, [] {
        auto* dialog = QApplication::activeModalWidget();
        REQUIRE(dialog);
        dialog->findChild<QLineEdit*>("taxonName")->setText(QStringLiteral("daisy bush"));
        dialog->findChild<QLineEdit*>("targetName")->setText(QStringLiteral("New one"));
        QTest::keyClick(dialog, Qt::Key_Return);
    });
    targets.child<QPushButton>("targetsNew")->click();
    REQUIRE(targets.nursery.book.all<Target>().size() == 2);
    CHECK(targets.child<QTreeWidget>("targetsTable")->currentItem()->text(0) == "New one");
    CHECK(targets.child<QLabel>("targetsAnswer")->text().startsWith("<b>New one</b>"));
}

TEST_CASE("A target that asks for so many cuttings as nobody knows its take says so beside its answer") {
    const tests::InGerman german;
    ShownWants<TargetsPlace> targets;
    Recipe wide = testing::semiRipe(targets.nursery.taxon);
    wide.takePercent.value = {7, 90};
    for (const auto& [id, recipe] : targets.nursery.book.all<Recipe>())
        if (recipe.taxon == wide.taxon && recipe.wood == wide.wood) wide.id = id;
    REQUIRE(targets.nursery.book.perform(Command{Put<Recipe>{wide}}));
    targets.nursery.want(20, on(12, 24));
    targets.show();
    const QString answer = targets.child<QLabel>("targetsAnswer")->text();
    INFO(answer.toStdString());
    CHECK(answer.contains("zwischen 7 und 90 % liegen kann: bei 70 % Sicherheit wären es "));
}

TEST_CASE("Whatever the list offers while a taxon is typed is understood once it is picked") {
    const testing::SeasonBook nursery;
    TaxonField field(nursery.book, testing::builtIn(), {});
    auto* line = field.findChild<QLineEdit*>("taxonName");
    REQUIRE(line);
    QCompleter* completer = line->completer();
    for (const char* typed : {"forsythia", "olive", "daisy bush"}) {
        completer->setCompletionPrefix(typed);
        INFO(typed);
        CHECK(completer->completionCount() > 0);
        for (int row = 0; completer->setCurrentRow(row); ++row) {
            line->setText(completer->currentCompletion());
            INFO(completer->currentCompletion().toStdString());
            CHECK(field.choice());
        }
    }
    completer->setCompletionPrefix("olive");
    QStringList shown;
    for (int row = 0; completer->setCurrentRow(row); ++row)
        shown += completer->currentIndex().data().toString();
    CHECK(shown.contains("Olea europaea 'Arbequina' (Olive)"));
}

TEST_CASE("A dialog grows with what it has to say, and squeezes no field for it") {
    testing::SeasonBook nursery;
    warmbench::ui::TargetDialog dialog(
        nursery.book, testing::builtIn(), Target{}, Wording(),
        [&](const Command& command) -> Outcome {
            const auto change = nursery.book.perform(command);
            return change ? std::nullopt : Outcome(change.refusal());
        },
        nullptr);
    dialog.show();
    auto* taxon = dialog.findChild<QLineEdit*>("taxonName");
    REQUIRE(taxon);
    taxon->setText("Nonesuch \u00d7 candida, a name that nobody has given to any plant that roots");
    QTest::keyClick(&dialog, Qt::Key_Return);
    QApplication::processEvents();
    CHECK(dialog.isVisible());
    CHECK(taxon->height() >= taxon->sizeHint().height());
    for (const QLabel* label : dialog.findChildren<QLabel*>())
        if (label->isVisible() && label->wordWrap())
            CHECK(label->height() >= label->heightForWidth(label->width()));
}

TEST_CASE("A table's last column takes what is left when the window gets wider") {
    QWidget page;
    auto* column = new QVBoxLayout(&page);
    QTreeWidget* table = makeTable("table", "A table", {"Batch", "Taxon", "Why it is worth a look"}, &page);
    column->addWidget(table);
    new QTreeWidgetItem(table, {"27-001-A", "Olearia × haastii", "not looked at for seven days"});
    page.resize(160, 120);
    page.show();
    fitColumns(*table);
    page.resize(900, 120);
    QApplication::processEvents();
    CHECK(table->header()->sectionPosition(2) + table->header()->sectionSize(2) >=
          table->viewport()->width() - 1);
}
