#include "app/window/file_session.h"
#include "app/window/open_shared.h"
#include "tests/app/storage/book_folder.h"
#include "tests/app/storage/postgres_server.h"
#include "tests/support/small_book.h"
#include "ui/shell/main_window.h"
#include "ui/shell/shared_book_dialog.h"

#include <catch2/catch.hpp>

#include <QComboBox>
#include <QLineEdit>

#include <fstream>
#include <map>
#include <sstream>

using namespace warmbench;
using namespace warmbench::tests;
using app::OpenMode;

namespace {

/// A key store in memory.
class KeysInMemory : public app::PasswordKeeper {
public:
    std::string find(const std::string& address) override { return kept[address]; }
    Outcome keep(const std::string& address, const std::string& password) override {
        kept[address] = password;
        return std::nullopt;
    }
    std::map<std::string, std::string> kept;
};

const std::string secret = "gr%C3%BCn%3Azwei@7";

/// A server that asks for passwords, with a book on it for `anna`.
struct GuardedBook {
    PostgresServer server{PostgresServer::Options{true, false}};
    std::string database = PostgresServer::databaseOf(server.newDatabase());

    GuardedBook() {
        REQUIRE(!app::BookFile::create(server.address(database), smallBook().book));
        server.run(database, "CREATE ROLE anna LOGIN PASSWORD 'grün:zwei@7'");
        server.run(database, "GRANT " + database + "_plan TO anna");
    }
    [[nodiscard]] std::string address() const { return server.address(database, "anna"); }
    [[nodiscard]] std::string withSecret() const { return server.address(database, "anna:" + secret); }
};

} // namespace

TEST_CASE("A password goes to the key store, is taken from there, and stands nowhere else") {
    GuardedBook book;
    KeysInMemory keys;
    const auto without = app::openBookWith(keys, book.address(), OpenMode::Write);
    REQUIRE(!without);
    CHECK(without.refusal().what.text().find("password") != std::string::npos);
    const auto wrong =
        app::openBookWith(keys, book.server.address(book.database, "anna:not-this-one"), OpenMode::Write);
    REQUIRE(!wrong);
    CHECK(wrong.refusal().text().find("not-this-one") == std::string::npos);
    CHECK(keys.kept[book.address()].empty());
    {
        const auto open = app::openBookWith(keys, book.withSecret(), OpenMode::Write);
        REQUIRE(open);
        CHECK((*open)->path() == book.address());
        REQUIRE(!(*open)->perform(handsOf(1)));
        CHECK((*open)->journal()->back().who == "anna");
    }
    CHECK(keys.kept[book.address()] == "grün:zwei@7");
    const auto again = app::openBookWith(keys, book.address(), OpenMode::Write);
    REQUIRE(again);
    CHECK((*again)->book().all<HandDay>().size() == 1);
    CHECK(app::shownName(QString::fromStdString(book.withSecret())).toStdString() == book.address());
}

TEST_CASE("A window on a shared book shows its name without the password") {
    GuardedBook book;
    KeysInMemory keys;
    app::FileOpener opener(keys);
    ui::MainWindow window(opener, day("2027-03-01"));
    REQUIRE(!window.openBook(QString::fromStdString(book.withSecret())));
    CHECK(window.windowTitle() == QString::fromStdString(book.database) + QStringLiteral(" - Warmbench"));
    CHECK(window.session()->name() == QString::fromStdString(book.database));
}

TEST_CASE("What is typed for a shared book becomes its address") {
    ui::SharedBookDialog dialog;
    const auto type = [&](const char* name, const QString& text) {
        dialog.findChild<QLineEdit*>(QLatin1String(name))->setText(text);
    };
    type("server", QStringLiteral("books.example:5433"));
    type("book", QStringLiteral("the nursery"));
    type("user", QStringLiteral("anna"));
    type("password", QString::fromUtf8("grün:zwei@7"));
    CHECK(dialog.address().toStdString() == "postgresql://anna:"
                                            "gr%C3%BCn%3Azwei%407"
                                            "@books.example:5433/the%20nursery?sslmode=verify-full");
    dialog.findChild<QComboBox*>(QStringLiteral("safety"))->setCurrentIndex(1);
    type("password", {});
    CHECK(dialog.address().toStdString() ==
          "postgresql://anna@books.example:5433/the%20nursery?sslmode=require");
}
