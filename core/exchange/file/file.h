#pragma once

#include "core/quantity/result.h"

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

namespace warmbench::exchange {

/// The bytes of a file, the first `most` where it has more. Refused, with the file's name as its place, where
/// it cannot be read.
[[nodiscard]] Result<std::string> readFile(const std::filesystem::path& path, std::size_t most);

/// Writes a file whole or not at all: into a new file beside it, flushed to the disk, that then takes its
/// name. A device or a pipe is written straight. Refused, with the file's name as its place and what was
/// there left as it was, where that fails.
[[nodiscard]] Outcome replaceFile(const std::filesystem::path& path, std::string_view content);

} // namespace warmbench::exchange
