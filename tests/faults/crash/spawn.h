#pragma once

#include <string>
#include <vector>

namespace warmbench::tests {

/// A fault that a program meets: its kind by the words of shim.cpp, at which call, in which folder.
struct Fault {
    std::string kind;
    long at = 0;
    std::string folder;
};

/// How a program ended, and what it wrote.
struct Ended {
    bool killed = false;  ///< by SIGKILL
    bool crashed = false; ///< by another signal, which no fault excuses
    int status = 0;
    std::string out;
    std::string error;
};

/// Runs a program under a fault to its end.
[[nodiscard]] Ended runUnder(const Fault& fault, std::vector<std::string> call);
/// How many calls a sound run makes that a fault could meet.
[[nodiscard]] long callsOf(const std::string& folder, const std::vector<std::string>& call);

} // namespace warmbench::tests
