#include "app/window/file_session.h"
#include "tests/app/storage/book_folder.h"
#include "tests/app/storage/postgres_server.h"
#include "tests/app/window/comes.h"
#include "tests/support/small_book.h"
#include "ui/shell/main_window.h"

#include <catch2/catch.hpp>

#include <QFile>
#include <QStandardPaths>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

using namespace warmbench;
using namespace warmbench::tests;
using app::OpenMode;

namespace {

namespace fs = std::filesystem;

const std::string secret = "dibber-7-trowel";

PostgresServer::Options onPort(bool tls) {
    PostgresServer::Options options;
    options.onPort = true;
    options.speaksTls = tls;
    return options;
}

/// A server on a loopback port with a book for `anna`, who has a password.
struct PortBook {
    PostgresServer server;
    std::string database;

    explicit PortBook(bool tls) : server(onPort(tls)) {
        const std::string address = server.newDatabase();
        database = PostgresServer::databaseOf(address);
        REQUIRE(!app::BookFile::create(address, smallBook().book));
        server.run(database, "CREATE ROLE anna LOGIN PASSWORD '" + secret + "'");
        server.run(database, "GRANT " + database + "_plan TO anna");
    }
    [[nodiscard]] std::string address(const std::string& settings,
                                      const std::string& host = "localhost") const {
        return server.portAddress(host, database, "anna:" + secret) + "?" + settings;
    }
    [[nodiscard]] std::string whyNot(const std::string& settings,
                                     const std::string& host = "localhost") const {
        const auto book = app::BookFile::open(address(settings, host), OpenMode::Write);
        return book ? std::string() : book.refusal().text();
    }
    /// Whether all connections of anna that are open are encrypted; empty where there is none.
    [[nodiscard]] std::string encrypted() const {
        std::string answer;
        const std::string said = server.ask(
            "postgres", {},
            "SELECT CASE WHEN bool_and(ssl) THEN 'yes' ELSE 'no' END FROM pg_stat_ssl JOIN pg_stat_activity "
            "USING (pid) WHERE usename = 'anna'",
            answer);
        REQUIRE(said.empty());
        return answer;
    }
};

std::string contentOf(const fs::path& file) {
    std::ostringstream content;
    content << std::ifstream(file, std::ios::binary).rdbuf();
    return content.str();
}

/// The files under a folder that hold a text.
std::vector<std::string> filesWith(const fs::path& folder, const std::string& text) {
    std::vector<std::string> found;
    std::error_code none;
    for (const auto& entry : fs::recursive_directory_iterator(folder, none))
        if (entry.is_regular_file() && contentOf(entry.path()).find(text) != std::string::npos)
            found.push_back(entry.path().string());
    return found;
}

} // namespace

TEST_CASE("sslmode=require encrypts the connection, and is refused by a server that can't") {
    const PortBook private_(true);
    {
        const auto book = opened(private_.address("sslmode=require"), OpenMode::Write);
        CHECK(private_.encrypted() == "yes");
        REQUIRE(!book->perform(handsOf(1)));
    }
    const PortBook plain(false);
    const std::string why = plain.whyNot("sslmode=require");
    INFO(why);
    CHECK(why.find("SSL") != std::string::npos);
    CHECK(why.find(secret) == std::string::npos);
    // The address, not the program, decides: inside one's own walls it may be plain.
    const auto book = opened(plain.address("sslmode=prefer"), OpenMode::Write);
    CHECK(plain.encrypted() == "no");
}

TEST_CASE("sslmode=verify-full wants the certificate to be known and to name the server") {
    const PortBook book(true);
    const std::string known = "sslmode=verify-full&sslrootcert=" + book.server.certificate();
    {
        const auto open = opened(book.address(known), OpenMode::Write);
        CHECK(book.encrypted() == "yes");
    }
    const PortBook other(true);
    for (const std::string& why :
         {book.whyNot(known, "127.0.0.1"), // the certificate names localhost
          book.whyNot("sslmode=verify-full&sslrootcert=" + other.server.certificate()),
          book.whyNot("sslmode=verify-full&sslrootcert=/nowhere/ca.pem")}) {
        INFO(why);
        CHECK(why.find("certificate") != std::string::npos);
        CHECK(why.find(secret) == std::string::npos);
    }
}

TEST_CASE("A server that speaks TLS alone refuses a plain connection") {
    const PortBook book(true);
    const std::string why = book.whyNot("sslmode=disable");
    INFO(why);
    CHECK(why.find("no encryption") != std::string::npos);
    CHECK(why.find(secret) == std::string::npos);
}

TEST_CASE("A password stands in no setting, no draft, no journal and no log") {
    const PortBook book(true);
    book.server.run("postgres", "ALTER SYSTEM SET log_statement = 'all'");
    book.server.run("postgres", "ALTER SYSTEM SET log_connections = on");
    book.server.run("postgres", "SELECT pg_reload_conf()");
    const QString address = QString::fromStdString(book.address("sslmode=require"));
    NoKeys keys;
    app::FileOpener opener(keys);
    {
        ui::MainWindow window(opener, day("2027-03-05"));
        REQUIRE(!window.openBook(address));
        window.show();
        REQUIRE(!window.session()->perform(handsOf(1)));
        CHECK(window.session()->draftFile().startsWith(
            QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation)));
        CHECK(window.session()->fileName().isEmpty());
        CHECK(app::shownName(address).indexOf(QString::fromStdString(secret)) < 0);
        ui::Drafts drafts(window.session()->draftFile());
        drafts.keep({QStringLiteral("targets"),
                     QStringLiteral("0"),
                     QStringLiteral("a new target"),
                     {},
                     QJsonObject{{QStringLiteral("targetNote"), 1}}});
        drafts.flush();
        CHECK(QFile::exists(window.session()->draftFile()));
        CHECK(filesWith(QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation).toStdString(),
                        secret)
                  .empty());
        drafts.drop(QStringLiteral("targets"), QStringLiteral("0"));
        drafts.flush();
        window.close();
    }
    const fs::path settings = std::getenv("XDG_CONFIG_HOME") ? std::getenv("XDG_CONFIG_HOME") : "";
    REQUIRE(fs::exists(settings / "Warmbench")); // something was written, without it
    CHECK(filesWith(settings, secret).empty());
    const std::string log = book.server.log();
    CHECK(log.find("INSERT INTO") != std::string::npos);
    CHECK(log.find("connection authorized: user=anna") != std::string::npos);
    CHECK(log.find(secret) == std::string::npos);
    std::string journal;
    REQUIRE(
        book.server.ask(book.database, {}, "SELECT string_agg(j::text, '') FROM journal j", journal).empty());
    CHECK(journal.find("anna") != std::string::npos);
    CHECK(journal.find(secret) == std::string::npos);
}
