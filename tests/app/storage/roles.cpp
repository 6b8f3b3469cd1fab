#include "app/storage/journal_chain.h"
#include "tests/app/storage/book_folder.h"
#include "tests/app/storage/postgres_server.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

#include <QDateTime>

using namespace warmbench;
using namespace warmbench::tests;
using app::BookFile;
using app::OpenMode;

namespace {

/// A shared book, and people who may do different things in it.
class BookOfMany {
public:
    BookOfMany() : m_database(PostgresServer::databaseOf(m_folder.smallBookFile())) {}

    /// Somebody with a role, or with none; made when first asked for.
    std::string user(const std::string& role) {
        std::string name = "user_" + (role.empty() ? "none" : role) + "_" + m_database;
        if (m_users.insert(name).second) {
            server.run(m_database, "CREATE ROLE " + name + " LOGIN");
            if (!role.empty()) server.run(m_database, "GRANT " + m_database + "_" + role + " TO " + name);
        }
        return name;
    }
    std::string address(const std::string& role) { return server.address(m_database, user(role)); }
    /// What PostgreSQL says to plain SQL by somebody; empty where it did as it was told.
    std::string plain(const std::string& role, const std::string& statement) {
        return server.saidTo(m_database, role == "keeper" ? role : user(role), statement);
    }
    std::unique_ptr<BookFile> opened(const std::string& role) {
        return tests::opened(address(role), OpenMode::Write);
    }
    std::string keeper() { return server.address(m_database); }

    PostgresServer& server = PostgresServer::shared();

private:
    BookFolder m_folder{Kept::Shared};
    std::string m_database;
    std::set<std::string> m_users;
};

const std::string notAllowed =
    "it could not be kept: the database says: your part in this shared book does not "
    "allow that; ask who keeps it (permission denied for table ";

std::string denied(const std::string& table) {
    return "your part in this shared book does not allow that; ask who keeps it (permission denied for "
           "table " +
           table + ")";
}

Command look(const SmallBook& small) {
    return {RecordCheck{{{}, small.struck, 1, day("2027-03-20"), 5, 1, 1, 2, 1, std::nullopt, ""}}};
}

} // namespace

TEST_CASE("Who has no part in a shared book does not get in") {
    BookOfMany book;
    const auto refused = BookFile::open(book.address(""), OpenMode::Read);
    REQUIRE(!refused);
    CHECK(refused.refusal().what.text().find("permission denied for database") != std::string::npos);
}

TEST_CASE("Who may read a shared book reads it, and changes nothing by any way") {
    BookOfMany book;
    const auto open = book.opened("read");
    CHECK(open->book() == smallBook().book);
    CHECK(open->check().empty());
    const auto refusal = open->perform(handsOf(1));
    REQUIRE(refusal);
    CHECK(refusal->what.text().find("your part in this shared book does not allow that") !=
          std::string::npos);
    for (const char* table :
         {"nursery", "zones", "batches", "stays", "root_checks", "losses", "journal", "about"})
        CHECK(book.plain("read", std::string("DELETE FROM ") + table) == denied(table));
    CHECK(book.plain("read", "SELECT take_turn()").find("permission denied for function take_turn") !=
          std::string::npos);
    CHECK(book.plain("read", "SELECT add_entry(2, '', '', '', '', '')").find("permission denied") !=
          std::string::npos);
    CHECK(book.plain("read", "ALTER TABLE journal DISABLE TRIGGER ALL").find("must be owner") !=
          std::string::npos);
    CHECK(tests::opened(book.keeper(), OpenMode::Read)->book() == smallBook().book);
}

TEST_CASE("Who goes round enters checks and losses, and nothing else") {
    BookOfMany book;
    const SmallBook small = smallBook();
    const auto open = book.opened("rounds");
    REQUIRE(!open->perform(look(small)));
    REQUIRE(!open->perform({RecordLoss{{{}, small.struck, 1, day("2027-03-21"), 1, "rot"}}}));
    REQUIRE(!open->undo());
    CHECK(open->journal()->back().who == book.user("rounds"));
    CHECK(open->perform({StrikeBatch{small.planned, day("2027-03-02")}})->what == notAllowed + "batches)");
    CHECK(open->perform(handsOf(1))->what == notAllowed + "hand_days)");
    CHECK(open->book() == tests::opened(book.keeper(), OpenMode::Read)->book());
    for (const char* table : {"nursery", "zones", "batches", "stays", "journal", "about"})
        CHECK(book.plain("rounds", std::string("DELETE FROM ") + table) == denied(table));
    CHECK(open->check().empty());
}

TEST_CASE("Who plans works the batches, and leaves the house as it is") {
    BookOfMany book;
    const SmallBook small = smallBook();
    const auto open = book.opened("plan");
    REQUIRE(!open->perform({StrikeBatch{small.planned, day("2027-03-02")}}));
    REQUIRE(!open->perform(look(small)));
    REQUIRE(!open->perform({RemoveStay{small.weaning}}));
    House house = small.book.get<House>(small.house);
    house.name = "Another name";
    CHECK(open->perform({Put<House>{house}})->what == notAllowed + "houses)");
    for (const char* table : {"nursery", "houses", "benches", "zones", "journal", "about"})
        CHECK(book.plain("plan", std::string("DELETE FROM ") + table) == denied(table));
    const auto keeping = book.opened("house");
    REQUIRE(!keeping->perform({Put<House>{house}}));
    REQUIRE(!keeping->perform(handsOf(1)));
    CHECK(keeping->check().empty());
}

TEST_CASE("No row changes without an entry in the journal, not even by who keeps the house") {
    BookOfMany book;
    for (const char* role : {"house", "keeper"}) {
        CHECK(book.plain(role, "UPDATE zones SET name = 'x'") ==
              "a change of zones without an entry in the journal");
        CHECK(book.plain(role, "INSERT INTO losses VALUES (9, 1, 1, '2027-03-01', 1, '')") ==
              "a change of losses without an entry in the journal");
    }
    CHECK(book.plain("keeper", "TRUNCATE losses") == "a table of the book is never emptied");
    CHECK(tests::opened(book.keeper(), OpenMode::Read)->check().empty());
}

TEST_CASE("The journal is added to at its end, at its time, in one's own name, and never changed") {
    BookOfMany book;
    const auto chain = [&] {
        // What the entry of making the book was hashed to is read as any client could.
        std::string found;
        book.server.ask(book.server.databaseOf(book.keeper()), book.user("house"),
                        "SELECT chain FROM warmbench.journal WHERE seq = 1", found);
        return found;
    }();
    const auto add = [&](std::int64_t seq, const std::string& at, const std::string& who, bool right) {
        const app::JournalRow row{seq, at, who, "words", "{\"edits\":[]}"};
        const std::string hash = right ? app::chained(chain, row) : std::string(64, '0');
        return book.plain("house", "SELECT add_entry(" + std::to_string(seq) + ", '" + at + "', '" + who +
                                       "', 'words', '{\"edits\":[]}', '" + hash + "')");
    };
    const auto now = [] { return QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs).toStdString(); };
    const std::string me = book.user("house");
    CHECK(add(1, now(), me, true) == "found journal entry 1, expected the one after 1");
    CHECK(add(3, now(), me, true) == "found journal entry 3, expected the one after 1");
    CHECK(add(2, now(), "keeper", true) == "found an entry of keeper, expected one of " + me);
    CHECK(add(2, "2026-01-01T08:00:00.000Z", me, true) == "found an entry of another time than now");
    CHECK(add(2, now(), me, false) == "found an entry whose hash does not follow from it and the one before");
    CHECK(book.plain("house", "INSERT INTO journal VALUES (2, '', '', '', '', '')") == denied("journal"));
    const std::string never = "the journal can be added to and never changed";
    for (const char* statement :
         {"UPDATE journal SET words = 'nothing'", "DELETE FROM journal", "TRUNCATE journal"}) {
        CHECK(book.plain("house", statement) == denied("journal"));
        CHECK(book.plain("keeper", statement) == never);
    }
    CHECK(add(2, now(), me, true).empty());
    CHECK(tests::opened(book.keeper(), OpenMode::Read)->check().empty());
}
