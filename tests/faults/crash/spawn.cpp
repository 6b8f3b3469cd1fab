#include "tests/faults/crash/spawn.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

namespace warmbench::tests {
namespace {

std::string textIn(const std::string& file) {
    std::ostringstream content;
    content << std::ifstream(file, std::ios::binary).rdbuf();
    return content.str();
}

} // namespace

Ended runUnder(const Fault& fault, std::vector<std::string> call) {
    // Beside the folder, so that what the program says meets no fault.
    const std::string out = fault.folder + ".out";
    const std::string error = fault.folder + ".error";
    std::vector<char*> words;
    for (std::string& word : call) words.push_back(word.data());
    words.push_back(nullptr);
    const pid_t child = ::fork();
    if (child == 0) {
        ::dup2(::open(out.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600), STDOUT_FILENO);
        ::dup2(::open(error.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600), STDERR_FILENO);
        ::setenv("LD_PRELOAD", FAULTS_SHIM, 1);
        ::setenv("FAULT_KIND", fault.kind.c_str(), 1);
        ::setenv("FAULT_AT", std::to_string(fault.at).c_str(), 1);
        ::setenv("FAULT_FOLDER", (fault.folder + "/").c_str(), 1);
        ::setenv("FAULT_COUNT", (fault.folder + ".count").c_str(), 1);
        ::setenv("QT_QPA_PLATFORM", "offscreen", 1);
        // The sanitizers' own library is not first any more, and leaks of a killed program are no news.
        ::setenv("ASAN_OPTIONS", "verify_asan_link_order=0:detect_leaks=0", 1);
        ::execv(words[0], words.data());
        ::_exit(127);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    Ended ended;
    ended.killed = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
    ended.crashed =
        (WIFSIGNALED(status) && !ended.killed) || (WIFEXITED(status) && WEXITSTATUS(status) == 127);
    ended.status = WIFEXITED(status) ? WEXITSTATUS(status) : 0;
    ended.out = textIn(out);
    ended.error = textIn(error);
    return ended;
}

long callsOf(const std::string& folder, const std::vector<std::string>& call) {
    std::filesystem::remove(folder + ".count");
    [[maybe_unused]] const Ended ended = runUnder({"count", 0, folder}, call);
    std::ifstream in(folder + ".count");
    long calls = 0;
    in >> calls;
    return calls;
}

} // namespace warmbench::tests
