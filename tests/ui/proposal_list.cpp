#include "ui/plan/proposal_list.h"

#include "tests/core/season/place_swap.h"
#include "tests/ui/window.h"
#include "ui/plan/plan_dialog.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QLabel>
#include <QPushButton>
#include <QTest>

using namespace warmbench;
using namespace warmbench::ui;
using warmbench::testing::PlaceSwap;

namespace {

bool isTicked(const ProposalList& list, std::size_t thing) {
    return list.topLevelItem(static_cast<int>(thing))->checkState(0) == Qt::Checked;
}

void tick(ProposalList& list, std::size_t thing, bool on) {
    list.topLevelItem(static_cast<int>(thing))->setCheckState(0, on ? Qt::Checked : Qt::Unchecked);
}

/// A book that keeps nothing.
struct RefusingSession : MemorySession {
    using MemorySession::MemorySession;
    Outcome perform(const Command&) override { return Refusal{"27-217-A", "its slot is taken"}; }
};

struct SeasonOpener : tests::SmallNurseryOpener {
    const RecipeLibrary& recipes() override { return testing::builtIn(); }
};

} // namespace

TEST_CASE("A batch left out leaves out those that need its place, which is said, and the rest is accepted") {
    const PlaceSwap swap;
    const HouseBook& before = swap.nursery.book;
    const auto code = [&](std::size_t line) { return swap.proposal.lines[line].batch.code; };
    ProposalList list(Wording(), nullptr);
    list.showProposal(before, swap.proposal);
    REQUIRE(list.topLevelItemCount() == PlaceSwap::things);
    CHECK(list.alongWords().isEmpty());

    tick(list, PlaceSwap::second, false);
    CHECK_FALSE(isTicked(list, PlaceSwap::third));
    CHECK(isTicked(list, PlaceSwap::first));
    CHECK(list.ticked() == 2);
    CHECK(list.alongWords().toStdString() == code(PlaceSwap::third) + " needs the place of " +
                                                 code(PlaceSwap::second) +
                                                 ", so it is not ticked any more either.");
    HouseBook book = before;
    REQUIRE(book.perform(list.chosen().command()));
    CHECK(book.all<Batch>().size() == 4);

    tick(list, PlaceSwap::first, false);
    CHECK(list.alongWords().isEmpty());
    tick(list, PlaceSwap::third, true);
    CHECK(list.ticked() == list.tickable());
    CHECK(list.alongWords().toStdString().starts_with(code(PlaceSwap::third) + " needs the places of "));
    tick(list, PlaceSwap::first, false);
    CHECK(list.ticked() == 1);
    CHECK(list.alongWords().contains("need the place of"));
    book = before;
    REQUIRE(book.perform(list.chosen().command()));

    list.tickAll(Qt::Unchecked);
    CHECK(list.ticked() == 0);
    CHECK(list.alongWords().isEmpty());
}

TEST_CASE("A batch that is kept with a later end is kept as it was where it would stand in the way") {
    PlaceSwap swap;
    // It needs the second's slots longer than now; it isn't listed.
    swap.proposal.lines[PlaceSwap::third].change = season::LineChange::Kept;
    ProposalList list(Wording(), nullptr);
    list.showProposal(swap.nursery.book, swap.proposal);
    REQUIRE(list.topLevelItemCount() == PlaceSwap::things - 1);
    CHECK(list.kept() == 1);
    CHECK(list.chosen().lines.size() == 3);
    tick(list, 0, false);
    CHECK(list.chosen().lines.size() == 1);
    CHECK(list.ticked() == 2);
    HouseBook book = swap.nursery.book;
    CHECK(book.perform(list.chosen().command()));
}

TEST_CASE("What the book refuses of a plan is told in the plan's window, which stays open with its ticks") {
    testing::SeasonBook nursery;
    nursery.want(60, testing::on(12, 20));
    nursery.want(30, testing::on(12, 22));
    Outcome answer = Refusal{"27-217-A", "its slot is taken"};
    int asked = 0;
    PlanDialog dialog(nursery.book, testing::builtIn(), testing::on(8, 1), Wording(), [&](const Command&) {
        ++asked;
        return answer;
    });
    dialog.show();
    auto* plan = dialog.findChild<QPushButton*>("planStart");
    auto* accept = dialog.findChild<QPushButton*>("planAccept");
    auto* refusal = dialog.findChild<QLabel*>("planRefusal");
    auto* list = dialog.findChild<ProposalList*>("planList");
    plan->click();
    REQUIRE(QTest::qWaitFor([&] { return plan->isEnabled(); }, 60000));
    REQUIRE(list->tickable() >= 2);
    tick(*list, 0, false);
    dialog.findChild<QPushButton*>("planFold")->click();
    accept->click();
    CHECK(asked == 1);
    CHECK(dialog.isVisible());
    CHECK(refusal->isVisible());
    CHECK(refusal->text() == "27-217-A: its slot is taken");
    CHECK(list->isVisible());
    CHECK(list->ticked() == list->tickable() - 1);
    CHECK(list->proposal().lines.size() == 2);

    answer.reset();
    accept->click();
    CHECK(asked == 2);
    CHECK_FALSE(dialog.isVisible());
}

TEST_CASE("A plan that the book can't take any more says why as soon as it is ticked") {
    testing::SeasonBook nursery;
    nursery.want(30, testing::on(12, 20));
    PlanDialog dialog(nursery.book, testing::builtIn(), testing::on(8, 1), Wording(),
                      [](const Command&) { return Outcome(); });
    dialog.show();
    auto* plan = dialog.findChild<QPushButton*>("planStart");
    plan->click();
    REQUIRE(QTest::qWaitFor([&] { return plan->isEnabled(); }, 60000));
    std::vector<bool> told;
    QObject::connect(&dialog, &PlanDialog::chosenChanged,
                     [&](const std::optional<Command>& command) { told.push_back(command.has_value()); });
    // Meanwhile the mat has gone.
    Zone bare = nursery.book.get<Zone>(nursery.warm);
    bare.mat.reset();
    REQUIRE(nursery.book.perform(Command{Put<Zone>{bare}}));
    dialog.findChild<QPushButton*>("planTickAll")->click();
    CHECK(told == std::vector<bool>{false});
    CHECK(dialog.findChild<QLabel*>("planRefusal")->text().contains("mat"));
    CHECK_FALSE(dialog.findChild<QPushButton*>("planAccept")->isEnabled());
}

TEST_CASE("A plan that is refused stays over the map, and its window open") {
    testing::SeasonBook nursery;
    nursery.want(30, testing::on(12, 20));
    SeasonOpener opener;
    MainWindow window(opener, testing::on(8, 1));
    window.setSession(std::make_unique<RefusingSession>(nursery.book, QStringLiteral("season")));
    window.show();
    window.findChild<QAction*>(QStringLiteral("planDays"))->trigger();
    auto* dialog = window.findChild<QDialog*>(QStringLiteral("planDialog"));
    auto* plan = dialog->findChild<QPushButton*>("planStart");
    plan->click();
    REQUIRE(QTest::qWaitFor([&] { return plan->isEnabled(); }, 60000));
    const HouseBook proposed = window.shown();
    REQUIRE(proposed != nursery.book);
    dialog->findChild<QPushButton*>("planAccept")->click();
    CHECK(dialog->isVisible());
    CHECK(dialog->findChild<QLabel*>("planRefusal")->text() == "27-217-A: its slot is taken");
    CHECK(window.shown() == proposed);
    CHECK(window.findChild<QLabel*>(QStringLiteral("proposedWords"))->isVisible());
    dialog->reject();
    CHECK(window.shown() == nursery.book);
    CHECK_FALSE(window.findChild<QLabel*>(QStringLiteral("proposedWords"))->isVisible());
}
