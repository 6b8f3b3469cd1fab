#include "ui/away/homecoming_dialog.h"

#include "tests/support/small_book.h"
#include "tests/ui/clipped.h"
#include "tests/ui/german.h"
#include "tests/ui/window.h"

#include <catch2/catch.hpp>

#include <QApplication>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTreeWidget>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

RootCheck lookedAt(const SmallBook& small, int container, int rooted) {
    return {{}, small.struck, container, day("2027-03-20"), 5, rooted, 0, 5 - rooted, 0, std::nullopt, ""};
}

/// The dialog on the small book and a copy of it.
struct Homecoming {
    SmallBook small = smallBook();
    HouseBook copy = small.book;
    Outcome refusal;
    int performed = 0;
    std::unique_ptr<ui::HomecomingDialog> dialog;

    void show() {
        dialog = std::make_unique<ui::HomecomingDialog>(
            small.book, QStringLiteral("nursery.warmbench"), ui::AwayContent{copy, {}},
            QStringLiteral("/media/stick/laptop.warmbench"), ui::Wording(),
            [this](const Command& command) -> Outcome {
                if (refusal) return refusal;
                ++performed;
                const auto change = small.book.perform(command);
                return change ? std::nullopt : Outcome(change.refusal());
            },
            nullptr);
        dialog->show();
        QApplication::processEvents();
    }
    template <class Widget>
    Widget* child(const char* name) {
        return dialog->findChild<Widget*>(QLatin1String(name));
    }
};

} // namespace

TEST_CASE("A round that is to come home is shown batch by batch, and nothing is stored before it is wanted") {
    Homecoming home;
    perform(home.copy, {RecordCheck{lookedAt(home.small, 1, 4)}});
    perform(home.copy, {RecordCheck{lookedAt(home.small, 3, 5)}});
    perform(home.copy, {Discard{home.small.struck, day("2027-03-22"), {2}, "grey mould"}});
    const HouseBook before = home.small.book;
    home.show();
    CHECK(home.child<QLabel>("homecomingSum")->text() ==
          QStringLiteral("Root checks: 2. Losses: 1. Weanings: 0. Pottings on: 0."));
    const auto* item = home.child<QTreeWidget>("homecomingBatches")->topLevelItem(0);
    REQUIRE(item);
    CHECK(item->text(0) == QStringLiteral("27-046-A"));
    CHECK(item->text(1) == QStringLiteral("2"));
    CHECK(item->text(2) == QStringLiteral("1"));
    CHECK(item->text(3).isEmpty());
    CHECK(item->text(6).startsWith(QStringLiteral("Abelia")));
    CHECK(!home.child<QListWidget>("homecomingConflicts")->isVisible());
    auto* bring = home.child<QPushButton>("homecomingBring");
    CHECK(bring->text() == QStringLiteral("&Bring it home"));
    CHECK(home.small.book == before);
    bring->click();
    CHECK(home.performed == 1);
    CHECK(home.dialog->result() == QDialog::Accepted);
    CHECK(home.small.book.all<RootCheck>() == home.copy.all<RootCheck>());
}

TEST_CASE("Each conflict of a round is told in words, and all but them come home") {
    Homecoming home;
    perform(home.copy, {RecordCheck{lookedAt(home.small, 1, 4)}});
    perform(home.copy, {RecordCheck{lookedAt(home.small, 3, 5)}});
    perform(home.small.book, {RecordCheck{lookedAt(home.small, 1, 3)}});
    home.show();
    const auto* conflicts = home.child<QListWidget>("homecomingConflicts");
    REQUIRE(conflicts->count() == 1);
    CHECK(
        conflicts->item(0)->text().contains(QStringLiteral("3 of 5 rooted here, 4 of 5 rooted in the copy")));
    CHECK(home.child<QLabel>("homecomingConflictWords")->text().contains(QStringLiteral("In conflict: 1.")));
    auto* bring = home.child<QPushButton>("homecomingBring");
    CHECK(bring->text() == QStringLiteral("&Bring home all but the conflicts"));
    bring->click();
    CHECK(home.small.book.all<RootCheck>().size() == 2);
}

TEST_CASE("A copy with nothing new, and one that is all conflict, can only be closed") {
    Homecoming home;
    home.show();
    CHECK(
        home.child<QLabel>("homecomingSum")->text().startsWith(QStringLiteral("There is nothing new in it")));
    CHECK(!home.child<QPushButton>("homecomingBring")->isVisible());
    CHECK(home.child<QPushButton>("homecomingLeave")->isDefault());
    perform(home.copy, {RecordCheck{lookedAt(home.small, 1, 4)}});
    perform(home.small.book, {RecordCheck{lookedAt(home.small, 1, 3)}});
    home.show();
    CHECK(home.child<QLabel>("homecomingSum")
              ->text()
              .startsWith(QStringLiteral("Nothing of it can be brought")));
    CHECK(!home.child<QPushButton>("homecomingBring")->isEnabled());
    home.dialog->accept();
    CHECK(home.performed == 0);
}

TEST_CASE("A round that the book refuses stays in sight with the reason") {
    Homecoming home;
    perform(home.copy, {RecordCheck{lookedAt(home.small, 1, 4)}});
    home.refusal = Refusal{{}, "somebody was faster"};
    home.show();
    home.child<QPushButton>("homecomingBring")->click();
    CHECK(home.dialog->isVisible());
    CHECK(home.child<QLabel>("homecomingRefusal")->text() == QStringLiteral("somebody was faster"));
    home.child<QPushButton>("homecomingLeave")->click();
    CHECK(home.performed == 0);
}

TEST_CASE("The words of a homecoming have room in English, German and longer ones") {
    for (const int language : {0, 1, 2}) {
        LongerWords longer;
        if (language == 2) QApplication::installTranslator(&longer);
        const auto german = language == 1 ? std::make_unique<InGerman>() : nullptr;
        Homecoming home;
        perform(home.copy, {RecordCheck{lookedAt(home.small, 1, 4)}});
        perform(home.copy, {RecordCheck{lookedAt(home.small, 3, 5)}});
        perform(home.small.book, {RecordCheck{lookedAt(home.small, 1, 3)}});
        home.show();
        INFO(language);
        CHECK(clippedTexts(*home.dialog).join(u'\n').toStdString().empty());
        if (german)
            CHECK(home.child<QPushButton>("homecomingBring")->text() != "&Bring home all but the conflicts");
        if (language == 2) QApplication::removeTranslator(&longer);
    }
}

TEST_CASE("A book that can't be copied offers neither to take a copy nor to bring one home") {
    OpenWindow home;
    for (const char* name : {"takeCopy", "bringHome"}) CHECK(!home.child<QAction>(name)->isEnabled());
}
