#pragma once

namespace warmbench::app {

/// Runs one call of the command line; the result is the exit status.
int runProgram(int argc, char** argv);

} // namespace warmbench::app
