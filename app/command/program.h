#pragma once

#include <functional>

namespace warmbench::app {

/// What a call asks for, once its line has been read: the work, which returns the exit status; or the exit
/// status alone, where there is nothing to do or the line can't be read, which has been said then.
struct Call {
    std::function<int()> work;
    int status = 0;
};
[[nodiscard]] Call readCall(int argc, char** argv);

/// Runs one call of the command line; the result is the exit status.
int runProgram(int argc, char** argv);

} // namespace warmbench::app
