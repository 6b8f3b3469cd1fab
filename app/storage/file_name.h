#pragma once

#include "core/quantity/result.h"

#include <string>

/// How a file comes by its name only when it is whole.
namespace warmbench::app {

/// A name beside `path` that no other file has.
[[nodiscard]] std::string temporaryName(const std::string& path);

/// Gives a finished file its name, unless there is one of that name; the temporary name is gone after it.
[[nodiscard]] Outcome giveName(const std::string& finished, const std::string& path);

} // namespace warmbench::app
