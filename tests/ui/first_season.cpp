#include "core/book/query.h"
#include "tests/ui/season_window.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTreeWidget>

/// From an empty book to plants potted on, by the window alone.
using namespace warmbench;
using namespace warmbench::ui;
using warmbench::testing::on;
using warmbench::tests::checkAll;
using warmbench::tests::doDue;
using warmbench::tests::in;
using warmbench::tests::planAndAccept;

namespace {

/// The window on a day, with an empty book or one that was worked on before.
struct EmptyBook : tests::SeasonWindow {
    explicit EmptyBook(Day today = on(7, 20), HouseBook kept = {}) : SeasonWindow(today, std::move(kept)) {}
    void addHouseWithMat() {
        go("setup");
        click("addHouse");
        click("keepThing");
        click("addBench");
        click("keepThing");
        click("addZone");
        child<QCheckBox>("zoneHasMat")->setChecked(true);
        child<QComboBox>("zoneCover")->setCurrentIndex(static_cast<int>(Cover::Tent));
        click("keepThing");
        click("addZone"); // open and not heated, to grow on in
        click("keepThing");
        click("addUsualContainers");
    }
};

} // namespace

TEST_CASE("A house, a bench, a heated zone and containers are put in by forms, and each step is undone") {
    EmptyBook empty;
    empty.addHouseWithMat();
    CHECK(empty.book().all<House>().size() == 1);
    REQUIRE(empty.book().all<Zone>().size() == 2);
    CHECK(empty.book().all<Zone>().begin()->second.mat.has_value());
    CHECK_FALSE(empty.book().all<Zone>().rbegin()->second.mat.has_value());
    CHECK(empty.book().all<ContainerType>().size() == 6);
    for (int step = 0; step < 5; ++step) REQUIRE_FALSE(empty.window.session()->undo());
    CHECK(empty.book() == HouseBook());
}

TEST_CASE("What a form says is kept where it holds, and refused with the reason where it does not") {
    EmptyBook empty;
    empty.addHouseWithMat();
    auto* list = empty.child<QTreeWidget>("setupList");
    list->setCurrentItem(list->topLevelItem(1)->child(0));
    const Millimetres stood = empty.book().all<Bench>().begin()->second.x;
    empty.child<QSpinBox>("benchX")->setValue(900'000);
    empty.click("keepThing");
    CHECK(empty.child<QLabel>("setupRefusal")->isVisible());
    CHECK(empty.child<QLabel>("setupRefusal")->text().contains("does not fit inside"));
    CHECK(empty.book().all<Bench>().begin()->second.x == stood);
    CHECK(empty.child<QSpinBox>("benchX")->value() == 900'000);
    empty.child<QSpinBox>("benchX")->setValue(static_cast<int>(stood.parts));
    CHECK_FALSE(empty.child<QLabel>("setupRefusal")->isVisible());
    empty.child<QLineEdit>("benchName")->setText("Long bench");
    empty.click("keepThing");
    CHECK_FALSE(empty.child<QLabel>("setupRefusal")->isVisible());
    CHECK(empty.book().all<Bench>().begin()->second.name == "Long bench");
}

TEST_CASE("What is being typed stays when something else in the book changes") {
    EmptyBook empty;
    empty.addHouseWithMat();
    auto* list = empty.child<QTreeWidget>("setupList");
    list->setCurrentItem(list->topLevelItem(1)->child(0));
    empty.child<QLineEdit>("benchName")->setText("half ty");
    REQUIRE_FALSE(empty.window.session()->perform({Put<Medium>{{{}, "Mix", {{"grit", 1}}}}}));
    CHECK(empty.child<QLineEdit>("benchName")->text() == "half ty");
}

TEST_CASE("From an empty book to plants potted on: house, target, stock, plan, strike, rounds, weaning") {
    EmptyBook empty;
    empty.addHouseWithMat();
    const std::string taxon = "Ceanothus thyrsiflorus";
    empty.go("targets");
    empty.inDialog("targetsNew", [&](QDialog& dialog) {
        in<QLineEdit>(dialog, "taxonName")->setText("nothing that is known");
        dialog.accept();
        CHECK(in<QLabel>(dialog, "dialogRefusal")->isVisible());
        // It stays while what it says is so, whatever else is changed, and goes when that is.
        in<QLineEdit>(dialog, "targetNote")->setText("for the yard");
        CHECK(in<QLabel>(dialog, "dialogRefusal")->isVisible());
        in<QLineEdit>(dialog, "taxonName")->setText(QString::fromStdString(taxon));
        CHECK(in<QLabel>(dialog, "dialogRefusal")->isHidden());
        CHECK(in<QCheckBox>(dialog, "taxonOwn")->isHidden());
        in<QSpinBox>(dialog, "targetPlants")->setValue(40);
        in<QDateEdit>(dialog, "targetDue")->setDate(QDate(2028, 4, 1));
        dialog.accept();
    });
    REQUIRE(empty.book().all<Target>().size() == 1);
    CHECK(empty.child<QTreeWidget>("targetsTable")->topLevelItem(0)->text(7).contains("40 missing: strike"));
    empty.go("stocks");
    empty.inDialog("stocksNew", [&](QDialog& dialog) {
        in<QLineEdit>(dialog, "taxonName")->setText(QString::fromStdString(taxon));
        in<QSpinBox>(dialog, "flushCuttings1")->setValue(30);
        in<QComboBox>(dialog, "flushWood1")->setCurrentIndex(static_cast<int>(Wood::SemiRipe));
        in<QDateEdit>(dialog, "flushFrom1")->setDate(QDate(2024, 7, 15));
        in<QDateEdit>(dialog, "flushTo1")->setDate(QDate(2024, 9, 15));
        dialog.accept();
    });
    REQUIRE(empty.book().all<Stock>().size() == 1);
    CHECK(empty.book().all<Taxon>().size() == 1);
    CHECK(empty.book().all<Stock>().begin()->second.flushes.size() == 1);

    planAndAccept(empty);
    REQUIRE_FALSE(empty.book().all<Batch>().empty());
    const BatchId batch = empty.book().all<Batch>().begin()->first;
    CHECK(empty.book().staysOf(batch).size() >= 1);
    empty.window.choose(batch);
    empty.child<QAction>("strike")->trigger();
    CHECK(empty.book().get<Batch>(batch).state == BatchState::Struck);

    HouseBook book = empty.book();
    bool weaned = false;
    for (int week = 1; week <= 40 && book.get<Batch>(batch).state == BatchState::Struck; ++week) {
        EmptyBook later(on(7, 20) + 7 * week, std::move(book));
        checkAll(later);
        doDue(later);
        book = later.book();
        weaned = weaned || stayOn(book, batch, on(7, 20) + 7 * week)->stage != Stage::Rooting;
    }
    CHECK(weaned);
    CHECK(book.get<Batch>(batch).state == BatchState::Ended);
    CHECK(pottedOn(book, batch) >= 40);
    EmptyBook end(on(12, 31), std::move(book));
    end.go("targets");
    CHECK(end.child<QTreeWidget>("targetsTable")->topLevelItem(0)->text(7) == "met");
}
