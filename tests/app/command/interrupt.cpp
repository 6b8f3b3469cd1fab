#include "app/command/interrupt.h"
#include "core/planner/format/problem_format.h"
#include "core/planner/verify/verify.h"
#include "tests/support/process.h"

#include <catch2/catch.hpp>

#include <signal.h>

using namespace warmbench::tests;

namespace {

/// The program with its standard error in a pipe, so that it can be followed.
class FollowedProgram {
public:
    explicit FollowedProgram(std::vector<std::string> arguments) {
        int ends[2];
        REQUIRE(::pipe2(ends, O_CLOEXEC) == 0);
        posix_spawn_file_actions_t files;
        posix_spawn_file_actions_init(&files);
        posix_spawn_file_actions_addopen(&files, STDOUT_FILENO, out().c_str(), O_WRONLY | O_CREAT, 0600);
        posix_spawn_file_actions_adddup2(&files, ends[1], STDERR_FILENO);
        arguments.insert(arguments.begin(), WARMBENCH_PROGRAM);
        std::vector<char*> words;
        words.reserve(arguments.size() + 1);
        for (std::string& argument : arguments) words.push_back(argument.data());
        words.push_back(nullptr);
        const int failed =
            ::posix_spawn(&m_process, WARMBENCH_PROGRAM, &files, nullptr, words.data(), environ);
        posix_spawn_file_actions_destroy(&files);
        ::close(ends[1]);
        m_error = ::fdopen(ends[0], "r");
        REQUIRE(failed == 0);
        REQUIRE(m_error != nullptr);
    }
    FollowedProgram(const FollowedProgram&) = delete;
    FollowedProgram& operator=(const FollowedProgram&) = delete;
    ~FollowedProgram() {
        if (m_error) std::fclose(m_error);
    }

    /// The next line on standard error; empty at its end.
    std::string nextLine() {
        char line[1000];
        return std::fgets(line, sizeof line, m_error) ? line : "";
    }
    void send(int signal) const { ::kill(m_process, signal); }
    /// Its end, as of waitpid, with all that it wrote.
    ProgramRun end() {
        std::string error;
        for (std::string line = nextLine(); !line.empty(); line = nextLine()) error += line;
        int status = 0;
        REQUIRE(::waitpid(m_process, &status, 0) == m_process);
        return {WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status), fileText(out()), error};
    }

private:
    [[nodiscard]] std::string out() const { return (m_folder.path() / "out").string(); }

    TemporaryFolder m_folder;
    pid_t m_process = 0;
    std::FILE* m_error = nullptr;
};

} // namespace

TEST_CASE("Ctrl-C ends a search with the best plan by then, which is kept and valid") {
    const TemporaryFolder folder;
    const std::string answer = (folder.path() / "answer.json").string();
    const std::string problem = planningData("p10-month.json").string();
    for (const int signal : {SIGINT, SIGTERM}) {
        FollowedProgram program(
            {"solve", problem, "--out", answer, "--seconds", "100000", "--progress", "--worth"});
        REQUIRE(has(program.nextLine(), "best"));
        program.send(signal);
        const ProgramRun run = program.end();
        INFO(run.out);
        CHECK(run.status == 0);
        CHECK(has(run.out, " s, stopped\n"));
        CHECK(warmbench::planner::verifyAnswer(warmbench::planner::readProblemFile(problem).value(),
                                               fileText(answer))
                  .valid());
        std::filesystem::remove(answer);
    }
}

TEST_CASE("What waits for Ctrl-C leaves the signals as they were") {
    struct sigaction before = {};
    ::sigaction(SIGINT, nullptr, &before);
    {
        const warmbench::app::Interrupt interrupt;
        CHECK_FALSE(interrupt.token().stop_requested());
        struct sigaction meanwhile = {};
        ::sigaction(SIGINT, nullptr, &meanwhile);
        CHECK(meanwhile.sa_handler != before.sa_handler);
    }
    struct sigaction after = {};
    ::sigaction(SIGINT, nullptr, &after);
    CHECK(after.sa_handler == before.sa_handler);
}
