#include "core/book/rules.h"
#include "tests/app/storage/book_folder.h"
#include "tests/app/storage/postgres_server.h"
#include "tests/support/small_book.h"

#include <cstdio>
#include <set>

using namespace warmbench;
using namespace warmbench::tests;
using app::BookFile;
using app::OpenMode;

namespace {

const std::set<std::string> found{"root_checks", "losses", "reading_months"};
const std::set<std::string> worked{"batches", "stays", "mat_runs", "pottings", "targets",        "hand_days",
                                   "stocks",  "taxa",  "recipes",  "media",    "container_types"};
const std::set<std::string> kept{"nursery", "houses", "benches", "zones"};

/// Whether who has a role may write a table, as the manual tells it: each role may do what those before it
/// may.
bool mayWrite(const std::string& role, const std::string& table) {
    const bool rounds = role == "rounds" || role == "plan" || role == "house";
    const bool plan = role == "plan" || role == "house";
    return (rounds && found.count(table)) || (plan && worked.count(table)) ||
           (role == "house" && kept.count(table));
}

struct Counts {
    int tried = 0;
    int refused = 0; ///< for want of the right
    int held = 0;    ///< there is the right, and the book's own rules refused what came without an entry
    int done = 0;    ///< read, or nothing was there to change
    int wrong = 0;   ///< refused where it is allowed, or the other way round
};

/// A shared book, and somebody with plain SQL in hand.
struct Attack {
    PostgresServer& server = PostgresServer::shared();
    std::string database;
    std::string role;
    std::string user;
    Counts counts;

    void grant() {
        user = "attacks_" + (role.empty() ? "nobody" : role) + "_" + database;
        server.run(database, "CREATE ROLE " + user + " LOGIN");
        if (!role.empty()) server.run(database, "GRANT " + database + "_" + role + " TO " + user);
    }
    void attempt(const std::string& statement, bool allowed) {
        const std::string said = server.saidTo(database, user, statement);
        const auto says = [&](const char* words) { return said.find(words) != std::string::npos; };
        const bool refused = says("permission denied") || says("does not allow that") ||
                             says("must be owner") || says("must be member") || says("must have admin") ||
                             says("must be superuser");
        ++counts.tried;
        ++(refused ? counts.refused : said.empty() ? counts.done : counts.held);
        if (refused != allowed) return;
        ++counts.wrong;
        std::printf("not as it should be: %s by %s: %s\n", statement.c_str(),
                    role.empty() ? "nobody" : role.c_str(), said.c_str());
    }
    void attemptTable(const std::string& table) {
        const bool write = mayWrite(role, table);
        std::string column;
        (void)server.ask(database, {},
                         "SELECT attname FROM pg_attribute WHERE attrelid = '" + table +
                             "'::regclass AND attnum = 1",
                         column);
        attempt("SELECT * FROM " + table, !role.empty());
        attempt("INSERT INTO " + table + " SELECT * FROM " + table, write);
        attempt("UPDATE " + table + " SET " + column + " = " + column, write);
        attempt("DELETE FROM " + table, write);
        attempt("TRUNCATE " + table + " CASCADE", false);
        attempt("ALTER TABLE " + table + " DISABLE TRIGGER ALL", false);
        attempt("DROP TABLE " + table + " CASCADE", false);
    }
    void attemptRest() {
        const bool writer = !role.empty() && role != "read";
        attempt("SELECT take_turn()", writer);
        attempt("SELECT add_entry(2, '', '', '', '', '')", writer);
        attempt("CREATE TABLE warmbench.more (n int)", false);
        attempt("CREATE OR REPLACE FUNCTION warmbench.keep_journal() RETURNS trigger LANGUAGE plpgsql AS "
                "'BEGIN RETURN NULL; END'",
                false);
        attempt("SET session_replication_role TO replica", false);
        attempt("SET ROLE keeper", false);
        attempt("CREATE ROLE more_" + user, false);
        for (const char* other : {"read", "rounds", "plan", "house"})
            attempt("GRANT " + database + "_" + other + " TO " + user, false);
    }
};

} // namespace

/// faults_roles: people with each part in a shared book try every statement on every table of it with plain
/// SQL, and to get at more rights. Prints how many were tried and refused; exit status 1 where one was not
/// refused, or refused and allowed by the manual, or the book is not what it was.
int main() {
    const BookFolder folder(Kept::Shared);
    const std::string address = folder.smallBookFile();
    const std::string database = PostgresServer::databaseOf(address);
    std::string list;
    (void)PostgresServer::shared().ask(
        database, {},
        "SELECT string_agg(relname, ' ' ORDER BY relname) FROM pg_class WHERE relkind = 'r' AND "
        "relnamespace = 'warmbench'::regnamespace",
        list);
    std::vector<std::string> tables;
    for (std::size_t at = 0; at < list.size(); at = list.find(' ', at) + 1) {
        tables.push_back(list.substr(at, list.find(' ', at) - at));
        if (list.find(' ', at) == std::string::npos) break;
    }
    std::printf("%zu tables\n", tables.size());
    Counts all;
    for (const char* role : {"", "read", "rounds", "plan", "house"}) {
        Attack attack{.database = database, .role = role, .user = {}, .counts = {}};
        attack.grant();
        for (const std::string& table : tables) attack.attemptTable(table);
        attack.attemptRest();
        const Counts& one = attack.counts;
        std::printf(
            "%-8s %3d tried: %3d refused for want of the right, %3d by the book's own rules, %3d read "
            "or with nothing to change; %d not as it should be\n",
            *role ? role : "no part", one.tried, one.refused, one.held, one.done, one.wrong);
        all.tried += one.tried;
        all.refused += one.refused;
        all.wrong += one.wrong;
    }
    const auto book = opened(address, OpenMode::Read);
    const bool same = book->book() == smallBook().book && book->check().empty();
    std::printf("in all %d tried, %d refused for want of the right, %d not as it should be; the book is %s\n",
                all.tried, all.refused, all.wrong, same ? "what it was" : "NOT what it was");
    return all.wrong == 0 && same && !tables.empty() ? 0 : 1;
}
