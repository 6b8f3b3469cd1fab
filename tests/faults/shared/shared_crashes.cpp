#include "tests/app/storage/book_folder.h"
#include "tests/app/storage/postgres_server.h"
#include "tests/support/small_book.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <sstream>
#include <thread>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace warmbench;
using namespace warmbench::tests;

namespace {

constexpr int farOff = 9000; ///< a command that no burst comes to

enum Kind { ClientKilled, ServerStopped, ConnectionCut, KindCount };
constexpr std::array<const char*, KindCount> kindNames{"a client killed in the middle of a command",
                                                       "the server stopped at once (pg_ctl -m immediate)",
                                                       "the connection cut by the server"};

struct Counts {
    int runs = 0;
    int kept = 0;    ///< commands that were said to be kept
    int missing = 0; ///< of these
    int unsound = 0; ///< books that do not open, are wrong, or can't be worked on
    int silent = 0;  ///< programs that ended neither killed nor with a word
};

/// A program that adds one day's hands after another to a shared book, and says of each that it is kept.
class Burst {
public:
    Burst(const std::string& address, int first) {
        int out[2];
        int err[2];
        if (::pipe(out) != 0 || ::pipe(err) != 0) std::exit(3);
        const std::string from = std::to_string(first);
        m_child = ::fork();
        if (m_child == 0) {
            ::dup2(out[1], STDOUT_FILENO);
            ::dup2(err[1], STDERR_FILENO);
            for (const int end : {out[0], out[1], err[0], err[1]}) ::close(end);
            ::execl(FAULTS_BURST, FAULTS_BURST, address.c_str(), from.c_str(), nullptr);
            ::_exit(127);
        }
        ::close(out[1]);
        ::close(err[1]);
        m_out = out[0];
        m_error = err[0];
    }
    Burst(const Burst&) = delete;
    Burst& operator=(const Burst&) = delete;
    ~Burst() {
        ::close(m_out);
        ::close(m_error);
    }
    void kill() const { ::kill(m_child, SIGKILL); }
    /// Waits until it has said that so many commands are kept, or has ended.
    void hear(int lines) { read(m_out, m_said, lines); }
    /// Waits for its end; the numbers that it had said, and whether it ended as it should.
    std::vector<int> end(bool& silent) {
        read(m_out, m_said, -1);
        std::string words;
        read(m_error, words, -1);
        int status = 0;
        ::waitpid(m_child, &status, 0);
        const bool killed = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
        silent = !killed && (!WIFEXITED(status) || WEXITSTATUS(status) == 0 || words.empty());
        std::vector<int> numbers;
        std::istringstream lines(m_said.substr(0, m_said.rfind('\n') + 1));
        for (int n = 0; lines >> n;) numbers.push_back(n);
        return numbers;
    }

private:
    static void read(int from, std::string& into, int lines) {
        char block[4096];
        while (lines < 0 || std::count(into.begin(), into.end(), '\n') < lines) {
            const ssize_t count = ::read(from, block, sizeof block);
            if (count <= 0) return;
            into.append(block, static_cast<std::size_t>(count));
        }
    }

    pid_t m_child = 0;
    int m_out = -1;
    int m_error = -1;
    std::string m_said;
};

bool holds(const HouseBook& book, int n) {
    return book.withKey<HandDay>(day("2030-01-01") + n).size() == 1;
}

/// What is wrong with a book, or with working on it.
std::string unsound(app::BookFile& book) {
    if (const auto wrong = book.check(); !wrong.empty()) return wrong.front().text();
    if (const auto refusal = book.perform(handsOf(farOff))) return refusal->text();
    if (const auto refusal = book.undo()) return refusal->text();
    return {};
}

/// Strikes a burst of commands on the book of an address, and looks at what is left of the book.
/// `next` is the number of the first command that has not been begun.
void strike(PostgresServer& server, const std::string& address, Kind kind, std::mt19937_64& random, int& next,
            Counts& counts) {
    Burst burst(address, next);
    burst.hear(std::uniform_int_distribution<int>(1, 25)(random));
    std::this_thread::sleep_for(
        std::chrono::microseconds(std::uniform_int_distribution<int>(0, 4000)(random)));
    if (kind == ClientKilled) burst.kill();
    if (kind == ServerStopped) server.stop();
    if (kind == ConnectionCut)
        server.run("postgres", "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '" +
                                   PostgresServer::databaseOf(address) + "'");
    bool silent = false;
    const std::vector<int> kept = burst.end(silent);
    if (kind == ServerStopped) server.start();
    ++counts.runs;
    counts.kept += static_cast<int>(kept.size());
    counts.silent += silent ? 1 : 0;
    const auto book = app::BookFile::open(address, app::OpenMode::Write);
    const std::string wrong = book ? unsound(**book) : book.refusal().text();
    if (!wrong.empty()) {
        std::printf("%s: %s\n", kindNames[kind], wrong.c_str());
        ++counts.unsound;
        return;
    }
    for (const int n : kept) counts.missing += holds((*book)->book(), n) ? 0 : 1;
    next += static_cast<int>(kept.size());
    if (holds((*book)->book(), next)) ++next; // kept, and not said any more
}

/// Whether a loss would be found: on a server that acknowledges before anything is on the disk.
bool seesLoss(std::mt19937_64& random) {
    PostgresServer::Options options;
    options.syncs = true;
    PostgresServer server(options);
    const std::string address = server.newDatabase();
    if (app::BookFile::create(address, smallBook().book)) return false;
    server.run("postgres", "ALTER SYSTEM SET synchronous_commit = off");
    server.run("postgres", "ALTER SYSTEM SET wal_writer_delay = '10s'");
    server.run("postgres", "SELECT pg_reload_conf()");
    Counts counts;
    int next = 0;
    for (int i = 0; i < 5 && counts.missing == 0; ++i)
        strike(server, address, ServerStopped, random, next, counts);
    std::printf(
        "a server that acknowledges before it writes, stopped %d times: %d of %d commands found missing\n",
        counts.runs, counts.missing, counts.kept);
    return counts.missing > 0;
}

} // namespace

/// faults_shared_crashes [TIMES]: kills clients of a shared book, stops its server, and cuts its connections,
/// so many times in all while commands are done. Prints what it counted; exit status 1 where a command that
/// was said to be kept is missing, a book is not sound, or a loss would not have been found.
int main(int argc, char** argv) {
    const int times = argc > 1 ? std::atoi(argv[1]) : 200;
    std::mt19937_64 random(20'261'127);
    const bool sees = seesLoss(random);
    PostgresServer::Options options;
    options.syncs = true;
    PostgresServer server(options);
    const std::string address = server.newDatabase();
    if (const auto refusal = app::BookFile::create(address, smallBook().book)) {
        std::fprintf(stderr, "%s\n", refusal->text().c_str());
        return 3;
    }
    std::array<Counts, KindCount> counts;
    int next = 0;
    for (int i = 0; i < times; ++i) {
        const auto kind = static_cast<Kind>(i % KindCount);
        strike(server, address, kind, random, next, counts[static_cast<std::size_t>(kind)]);
    }
    int wrong = 0;
    int kept = 0;
    for (std::size_t kind = 0; kind < counts.size(); ++kind) {
        const Counts& one = counts[kind];
        std::printf(
            "%-52s %3d times: %4d commands said to be kept, %d missing; %d books not sound; %d without a "
            "word\n",
            kindNames[kind], one.runs, one.kept, one.missing, one.unsound, one.silent);
        wrong += one.missing + one.unsound + one.silent;
        kept += one.kept;
    }
    const auto book = opened(address, app::OpenMode::Read);
    const bool whole = book->book().all<HandDay>().size() == static_cast<std::size_t>(next);
    std::printf("%d commands said to be kept, %d in the book; journal of %zu entries\n", kept, next,
                book->journal()->size());
    return wrong == 0 && whole && sees ? 0 : 1;
}
