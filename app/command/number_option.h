#pragma once

#include <CLI/CLI.hpp>

#include <cstdint>
#include <functional>
#include <string>

namespace warmbench::app {

/// Which numbers an option takes, and in words that follow `a number`.
struct Accepted {
    std::function<bool(double)> holds;
    std::string words;
};

Accepted anyNumber();
Accepted atLeast(double least);
Accepted above(double limit);
/// From `least` to `most`, both among them.
Accepted between(double least, double most);
/// Between 0 and 1, neither among them.
Accepted properShare();

/// Adds an option for a number. Anything but a finite decimal number that is accepted is a parse error that
/// says what was found and what was expected. `into` must live as long as the program is parsed.
CLI::Option* addNumber(CLI::App& call, const std::string& name, double& into, const Accepted& accepted,
                       const std::string& help);
/// The same for a whole number.
CLI::Option* addWholeNumber(CLI::App& call, const std::string& name, std::int64_t& into,
                            const Accepted& accepted, const std::string& help);

} // namespace warmbench::app
