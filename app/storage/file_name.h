#pragma once

#include "core/quantity/result.h"

#include <string>

/// How a file comes by its name only when it is whole.
namespace warmbench::app {

/// A name beside `path` that no other file has.
[[nodiscard]] std::string temporaryName(const std::string& path);

/// Gives a finished file its name, unless there is one of that name; the temporary name is gone after it.
[[nodiscard]] Outcome giveName(const std::string& finished, const std::string& path);

/// Makes the names in a file's folder last. Not all file systems can, so that fails without a word.
void syncFolder(const std::string& file);

} // namespace warmbench::app
