#include "tests/core/season/season_book.h"
#include "tests/ui/window.h"

#include "core/book/query.h"
#include "core/book/refit.h"
#include "ui/wants/list_dialog.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>
#include <QTreeView>

using namespace warmbench;
using namespace warmbench::tests;
using namespace warmbench::ui;

namespace {

/// The window's journal after three planned batches were struck or taken out.
struct WindowWithPast : OpenWindow {
    std::vector<HouseBook> books{window.session()->book()};

    WindowWithPast() {
        std::vector<BatchId> planned;
        for (const auto& [id, batch] : books[0].all<Batch>())
            if (batch.state == BatchState::Planned) planned.push_back(id);
        for (std::size_t i = 0; i < 3; ++i) {
            REQUIRE(!window.session()->perform({RemoveBatch{planned.at(i)}}));
            books.push_back(window.session()->book());
        }
    }
    QTreeView* openJournal() {
        child<QAction>("journal")->trigger();
        return child<QTreeView>("journalTable");
    }
    void goBackTo(int row) {
        QTreeView* table = openJournal();
        table->setCurrentIndex(table->model()->index(row, 0));
        child<QPushButton>("journalGoBack")->click();
    }
};

} // namespace

TEST_CASE("The journal tells who did what when, the last step first, and is searched as one types") {
    WindowWithPast open;
    const QTreeView* table = open.openJournal();
    REQUIRE(table->model()->rowCount() == 4);
    CHECK(
        table->model()->index(0, 2).data().toString().startsWith(QStringLiteral("Remove the planned batch")));
    CHECK(!table->model()->index(0, 0).data().toString().isEmpty());
    CHECK(!table->model()->index(0, 1).data().toString().isEmpty());
    auto* find = open.child<QLineEdit>("journalFind");
    QTest::keyClicks(find, QStringLiteral("book opened"));
    REQUIRE(table->model()->rowCount() == 1);
    CHECK(table->model()->index(0, 2).data().toString() == QStringLiteral("The book as it was opened"));
    CHECK(open.child<QLabel>("journalCount")->text() == QStringLiteral("Found: 1 of 4"));
    open.window.session()->undo();
    find->clear();
    CHECK(table->model()->rowCount() == 5);
}

TEST_CASE("From a step of the journal the house is seen as it was, marked, and one key leads back to now") {
    WindowWithPast open;
    const Day now = open.window.day();
    for (int row = 0; row < 4; ++row) {
        open.goBackTo(row);
        CHECK(open.window.isPast());
        CHECK(open.window.shown() == open.books[static_cast<std::size_t>(3 - row)]);
        CHECK(open.child<QWidget>("pastBar")->isVisible());
        CHECK(open.child<BenchMap>("benchMap")->isVisible());
        CHECK(open.window.day() == dayOf(QDate::currentDate()));
        open.child<QAction>("now")->trigger();
        CHECK(!open.window.isPast());
        CHECK(open.window.shown() == open.books.back());
        CHECK(!open.child<QWidget>("pastBar")->isVisible());
        CHECK(open.window.day() == now);
    }
    CHECK(open.child<QAction>("now")->shortcut() == QKeySequence(Qt::Key_F8));
}

TEST_CASE("While the past is seen one steps on and back in it, and nothing can be changed") {
    WindowWithPast open;
    open.goBackTo(1);
    CHECK(open.window.shown() == open.books[2]);
    open.child<QPushButton>("pastEarlier")->click();
    CHECK(open.window.shown() == open.books[1]);
    open.child<QPushButton>("pastEarlier")->click();
    CHECK(open.window.shown() == open.books[0]);
    CHECK(!open.child<QPushButton>("pastEarlier")->isEnabled());
    open.child<QPushButton>("pastLater")->click();
    CHECK(open.window.shown() == open.books[1]);

    for (const char* action : {"undo", "redo", "strike", "removeBatch", "planDays", "print"})
        CHECK(!open.child<QAction>(action)->isEnabled());
    open.window.choose(open.books[1].all<Batch>().rbegin()->first);
    CHECK(!open.child<QAction>("strike")->isEnabled());
    open.child<QPushButton>("pastNow")->click();
    CHECK(open.child<QAction>("undo")->isEnabled());
    CHECK(open.window.shown() == open.books[3]);
}

TEST_CASE("What others change while the past is seen is shown on the way back to now") {
    WindowWithPast open;
    open.goBackTo(3);
    REQUIRE(!open.window.session()->undo());
    CHECK(open.window.shown() == open.books[0]);
    open.child<QAction>("now")->trigger();
    CHECK(open.window.shown() == open.books[2]);
}

TEST_CASE(
    "A list put in, a plan, a strike and a change of the house are taken back and done again, all of it") {
    using warmbench::testing::on;
    testing::SeasonBook nursery;
    struct Opener : SmallNurseryOpener {
        const RecipeLibrary& recipes() override { return testing::builtIn(); }
    } opener;
    MainWindow window(opener, on(8, 1));
    window.setSession(std::make_unique<MemorySession>(nursery.book, QStringLiteral("season")));
    window.show();
    const HouseBook& book = window.session()->book();
    const HouseBook first = book;

    ListDialog list(
        book, testing::builtIn(), season::ListKind::Targets, Wording(),
        [&](const Command& command) { return window.session()->perform(command); }, nullptr);
    list.findChild<QPlainTextEdit*>(QStringLiteral("listText"))
        ->setPlainText(
            QStringLiteral("plant\tplants\tdate\tworth\n%1\t40\t2027-12-20\t2\n%1\t30\t2027-12-22\t2\n")
                .arg(text(book.get<Taxon>(nursery.taxon).name)));
    list.accept();
    REQUIRE(book.all<Target>().size() == 2);

    window.findChild<QAction*>(QStringLiteral("planDays"))->trigger();
    auto* dialog = window.findChild<QDialog*>(QStringLiteral("planDialog"));
    REQUIRE(dialog);
    auto* plan = dialog->findChild<QPushButton*>(QStringLiteral("planStart"));
    plan->click();
    REQUIRE(QTest::qWaitFor([&] { return plan->isEnabled(); }, 60000));
    dialog->findChild<QPushButton*>(QStringLiteral("planAccept"))->click();
    REQUIRE(!book.all<Batch>().empty());

    window.choose(book.all<Batch>().begin()->first);
    window.findChild<QAction*>(QStringLiteral("strike"))->trigger();
    const Zone zone = book.get<Zone>(nursery.warm);
    REQUIRE(!window.session()->perform({Refit{on(8, 2), reshaped(zone, {zone.row, zone.col, 1, 1})}}));
    const HouseBook last = book;

    auto* undo = window.findChild<QAction*>(QStringLiteral("undo"));
    auto* redo = window.findChild<QAction*>(QStringLiteral("redo"));
    int steps = 0;
    for (; undo->isEnabled() && steps < 100; ++steps) {
        CHECK(undo->text().size() > qsizetype(7));
        undo->trigger();
    }
    CHECK(steps == 4);
    CHECK(book == first);
    while (redo->isEnabled()) redo->trigger();
    CHECK(book == last);
}
