#include "ui/month/month_place.h"
#include "ui/month/month_chart.h"

#include "tests/ui/shown_place.h"

#include <catch2/catch.hpp>

#include <QApplication>
#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>
#include <QTextBrowser>
#include <QTimer>

using namespace warmbench;
using namespace warmbench::ui;
using warmbench::testing::on;
using warmbench::testing::SeasonBook;

namespace {

/// The month of the small nursery of planning, in sight.
struct ShownMonth : tests::ShownPlace<MonthPlace> {
    ShownMonth() {
        place.resize(1100, 600);
        place.show();
    }
    BatchId plan(Day day, int row) {
        const BatchId id = nursery.book.nextId<Batch>();
        Batch batch;
        batch.taxon = nursery.taxon;
        batch.recipe = warmbench::testing::semiRipe(nursery.taxon);
        batch.stock = nursery.stock;
        batch.strikeDay = day;
        batch.containerType = nursery.pot;
        batch.containers = {{1, 5}};
        Stay stay;
        stay.zone = nursery.warm;
        stay.from = day;
        stay.to = day + 40;
        stay.places = {{1, {row, 0, 1, 1}}};
        REQUIRE(nursery.book.perform(Command{AddBatch{batch, {stay}}}));
        return id;
    }
    template <class Widget>
    Widget* child(const char* name) {
        return place.findChild<Widget*>(QLatin1String(name));
    }
    [[nodiscard]] Day strikeDay(BatchId id) const { return nursery.book.get<Batch>(id).strikeDay; }
};

} // namespace

TEST_CASE("A batch is moved to another day by keys, after what that does is said") {
    ShownMonth month;
    const BatchId id = month.plan(on(8, 4), 0);
    month.show();
    auto* chart = month.child<MonthChart>("monthChart");
    auto* words = month.child<QLabel>("monthWords");
    auto* refusal = month.child<QLabel>("monthRefusal");
    REQUIRE(chart->current() == 0);
    CHECK(words->text().contains("to be struck on Wednesday 4 August 2027"));
    QTest::keyClick(chart, Qt::Key_Right);
    CHECK(words->text().startsWith("To Thursday 5 August 2027; its slots are free on 14 Sep"));
    CHECK(month.strikeDay(id) == on(8, 4));
    QTest::keyClick(chart, Qt::Key_Escape);
    CHECK(words->text().contains("4 August"));
    for (int i = 0; i < 3; ++i) QTest::keyClick(chart, Qt::Key_Right);
    CHECK(refusal->text().contains("5 cuttings on a day with hands for 0")); // a Saturday
    for (int i = 0; i < 2; ++i) QTest::keyClick(chart, Qt::Key_Right);
    QTest::keyClick(chart, Qt::Key_Return);
    CHECK(month.strikeDay(id) == on(8, 9));
}

TEST_CASE("A batch is dragged to another day, and stays where it is when it can't stand there") {
    ShownMonth month;
    const BatchId first = month.plan(on(8, 4), 0);
    const BatchId other = month.plan(on(8, 5), 1);
    month.show();
    auto* chart = month.child<MonthChart>("monthChart");
    const auto drag = [&](int line, Day from, Day to) {
        QTest::mousePress(chart->viewport(), Qt::LeftButton, {}, chart->pointOf(line, from));
        QTest::mouseMove(chart->viewport(), chart->pointOf(line, to));
        QTest::mouseRelease(chart->viewport(), Qt::LeftButton, {}, chart->pointOf(line, to));
    };
    drag(0, on(8, 4), on(8, 10));
    CHECK(month.strikeDay(first) == on(8, 10));
    CHECK(month.strikeDay(other) == on(8, 5));
    // Another batch is to stand on its slot from 23 August: the pot of the row's first batch in the way.
    month.plan(on(9, 20), 0);
    month.show();
    drag(1, on(8, 10), on(8, 24));
    CHECK(month.strikeDay(first) == on(8, 10));
    CHECK_FALSE(month.child<QLabel>("monthRefusal")->text().isEmpty());
}

TEST_CASE("The month says what hands and medium it takes, and which targets still want striking") {
    ShownMonth month;
    month.plan(on(8, 4), 0);
    month.nursery.want(40, on(12, 1));
    month.show();
    const QString sums = month.child<QTextBrowser>("monthSums")->toPlainText();
    CHECK(sums.contains("5 of 8,000 cuttings that hands can strike are taken."));
    CHECK(sums.contains("1 target still wants striking."));
    CHECK(sums.contains("0.5 l of coir"));
    auto* chart = month.child<MonthChart>("monthChart");
    QTest::keyClick(chart, Qt::Key_Down);
    CHECK(month.child<QLabel>("monthWords")->text().startsWith("T1 still wants "));
    month.child<QSpinBox>("monthWeeks")->setValue(12);
    CHECK(month.child<QTextBrowser>("monthSums")->toPlainText().contains("5 of 24,000"));
}

TEST_CASE("A holiday is set by the keys of its dialog, and taken back by them") {
    ShownMonth month;
    month.plan(on(8, 4), 0);
    month.show();
    const auto answer = [&](int kind, int days = 1) {
        QTimer::singleShot(0, [kind, days] {
            auto* dialog = QApplication::activeModalWidget();
            REQUIRE(dialog);
            dialog->findChild<QSpinBox*>("handsDays")->setValue(days);
            auto* box = dialog->findChild<QComboBox*>("handsKind");
            box->setCurrentIndex(kind);
            Q_EMIT box->activated(kind);
            QTest::keyClick(dialog, Qt::Key_Return);
        });
        month.child<QPushButton>("monthHands")->click();
    };
    answer(1);
    CHECK(season::handsOn(month.nursery.book, on(8, 4)).hands == 0);
    CHECK(season::handsOn(month.nursery.book, on(8, 4)).note == "holiday");
    CHECK(month.child<QTextBrowser>("monthSums")
              ->toPlainText()
              .contains("More than there are hands for: 4 Aug."));
    answer(0);
    CHECK_FALSE(season::handsOn(month.nursery.book, on(8, 4)).special);
    // A week of holidays from Wednesday on: five working days, the weekend as it is.
    answer(1, 7);
    CHECK(month.nursery.book.all<HandDay>().size() == 5);
    CHECK(season::handsOn(month.nursery.book, on(8, 10)).hands == 0);
    answer(0, 7);
    CHECK(month.nursery.book.all<HandDay>().empty());
}

TEST_CASE("Weeks that have gone are not planned, and the month says so") {
    ShownMonth month;
    month.show();
    month.child<QDateEdit>("monthFrom")->setDate(QDate(2027, 6, 7));
    for (const char* button : {"monthPlan", "monthWhatIf"}) {
        month.child<QPushButton>(button)->click();
        CHECK(month.child<QLabel>("monthRefusal")->text() ==
              "These weeks have gone; choose a later first day.");
    }
}
