#include "app/window/last_book.h"

#include "tests/app/storage/book_folder.h"
#include "tests/app/window/comes.h"
#include "tests/support/small_book.h"
#include "ui/shell/main_window.h"

#include <catch2/catch.hpp>

#include <QDir>

using namespace warmbench;
using namespace warmbench::tests;

TEST_CASE("The book that was opened or made last in the window is the one to begin with") {
    const BookFolder folder;
    const QString opened = QString::fromStdString(folder.smallBookFile());
    const QString made = QString::fromStdString(folder.filePath("made anew.warmbench"));
    NoKeys keys;
    app::LastBookOpener opener(keys);
    ui::MainWindow window(opener, day("2027-03-01"));
    REQUIRE(!window.openBook(opened));
    CHECK(app::lastBook() == opened);
    REQUIRE(opener.create(made));
    CHECK(app::lastBook() == made);
    // One that can't be opened is not remembered, and one named from where the program stands with its path.
    CHECK_FALSE(opener.open(opened + QStringLiteral(".none")));
    CHECK(app::lastBook() == made);
    REQUIRE(opener.open(QDir::current().relativeFilePath(opened)));
    CHECK(app::lastBook() == opened);
}
