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
