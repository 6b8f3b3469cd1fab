#include "tests/ui/window.h"

#include "core/book/query.h"
#include "ui/paper/strike_list.h"
#include "ui/shell/find_box.h"

#include <catch2/catch.hpp>

#include <QAbstractItemView>
#include <QApplication>
#include <QCompleter>
#include <QTest>

using namespace warmbench;
using namespace warmbench::tests;
using namespace warmbench::ui;

TEST_CASE("Two batches side by side are told places that do not overlap") {
    const HouseBook book = smallNursery();
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.code != "27-036-A") continue;
        const QString words = placeText(book, *staysInOrder(book, id).front(), Wording(QLocale::c()));
        CHECK(words.endsWith(QStringLiteral(", row 1, columns 12 to 15; rows 2 to 6, columns 11 to 14")));
        return;
    }
    FAIL("the sample has no batch 27-036-A");
}

TEST_CASE("The list under the find field stays inside the window") {
    OpenWindow open({1280, 720});
    auto* find = open.child<FindBox>("find");
    find->setFocus();
    QTest::keyClicks(find, QStringLiteral("os"));
    const QWidget* list = find->completer()->popup();
    REQUIRE(QTest::qWaitFor([&] { return list->isVisible(); }));
    QApplication::processEvents();
    CHECK(list->x() >= open.window.mapToGlobal(QPoint(0, 0)).x());
    CHECK(list->x() + list->width() <= open.window.mapToGlobal(QPoint(open.window.width(), 0)).x());
}

TEST_CASE("What is to be had ready tells how a dip is made, and says nothing of powder or of no hormone") {
    season::Materials materials;
    materials.cuttingsByHormone = {
        {"IBA 500-1000 ppm, quick dip", 115}, {"IBA 1000-3000 ppm, powder", 40}, {"none", 9}};
    const QString told =
        ui::materialsHtml(materials, ui::Wording(QLocale(QLocale::English, QLocale::UnitedKingdom)));
    CHECK(told.contains(
        QStringLiteral("hormone for 115 cuttings: IBA 500-1000 ppm, quick dip; for 100 ml of dip 5 to "
                       "10 ml of a concentrate of 10,000 ppm, made up as its label says")));
    CHECK(told.contains(QStringLiteral("hormone for 40 cuttings: IBA 1000-3000 ppm, powder</li>")));
    CHECK(told.count(QStringLiteral("hormone for")) == 2);
}
