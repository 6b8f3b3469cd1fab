#include "tests/ui/season_window.h"

#include <QIntValidator>
#include <QLineEdit>
#include <QPointer>
#include <QRegularExpression>
#include <QTreeWidget>

namespace warmbench::tests {

void planAndAccept(SeasonWindow& nursery) {
    const HouseBook before = nursery.book();
    nursery.child<QAction>("planDays")->trigger();
    const QPointer<QDialog> dialog(nursery.child<QDialog>("planDialog"));
    auto* plan = in<QPushButton>(*dialog, "planStart");
    QTest::mouseClick(plan, Qt::LeftButton);
    CHECK(QTest::qWaitFor([&] { return plan->isEnabled(); }, 60000));
    auto* accept = in<QPushButton>(*dialog, "planAccept");
    // What is proposed lies over the map, and the book is as it was.
    CHECK((nursery.window.shown() == before) == !accept->isEnabled());
    CHECK(nursery.book() == before);
    QTest::mouseClick(accept, Qt::LeftButton);
    if (dialog && dialog->isVisible()) dialog->reject();
}

namespace {

void enterCheck(SeasonWindow& nursery, const QString& found) {
    nursery.child<QLineEdit>("checkExamined")->setFocus();
    for (const QString& keys : {found, found, QString(), QString(), QString(), QString(), QString()}) {
        QTest::keyClicks(nursery.window.focusWidget(), keys);
        QTest::keyClick(nursery.window.focusWidget(), Qt::Key_Enter);
    }
}

void enterDue(SeasonWindow& nursery, QTreeWidget& due, QTreeWidgetItem* item) {
    due.setCurrentItem(item);
    Q_EMIT due.itemClicked(item, 0);
    const auto counts =
        nursery.window.findChildren<QLineEdit*>(QRegularExpression(QStringLiteral("^potPlants")));
    for (QLineEdit* plants : counts) {
        plants->setFocus();
        QTest::keyClicks(plants,
                         QString::number(qobject_cast<const QIntValidator*>(plants->validator())->top()));
    }
    nursery.click("dueEnter");
}

bool speaksOf(const QTreeWidgetItem& item, const QString& code) {
    for (int column = 0; column < item.columnCount(); ++column)
        if (item.text(column).contains(code)) return true;
    return false;
}

} // namespace

void checkAll(SeasonWindow& nursery, const QString& code) {
    nursery.go("round");
    auto* stops = nursery.child<QTreeWidget>("roundStops");
    for (int stop = 0; stop < stops->topLevelItemCount(); ++stop) {
        if (!speaksOf(*stops->topLevelItem(stop), code)) continue;
        stops->setCurrentItem(stops->topLevelItem(stop));
        enterCheck(nursery, stops->topLevelItem(stop)->text(4));
    }
}

void doDue(SeasonWindow& nursery, const QString& code) {
    nursery.go("round");
    auto* due = nursery.child<QTreeWidget>("roundDue");
    for (int row = 0; row < due->topLevelItemCount();) {
        const int before = due->topLevelItemCount();
        if (speaksOf(*due->topLevelItem(row), code)) enterDue(nursery, *due, due->topLevelItem(row));
        if (due->topLevelItemCount() == before) ++row; // it is no longer there once it is done
    }
}

} // namespace warmbench::tests
