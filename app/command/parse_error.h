#pragma once

#include "core/quantity/result.h"

#include <CLI/CLI.hpp>

namespace warmbench::app {

/// What is wrong with a line that could not be parsed: the option, what was found and what was expected.
Refusal refusalOf(const CLI::App& program, const CLI::ParseError& error);

} // namespace warmbench::app
