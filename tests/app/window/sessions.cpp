#include "app/window/file_session.h"
#include "tests/app/storage/book_folder.h"
#include "tests/app/storage/postgres_server.h"
#include "tests/app/window/comes.h"
#include "tests/support/small_book.h"
#include "ui/shell/main_window.h"

#include <catch2/catch.hpp>

#include <QLabel>
#include <QStatusBar>

#include <filesystem>

using namespace warmbench;
using namespace warmbench::tests;
using app::FileSession;
using app::OpenMode;

TEST_CASE("What others do in a book comes to a session by itself") {
    const BookFolder folder(GENERATE(Kept::InFiles, Kept::Shared));
    const std::string file = folder.smallBookFile();
    FileSession session(opened(file, OpenMode::Write));
    int heard = 0;
    QObject::connect(&session, &ui::BookSession::changed, [&] { ++heard; });
    const auto other = opened(file, OpenMode::Write);
    REQUIRE(!other->perform(handsOf(1)));
    REQUIRE(comes([&] { return heard == 1; }));
    CHECK(session.book() == other->book());
    REQUIRE(!session.perform(handsOf(2)));
    CHECK(heard == 2);
    CHECK(session.onlyReadWhy().isEmpty());
}

TEST_CASE("A lost connection turns a session to reading only, and it catches up when the server is back") {
    PostgresServer server;
    const std::string address = server.newDatabase();
    REQUIRE(!app::BookFile::create(address, smallBook().book));
    FileSession session(opened(address, OpenMode::Write));
    int standings = 0;
    QObject::connect(&session, &ui::BookSession::standingChanged, [&] { ++standings; });
    REQUIRE(!session.perform(handsOf(1)));
    server.stop();
    const auto refusal = session.perform(handsOf(2));
    REQUIRE(refusal);
    INFO(refusal->text());
    REQUIRE(comes([&] { return !session.onlyReadWhy().isEmpty(); }));
    CHECK(session.onlyReadWhy().startsWith(QStringLiteral("The connection to the shared book is lost.")));
    CHECK(session.perform(handsOf(2))->what == session.onlyReadWhy().toStdString());
    CHECK(session.undo());
    CHECK(session.book().all<HandDay>().size() == 1);
    server.start();
    {
        const auto other = opened(address, OpenMode::Write);
        REQUIRE(!other->perform(handsOf(7)));
    }
    REQUIRE(comes([&] { return session.onlyReadWhy().isEmpty(); }));
    CHECK(standings == 2);
    CHECK(session.book().all<HandDay>().size() == 2);
    REQUIRE(!session.perform(handsOf(2)));
    // It hears of others as before.
    const auto other = opened(address, OpenMode::Write);
    REQUIRE(!other->perform(handsOf(8)));
    REQUIRE(comes([&] { return session.book().all<HandDay>().size() == 4; }));
    CHECK(other->check().empty());
}

TEST_CASE("A book's file that is taken away under a session is read only until it is back") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    FileSession session(opened(file, OpenMode::Write));
    std::filesystem::rename(file, file + ".away");
    CHECK(session.perform(handsOf(1)));
    CHECK(session.onlyReadWhy().startsWith(QStringLiteral("The book's file has been moved")));
    CHECK(!std::filesystem::exists(file));
    std::filesystem::rename(file + ".away", file);
    REQUIRE(comes([&] { return session.onlyReadWhy().isEmpty(); }));
    REQUIRE(!session.perform(handsOf(1)));
    CHECK(opened(file, OpenMode::Read)->book() == session.book());
}

TEST_CASE("The window says that a book can only be read, and for how long") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    NoKeys keys;
    app::FileOpener opener(keys);
    ui::MainWindow window(opener, day("2027-03-01"));
    REQUIRE(!window.openBook(QString::fromStdString(file)));
    window.show();
    auto* note = window.findChild<QLabel*>(QStringLiteral("onlyRead"));
    REQUIRE(note);
    CHECK(!note->isVisible());
    std::filesystem::rename(file, file + ".away");
    REQUIRE(comes([&] { return note->isVisible(); }));
    CHECK(note->text() == window.session()->onlyReadWhy());
    std::filesystem::rename(file + ".away", file);
    REQUIRE(comes([&] { return !note->isVisible(); }));
}
