#pragma once

#include "tests/faults/crash/spawn.h"

#include <functional>
#include <string>
#include <vector>

namespace warmbench::tests {

/// One kind of writing that is struck by faults.
struct Scenario {
    const char* name;
    /// Puts into an empty folder what it begins with.
    std::function<void(const std::string& folder)> prepare;
    std::function<std::vector<std::string>(const std::string& folder)> call;
    /// What is wrong after a run, in words; empty where all is as it must be. Counts the commands that the
    /// run had said to be kept.
    std::function<std::string(const std::string& folder, const Ended& ended, int& acknowledged)> judge;
};

/// How a run under one fault ended, and what is wrong after it, in words.
struct Verdict {
    Ended ended;
    std::string wrong;
};
/// Runs a scenario under a fault, in the fault's folder, which is empty before and gone afterwards.
[[nodiscard]] Verdict struck(const Scenario& scenario, const Fault& fault, int& acknowledged);

/// Every kind of writing to files: commands, bringing an old book up to date, imports, new books, backups,
/// copies, going back to a backup, exports to a new file and over an old one. `prototypes` is a folder for
/// what they begin with.
[[nodiscard]] std::vector<Scenario> scenarios(const std::string& prototypes);

} // namespace warmbench::tests
