#include "ui/plan/plan_dialog.h"

#include "core/book/command.h"
#include "core/book/query.h"
#include "tests/core/season/season_book.h"

#include <catch2/catch.hpp>

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QTreeWidget>

using namespace warmbench;
using namespace warmbench::ui;
using warmbench::testing::builtIn;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

struct ShownPlan {
    PlanDialog dialog;

    ShownPlan(const HouseBook& book, Day from)
        : dialog(book, builtIn(), from, Wording(), [](const Command&) { return Outcome(); }) {
        dialog.show();
    }
    template <class Widget>
    Widget* child(const QString& name) {
        return dialog.findChild<Widget*>(name);
    }
    void plan() {
        QTest::mouseClick(child<QPushButton>("planStart"), Qt::LeftButton);
        REQUIRE(QTest::qWaitFor([&] { return child<QPushButton>("planStart")->isEnabled(); }, 60000));
    }
};

} // namespace

TEST_CASE("A plan is made from the window, and what is ticked of it goes into the book in one step") {
    SeasonBook nursery;
    nursery.want(60, on(12, 20));
    nursery.want(30, on(12, 22));
    ShownPlan shown(nursery.book, on(8, 1));
    CHECK_FALSE(shown.child<QPushButton>("planAccept")->isEnabled());
    shown.plan();

    auto* list = shown.child<QTreeWidget>("planList");
    REQUIRE(list->topLevelItemCount() >= 2);
    CHECK(shown.child<QLabel>("planState")->text().contains("Ticked: 2 of 2 batches"));
    list->topLevelItem(0)->setCheckState(0, Qt::Unchecked);
    CHECK(shown.child<QLabel>("planState")->text().contains("Ticked: 1 of 2 batches"));

    HouseBook book = nursery.book;
    REQUIRE(book.perform(shown.dialog.command()));
    CHECK(book.all<Batch>().size() == 1);
    CHECK(list->topLevelItem(0)->text(5).contains("off the benches on"));
    list->topLevelItem(1)->setCheckState(0, Qt::Unchecked);
    CHECK_FALSE(shown.child<QPushButton>("planAccept")->isEnabled());

    std::vector<bool> told;
    QObject::connect(&shown.dialog, &PlanDialog::chosenChanged,
                     [&](const std::optional<Command>& command) { told.push_back(command.has_value()); });
    shown.child<QPushButton>("planTickAll")->click();
    CHECK(shown.child<QLabel>("planState")->text().contains("Ticked: 2 of 2 batches"));
    CHECK(shown.child<QPushButton>("planAccept")->isEnabled());
    shown.child<QPushButton>("planTickNone")->click();
    CHECK(shown.child<QLabel>("planState")->text().contains("Ticked: 0 of 2 batches"));
    CHECK(told == std::vector<bool>{true, false});
}

TEST_CASE("A proposal folds to a strip that leaves the map in sight, and back") {
    SeasonBook nursery;
    nursery.want(60, on(12, 20));
    ShownPlan shown(nursery.book, on(8, 1));
    auto* fold = shown.child<QPushButton>("planFold");
    auto* list = shown.child<QTreeWidget>("planList");
    CHECK_FALSE(fold->isEnabled());
    shown.plan();
    REQUIRE(fold->isEnabled());
    const QSize whole = shown.dialog.size();
    fold->click();
    CHECK(shown.dialog.height() < 150);
    CHECK_FALSE(list->isVisible());
    CHECK(shown.child<QLabel>("planState")->isVisible());
    CHECK(shown.child<QPushButton>("planAccept")->isEnabled());
    fold->click();
    CHECK(shown.dialog.size() == whole);
    CHECK(list->isVisible());
    // Planned anew, all of it is in sight again.
    fold->click();
    shown.plan();
    CHECK(list->isVisible());
}

TEST_CASE("Planned batches move from the window only when she lets them, and lose a place that is gone") {
    SeasonBook nursery;
    nursery.want(60, on(12, 20));
    ShownPlan first(nursery.book, on(8, 1));
    first.plan();
    REQUIRE(nursery.book.perform(first.dialog.command()));

    ShownPlan still(nursery.book, on(8, 1));
    still.child<QCheckBox>("planAgain")->setChecked(true);
    still.plan();
    CHECK(still.child<QTreeWidget>("planList")->topLevelItemCount() == 0);
    CHECK(still.child<QLabel>("planState")->text().startsWith("Nothing is better than what is planned"));
    CHECK_FALSE(still.child<QPushButton>("planAccept")->isEnabled());

    House cold = nursery.book.all<House>().begin()->second;
    cold.air = testing::allYear(Celsius{120});
    Zone broken = nursery.book.get<Zone>(nursery.warm);
    broken.mat->rated = Watts{1};
    REQUIRE(nursery.book.perform(Command{Group{"cold", {Put<Zone>{broken}, Put<House>{cold}}}}));
    ShownPlan gone(nursery.book, on(8, 1));
    gone.child<QCheckBox>("planAgain")->setChecked(true);
    gone.plan();
    auto* list = gone.child<QTreeWidget>("planList");
    REQUIRE(list->topLevelItemCount() > 0);
    CHECK(list->topLevelItem(0)->text(5).contains("loses its place and waits"));
    REQUIRE(nursery.book.perform(gone.dialog.command()));
    CHECK(nursery.book.all<Stay>().empty());
    CHECK_FALSE(nursery.book.all<Batch>().empty());
}

TEST_CASE("Batches that were not struck on their day are planned anew, and the window says so") {
    SeasonBook nursery;
    nursery.want(60, on(12, 20));
    ShownPlan first(nursery.book, on(8, 1));
    first.plan();
    REQUIRE(nursery.book.perform(first.dialog.command()));
    const Batch before = nursery.book.all<Batch>().begin()->second;

    ShownPlan later(nursery.book, before.strikeDay + 1);
    later.child<QCheckBox>("planAgain")->setChecked(true);
    later.plan();
    auto* list = later.child<QTreeWidget>("planList");
    REQUIRE(list->topLevelItemCount() > 0);
    const QString note = list->topLevelItem(0)->text(5);
    CHECK(note.contains(text(before.code) + ", not struck on " + Wording().shortDate(before.strikeDay)));
    CHECK_FALSE(note.contains("which costs less"));
    REQUIRE(nursery.book.perform(later.dialog.command()));
    CHECK(nursery.book.get<Batch>(before.id).strikeDay > before.strikeDay);
}

TEST_CASE("With no targets the window says that nothing is to be planned, and accepts nothing") {
    SeasonBook nursery;
    ShownPlan shown(nursery.book, on(8, 1));
    shown.plan();
    CHECK(shown.child<QTreeWidget>("planList")->topLevelItemCount() == 0);
    CHECK(shown.child<QLabel>("planState")->text().startsWith("No target needs striking in these days"));
    CHECK_FALSE(shown.child<QPushButton>("planAccept")->isEnabled());
}
