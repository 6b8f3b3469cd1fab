#include "core/book/progress.h"
#include "core/book/query.h"
#include "core/round/weaning.h"
#include "core/season/renewal.h"
#include "tests/ui/window.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QCheckBox>
#include <QCoreApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTreeWidget>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

/// The round of the small nursery, on the day on which it is looked at.
struct OpenRound : OpenWindow {
    OpenRound() { child<QAction>("round")->trigger(); }

    const HouseBook& book() { return window.session()->book(); }
    QString text(const char* label) { return child<QLabel>(label)->text(); }
    QString cell(int row, int column) {
        return child<QTreeWidget>("roundStops")->topLevelItem(row)->text(column);
    }
    /// The widget with the cursor.
    QWidget* atHand() { return window.focusWidget(); }
    /// Types into the field that has the cursor, and presses Enter.
    void type(const QString& keys) {
        QTest::keyClicks(atHand(), keys);
        QTest::keyClick(atHand(), Qt::Key_Enter);
    }
    /// All seven fields of a check, the last ones left empty.
    void typeCheck(const QStringList& counts) {
        for (int i = 0; i < 7; ++i) type(i < counts.size() ? counts[i] : QString());
    }
    void chooseDue(const QString& task) {
        auto* due = child<QTreeWidget>("roundDue");
        for (int row = 0; row < due->topLevelItemCount(); ++row)
            if (due->topLevelItem(row)->text(1) == task) {
                due->setCurrentItem(due->topLevelItem(row));
                Q_EMIT due->itemClicked(due->topLevelItem(row), 0);
                QCoreApplication::processEvents();
                return;
            }
        FAIL("nothing is due to " << task.toStdString());
    }
    const Batch& dueBatch() { return *findBatch(book(), text("dueBatch").toStdString()); }
};

} // namespace

TEST_CASE("Numbers and Enter write a check down and go on to the next container of the walk") {
    OpenRound round;
    REQUIRE(round.child<QTreeWidget>("roundStops")->topLevelItemCount() > 1);
    const QString first = round.text("checkContainer");
    CHECK(first == round.cell(0, 1));
    const std::size_t before = round.book().all<RootCheck>().size();
    round.typeCheck({"2", "1", "1"});
    REQUIRE(round.book().all<RootCheck>().size() == before + 1);
    const RootCheck& check = round.book().all<RootCheck>().rbegin()->second;
    CHECK(check.examined == 2);
    CHECK(check.rooted == 1);
    CHECK(check.callused == 1);
    CHECK(check.alive == 0);
    CHECK(check.day == smallNurseryToday());
    CHECK(round.cell(0, 5) == "1 of 2 rooted");
    CHECK(round.text("checkContainer") == round.cell(1, 1));
    CHECK(round.text("roundCount").startsWith("1 of "));
    CHECK(round.atHand() == round.child<QLineEdit>("checkExamined"));
}

TEST_CASE("Undo takes the last check back and shows its container again") {
    OpenRound round;
    const QString first = round.text("checkContainer");
    round.typeCheck({"2", "1"});
    REQUIRE(round.text("checkContainer") != first);
    round.child<QAction>("undo")->trigger();
    CHECK(round.text("checkContainer") == first);
    CHECK(round.cell(0, 5).isEmpty());
    CHECK(round.text("roundCount").startsWith("0 of "));
}

TEST_CASE(
    "Ctrl Z in a field of the next container takes the last check back, but first what was typed there") {
    OpenRound round;
    REQUIRE(QTest::qWaitForWindowActive(&round.window));
    const QString first = round.text("checkContainer");
    round.typeCheck({"2", "1"});
    const QString second = round.text("checkContainer");
    REQUIRE(second != first);
    QTest::keyClicks(round.atHand(), QStringLiteral("3"));
    QTest::keyClick(round.atHand(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(round.text("checkContainer") == second);
    CHECK(round.child<QLineEdit>("checkExamined")->text().isEmpty());
    QTest::keyClick(round.atHand(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(round.text("checkContainer") == first);
    CHECK(round.text("roundCount").startsWith("0 of "));
}

TEST_CASE("More rooted than examined is said at once, and the cursor stays") {
    OpenRound round;
    round.type("2");
    round.type("3");
    CHECK(round.child<QLabel>("checkWords")->isVisible());
    CHECK(round.text("checkWords") == "3 are told of, but only 2 were examined");
    CHECK(round.atHand() == round.child<QLineEdit>("checkRooted"));
}

TEST_CASE("Roots that vanish are asked about, and written down when entered once more") {
    OpenRound round;
    auto* stops = round.child<QTreeWidget>("roundStops");
    const HouseBook& book = round.book();
    // A container in which most were rooted the day before, put into the book as a change from elsewhere.
    const Batch& batch = *findBatch(book, round.text("checkContainer").section(u'/', 0, 0).toStdString());
    const int container = round.text("checkContainer").section(u'/', 1).toInt();
    const Day yesterday = smallNurseryToday() - 1;
    const int there = standing(book, batch, container, yesterday);
    REQUIRE_FALSE(round.window.session()->perform(
        {RecordCheck{{{}, batch.id, container, yesterday, there, there, 0, 0, 0, std::nullopt, ""}}}));
    stops->setCurrentItem(stops->topLevelItem(0));
    round.child<QLineEdit>("checkExamined")->setFocus();
    const std::size_t before = book.all<RootCheck>().size();
    QTest::keyClicks(round.atHand(), QString::number(there));
    QTest::keyClick(round.atHand(), Qt::Key_Plus);
    CHECK(book.all<RootCheck>().size() == before);
    CHECK(round.text("checkWords").contains("have roots vanished?"));
    QTest::keyClick(round.atHand(), Qt::Key_Plus);
    CHECK(book.all<RootCheck>().size() == before + 1);
}

TEST_CASE("A check entered twice mends the first, and is one step of undo") {
    OpenRound round;
    round.typeCheck({"2", "0"});
    const std::size_t checks = round.book().all<RootCheck>().size();
    QTest::keyClick(round.atHand(), Qt::Key_Up);
    round.typeCheck({"2", "1", "0", "1"});
    CHECK(round.book().all<RootCheck>().size() == checks);
    CHECK(round.cell(0, 5) == "1 of 2 rooted");
    round.child<QAction>("undo")->trigger();
    CHECK(round.cell(0, 5) == "0 of 2 rooted");
}

TEST_CASE("Minus leaves a container for later") {
    OpenRound round;
    QTest::keyClick(round.atHand(), Qt::Key_Minus);
    CHECK(round.text("checkContainer") == round.cell(1, 1));
    CHECK(round.text("roundCount").startsWith("0 of "));
}

TEST_CASE("A container is thrown away only with a reason") {
    OpenRound round;
    const std::size_t losses = round.book().all<Loss>().size();
    round.child<QPushButton>("checkDiscard")->click();
    CHECK(round.text("checkWords") == "To throw it away, give the reason in the note first.");
    round.child<QLineEdit>("checkNote")->setText("grey mould");
    round.child<QPushButton>("checkDiscard")->click();
    REQUIRE(round.book().all<Loss>().size() == losses + 1);
    CHECK(round.book().all<Loss>().rbegin()->second.reason == "grey mould");
    CHECK(round.cell(0, 5) == "empty");
}

TEST_CASE("A batch that is due is weaned with one key, and undo puts it back under its cover") {
    OpenRound round;
    // All pots of one batch were looked at, and all have rooted.
    for (const auto& [id, batch] : round.book().all<Batch>()) {
        const Stay* stay = stayOn(round.book(), id, smallNurseryToday());
        if (batch.state != BatchState::Struck || !stay || stay->stage != Stage::Rooting) continue;
        if (!round.book().checksOf(id).empty()) continue;
        std::vector<Command> checks;
        for (const BatchContainer& one : batch.containers)
            checks.push_back({RecordCheck{
                {{}, id, one.number, smallNurseryToday(), one.cuttings, one.cuttings, 0, 0, 0, 4, ""}}});
        REQUIRE(!round.window.session()->perform({Group{"Look at all", checks}}));
        break;
    }
    auto* due = round.child<QTreeWidget>("roundDue");
    int row = 0;
    while (row < due->topLevelItemCount() && due->topLevelItem(row)->text(1) != "wean") ++row;
    REQUIRE(row < due->topLevelItemCount());
    const BatchId id = findBatch(round.book(), due->topLevelItem(row)->text(0).toStdString())->id;
    const HouseBook before = round.book();
    REQUIRE(stayOn(before, id, smallNurseryToday()));
    REQUIRE(stayOn(before, id, smallNurseryToday())->stage == Stage::Rooting);
    due->setFocus();
    due->setCurrentItem(due->topLevelItem(row));
    QTest::keyClick(due, Qt::Key_Enter);
    CHECK(stayOn(round.book(), id, smallNurseryToday())->stage == Stage::Weaning);
    round.child<QAction>("undo")->trigger();
    CHECK(round.book() == before);
}

TEST_CASE(
    "What the plan weaned and nobody did is due until she says that it was, on this day or on the plan's") {
    OpenRound round;
    // The plan would have weaned one batch three days ago.
    BatchId id;
    for (const auto& [stayId, stay] : round.book().all<Stay>())
        if (stay.weanedOn && stay.from <= smallNurseryToday() && smallNurseryToday() < stay.to) {
            id = stay.batch;
            Stay planned = stay;
            planned.weanedOn.reset();
            REQUIRE(!round.window.session()->perform(
                {Group{"Forget the weaning", {{RemoveStay{stayId}}, {AddStay{planned}}}}}));
            break;
        }
    REQUIRE(id.number > 0);
    const auto planned = round::weanedByPlanOnly(round.book(), id, smallNurseryToday());
    REQUIRE(planned);
    auto* due = round.child<QTreeWidget>("roundDue");
    const QString code = ui::text(round.book().get<Batch>(id).code);
    int row = 0;
    while (row < due->topLevelItemCount() && due->topLevelItem(row)->text(0) != code) ++row;
    REQUIRE(row < due->topLevelItemCount());
    CHECK(due->topLevelItem(row)->text(1) == "wean");
    due->setCurrentItem(due->topLevelItem(row));
    due->setFocus();
    auto* asPlanned = round.child<QPushButton>("dueAsPlanned");
    CHECK(asPlanned->isVisible());
    asPlanned->click();
    CHECK_FALSE(round::weanedByPlanOnly(round.book(), id, smallNurseryToday()));
    CHECK(stayOn(round.book(), id, smallNurseryToday())->weanedOn == *planned);
    round.child<QAction>("undo")->trigger();
    CHECK(round::weanedByPlanOnly(round.book(), id, smallNurseryToday()) == planned);
}

TEST_CASE("Potting on counts containers one by one, and leaves those that are left empty") {
    OpenRound round;
    round.chooseDue("pot on");
    const Batch& batch = round.dueBatch();
    const BatchId id = batch.id;
    const int container = batch.containers.front().number;
    const int there = standing(round.book(), batch, container, smallNurseryToday());
    const int all = standing(round.book(), batch, smallNurseryToday());
    REQUIRE(there > 1);
    round.child<QPushButton>("dueEnter")->click();
    CHECK(round.text("dueWords").startsWith("Nothing is counted yet"));
    const QString plants = "potPlants" + QString::number(container);
    round.child<QLineEdit>(plants.toUtf8().constData())->setFocus();
    QTest::keyClicks(round.atHand(), QString::number(there - 1));
    CHECK(round.text("dueSum").endsWith(QString("%1 plants, 1 lost").arg(there - 1)));
    round.child<QPushButton>("dueEnter")->click();
    CHECK(pottedOn(round.book(), id) >= there - 1);
    CHECK(standing(round.book(), round.book().get<Batch>(id), container, smallNurseryToday()) == 0);
    CHECK(standing(round.book(), round.book().get<Batch>(id), smallNurseryToday()) == all - there);
}

TEST_CASE("Plus pots on from any field, and part of a container stays where it is") {
    OpenRound round;
    round.chooseDue("pot on");
    const Batch batch = round.dueBatch();
    const int container = batch.containers.front().number;
    const int there = standing(round.book(), batch, container, smallNurseryToday());
    REQUIRE(there > 3);
    const QString number = QString::number(container);
    round.child<QLineEdit>(("potPlants" + number).toUtf8().constData())->setFocus();
    round.type("2");
    QTest::keyClicks(round.atHand(), "1+");
    CHECK(pottedOn(round.book(), batch.id) >= 2);
    CHECK(standing(round.book(), round.book().get<Batch>(batch.id), container, smallNurseryToday()) ==
          there - 3);
}

TEST_CASE("What is due on a day to come can be looked at, and not done") {
    OpenRound round;
    round.window.setDay(smallNurseryToday() + 1);
    const HouseBook before = round.book();
    round.chooseDue("pot on");
    QTest::keyClicks(round.child<QLineEdit>("potPlants1"), "1+");
    CHECK(round.text("dueWords").startsWith("This day is still to come"));
    round.child<QLineEdit>("dueReason")->setText("rot");
    round.child<QPushButton>("dueDiscard")->click();
    CHECK(round.text("dueWords").startsWith("This day is still to come"));
    CHECK(round.book() == before);
}

TEST_CASE(
    "What is potted on for a target that renews a stock becomes stock plants, unless that is not wanted") {
    OpenRound round;
    round.chooseDue("pot on");
    auto* asStock = round.child<QCheckBox>("dueAsStock");
    CHECK_FALSE(asStock->isVisibleTo(&round.window));
    const Batch batch = round.dueBatch();
    const auto stock = std::find_if(round.book().all<Stock>().begin(), round.book().all<Stock>().end(),
                                    [&](const auto& one) { return one.second.taxon == batch.taxon; });
    REQUIRE(stock != round.book().all<Stock>().end());
    const StockId id = stock->first;
    const int before = stock->second.plants;
    Target target;
    target.id = {};
    target.name = "R1";
    target.taxon = batch.taxon;
    target.plants = before;
    target.due = smallNurseryToday() + 30;
    target.worth = Money{200};
    target.note = season::renewalNote(stock->second);
    REQUIRE_FALSE(round.window.session()->perform({Put<Target>{target}}));
    const TargetId renewal = round.book().all<Target>().rbegin()->first;
    REQUIRE_FALSE(round.window.session()->perform({DescribeBatch{batch.id, renewal, batch.note}}));
    round.chooseDue("pot on");
    REQUIRE(round.dueBatch().id == batch.id);
    CHECK(asStock->isVisibleTo(&round.window));
    CHECK(asStock->accessibleDescription().contains(QString::fromStdString(stock->second.name)));
    const HouseBook unpotted = round.book();
    const auto potOnTwo = [&] {
        const QString plants = "potPlants" + QString::number(batch.containers.front().number);
        round.child<QLineEdit>(plants.toUtf8().constData())->setFocus();
        QTest::keyClicks(round.atHand(), "2");
        round.child<QPushButton>("dueEnter")->click();
    };
    potOnTwo();
    CHECK(round.book().get<Stock>(id).plants == before + 2);
    CHECK(round.child<QAction>("undo")->text().contains("as stock plants of"));
    round.child<QAction>("undo")->trigger();
    CHECK(round.book() == unpotted);
    round.chooseDue("pot on");
    asStock->setChecked(false);
    potOnTwo();
    CHECK(round.book().get<Stock>(id).plants == before);
    CHECK(pottedOn(round.book(), batch.id) >= 2);
}
