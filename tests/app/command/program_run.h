#pragma once

#include "app/command/program.h"

#include <iostream>
#include <sstream>
#include <string>
#include <vector>

namespace warmbench::tests {

struct ProgramRun {
    int status = 0;
    std::string out;
    std::string error;
};

/// One call of the program in this process, with what it writes.
inline ProgramRun runWith(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), "warmbench");
    std::vector<char*> words;
    words.reserve(arguments.size() + 1);
    for (std::string& argument : arguments) words.push_back(argument.data());
    std::ostringstream out;
    std::ostringstream error;
    std::streambuf* const screen = std::cout.rdbuf(out.rdbuf());
    std::streambuf* const errors = std::cerr.rdbuf(error.rdbuf());
    const int status = app::runProgram(static_cast<int>(words.size()), words.data());
    std::cout.rdbuf(screen);
    std::cerr.rdbuf(errors);
    return {status, out.str(), error.str()};
}

inline bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

} // namespace warmbench::tests
