#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <limits>
#include <random>
#include <sstream>
#include <thread>

#include <sys/wait.h>
#include <unistd.h>

using namespace warmbench;
using namespace warmbench::tests;
using app::OpenMode;

namespace {

/// When a burst is killed: so long after it has said that so many commands are kept.
struct Moment {
    int commands = 0;
    std::chrono::microseconds later{};
};

/// Reads what a burst says until it has said `lines` lines or has ended.
void hear(int from, int lines, std::string& said) {
    char block[256];
    while (std::count(said.begin(), said.end(), '\n') < lines) {
        const ssize_t count = ::read(from, block, sizeof block);
        if (count <= 0) return;
        said.append(block, static_cast<std::size_t>(count));
    }
}

/// Starts a burst of commands from number `first` on, kills it, and tells which of its commands it had said
/// to be kept.
std::vector<int> killedBurst(const std::string& file, int first, const Moment& moment) {
    int ends[2];
    REQUIRE(::pipe(ends) == 0);
    const std::string from = std::to_string(first);
    const pid_t child = ::fork();
    if (child == 0) {
        ::dup2(ends[1], STDOUT_FILENO);
        ::close(ends[0]);
        ::close(ends[1]);
        ::execl(FAULTS_BURST, FAULTS_BURST, file.c_str(), from.c_str(), nullptr);
        ::_exit(127);
    }
    ::close(ends[1]);
    std::string said;
    hear(ends[0], moment.commands, said);
    std::this_thread::sleep_for(moment.later);
    REQUIRE(::kill(child, SIGKILL) == 0);
    int status = 0;
    ::waitpid(child, &status, 0);
    CHECK(WIFSIGNALED(status)); // it had not ended by itself
    hear(ends[0], std::numeric_limits<int>::max(), said);
    ::close(ends[0]);
    std::vector<int> kept;
    std::istringstream lines(said.substr(0, said.rfind('\n') + 1));
    for (int n = 0; lines >> n;) kept.push_back(n);
    return kept;
}

bool holds(const HouseBook& book, int n) {
    const Day wanted = day("2030-01-01") + n;
    return book.withKey<HandDay>(wanted).size() == 1;
}

} // namespace

TEST_CASE("A program killed at any moment loses no command that it has said to be kept") {
    const BookFolder folder;
    const std::string file = folder.smallBookFile();
    std::mt19937_64 random(20'270'215);
    std::uniform_int_distribution<int> commands(0, 5); // 0: while it opens the book, or just after
    std::uniform_int_distribution<int> microseconds(0, 30'000);
    constexpr int kills = 60;
    int next = 0;
    int amidCommands = 0;
    for (int i = 0; i < kills; ++i) {
        const auto kept =
            killedBurst(file, next, {commands(random), std::chrono::microseconds(microseconds(random))});
        amidCommands += kept.empty() ? 0 : 1;
        const auto book = opened(file, OpenMode::Write);
        for (const int n : kept) REQUIRE(holds(book->book(), n));
        next += static_cast<int>(kept.size());
        // The command in hand may have been kept without its having been said.
        if (holds(book->book(), next)) ++next;
        REQUIRE(!holds(book->book(), next));
        REQUIRE(book->book().all<HandDay>().size() == static_cast<std::size_t>(next));
        REQUIRE(book->journal()->size() == static_cast<std::size_t>(next) + 1);
        REQUIRE(book->check().empty());
    }
    std::printf(
        "%d kills, %d of them amid commands; %d commands kept, none of those that were said is missing\n",
        kills, amidCommands, next);
    CHECK(amidCommands > kills / 2);
    CHECK(next > kills);
}
