#include "tests/ui/window.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDialog>
#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>

#include <functional>

using namespace warmbench;
using namespace warmbench::tests;
using namespace warmbench::ui;

namespace {

/// The window, and dialogs answered while they run.
struct WindowWithDrafts : OpenWindow {
    const HouseBook& book = window.session()->book();

    bool offers() { return child<QFrame>("draftBar")->isVisible(); }
    QString words() { return child<QLabel>("draftWords")->text(); }
    void goOn() { child<QPushButton>("draftGoOn")->click(); }
    /// Opens what a button of a place opens, and works in it.
    void in(const char* place, const char* button, const std::function<void(QWidget&)>& work) {
        child<QAction>(place)->trigger();
        during(work);
        child<QPushButton>(button)->click();
    }
    void during(const std::function<void(QWidget&)>& work) {
        QTimer::singleShot(0, [this, work] {
            QWidget* dialog = QApplication::activeModalWidget();
            if (!dialog) return;
            worked = true;
            work(*dialog);
        });
    }
    bool worked = false;
};

/// Escape in a dialog, and the answer to its question; whether there was one.
bool escape(QWidget& dialog, const char* answer) {
    bool asked = false;
    QTimer::singleShot(0, [&] {
        QWidget* question = QApplication::activeModalWidget();
        auto* button = question ? question->findChild<QPushButton*>(QLatin1String(answer)) : nullptr;
        if (!button) return;
        asked = true;
        button->click();
    });
    QTest::keyClick(&dialog, Qt::Key_Escape);
    QApplication::processEvents();
    return asked;
}

void chooseRow(QTreeWidget& list, const QString& words) {
    const auto found = list.findItems(words, Qt::MatchStartsWith | Qt::MatchRecursive);
    REQUIRE_FALSE(found.isEmpty());
    list.setCurrentItem(found.front());
}

} // namespace

TEST_CASE("A form that is left by Escape asks what is to become of what was typed, an empty one does not") {
    WindowWithDrafts open;
    open.in("targets", "targetsNew", [](QWidget& dialog) {
        CHECK_FALSE(escape(dialog, "leaveStay"));
        CHECK_FALSE(dialog.isVisible());
    });
    REQUIRE(open.worked);
    open.worked = false;
    open.in("targets", "targetsNew", [](QWidget& dialog) {
        dialog.findChild<QLineEdit*>(QStringLiteral("targetNote"))->setText(QStringLiteral("for the hedge"));
        CHECK(escape(dialog, "leaveStay"));
        CHECK(dialog.isVisible());
        CHECK(escape(dialog, "leaveAside"));
        CHECK_FALSE(dialog.isVisible());
    });
    REQUIRE(open.worked);
    REQUIRE(open.offers());
    CHECK(open.words().contains(QStringLiteral("a new target")));

    open.worked = false;
    open.during([](QWidget& dialog) {
        CHECK(dialog.findChild<QLineEdit*>(QStringLiteral("targetNote"))->text() ==
              QStringLiteral("for the hedge"));
        CHECK(escape(dialog, "leaveDrop"));
    });
    open.goOn();
    CHECK(open.worked);
    CHECK_FALSE(open.offers());
}

TEST_CASE("A pasted list is put aside and gone on with, columns and all") {
    WindowWithDrafts open;
    open.in("targets", "targetsList", [](QWidget& dialog) {
        dialog.findChild<QPlainTextEdit*>(QStringLiteral("listText"))
            ->setPlainText(QStringLiteral("daisy bush\t60\t1/12/2027\t12\n"));
        dialog.findChild<QComboBox*>(QStringLiteral("listOrder"))->setCurrentIndex(2);
        dialog.findChild<QComboBox*>(QStringLiteral("listColumn4"))->setCurrentIndex(0);
        CHECK(escape(dialog, "leaveAside"));
    });
    REQUIRE(open.offers());
    CHECK(open.words().contains(QStringLiteral("a pasted list")));
    open.worked = false;
    open.during([](QWidget& dialog) {
        CHECK(dialog.findChild<QPlainTextEdit*>(QStringLiteral("listText"))
                  ->toPlainText()
                  .startsWith(QStringLiteral("daisy bush")));
        CHECK(dialog.findChild<QComboBox*>(QStringLiteral("listOrder"))->currentIndex() == 2);
        CHECK(dialog.findChild<QComboBox*>(QStringLiteral("listColumn4"))->currentIndex() == 0);
        CHECK(escape(dialog, "leaveDrop"));
    });
    open.goOn();
    CHECK(open.worked);
}

TEST_CASE(
    "Hands that are typed and left for a new house are offered, and over a newer name only they are put") {
    WindowWithDrafts open;
    open.child<QAction>("setup")->trigger();
    auto* list = open.child<QTreeWidget>("setupList");
    chooseRow(*list, QStringLiteral("Nursery and hands"));
    open.child<QSpinBox>("hands2")->setValue(417);
    open.child<QPushButton>("addHouse")->click();
    REQUIRE(open.offers());
    CHECK(open.words().contains(QStringLiteral("Nursery and hands")));
    Nursery renamed = open.book.nursery();
    renamed.name = "Lower yard";
    REQUIRE_FALSE(open.window.session()->perform({Put<Nursery>{renamed}}));
    open.goOn();
    CHECK_FALSE(open.offers());
    CHECK(open.child<QSpinBox>("hands2")->value() == 417);
    CHECK(open.child<QLineEdit>("nurseryName")->text() == QStringLiteral("Lower yard"));
    open.child<QPushButton>("keepThing")->click();
    CHECK(open.book.nursery().strikesByWeekday[2] == 417);
    CHECK(open.book.nursery().name == "Lower yard");
    chooseRow(*list, QStringLiteral("Containers"));
    CHECK_FALSE(open.offers());
}

TEST_CASE(
    "What was typed about a thing that is undone meanwhile can't be gone on with: it is copied or dropped") {
    WindowWithDrafts open;
    open.child<QAction>("setup")->trigger();
    open.child<QPushButton>("addHouse")->click();
    open.child<QLineEdit>("houseName")->setText(QStringLiteral("Tunnel 9"));
    open.child<QPushButton>("keepThing")->click();
    REQUIRE_FALSE(open.offers());
    auto* name = open.child<QLineEdit>("houseName");
    name->setText(QStringLiteral("Tunnel 9, the far one"));
    open.child<QAction>("undo")->trigger();
    REQUIRE(open.offers());
    open.goOn();
    REQUIRE(open.offers());
    INFO(open.words().toStdString());
    CHECK(open.words().contains(QStringLiteral("not in the book any more")));
    open.goOn();
    CHECK(QGuiApplication::clipboard()->text().contains(QStringLiteral("Tunnel 9, the far one")));
    open.child<QPushButton>("draftDrop")->click();
    CHECK_FALSE(open.offers());
}
