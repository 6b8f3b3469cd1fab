#pragma once

#include "tests/app/command/program_run.h"
#include "tests/support/planning_data.h"
#include "tests/support/temporary_folder.h"

#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

namespace warmbench::tests {

/// Runs a program as a process of its own, without a shell; what it writes is caught in files. A process that
/// a signal ended has the status 128 and more.
inline ProgramRun runProcess(const std::string& program, std::vector<std::string> arguments) {
    const TemporaryFolder folder;
    const std::string out = (folder.path() / "out").string();
    const std::string error = (folder.path() / "error").string();
    posix_spawn_file_actions_t files;
    posix_spawn_file_actions_init(&files);
    posix_spawn_file_actions_addopen(&files, STDOUT_FILENO, out.c_str(), O_WRONLY | O_CREAT, 0600);
    posix_spawn_file_actions_addopen(&files, STDERR_FILENO, error.c_str(), O_WRONLY | O_CREAT, 0600);
    arguments.insert(arguments.begin(), program);
    std::vector<char*> words;
    words.reserve(arguments.size() + 1);
    for (std::string& argument : arguments) words.push_back(argument.data());
    words.push_back(nullptr);
    pid_t process = 0;
    const int failed = ::posix_spawn(&process, program.c_str(), &files, nullptr, words.data(), environ);
    posix_spawn_file_actions_destroy(&files);
    INFO(program << " cannot be started");
    REQUIRE(failed == 0);
    int status = 0;
    REQUIRE(::waitpid(process, &status, 0) == process);
    return {WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status), fileText(out), fileText(error)};
}

} // namespace warmbench::tests
