#pragma once

#include "core/quantity/result.h"

#include <cstdint>
#include <string>

namespace warmbench::app {

/// Stands in the head of every house book's file: `Wbch`.
inline constexpr std::uint32_t applicationId = 0x57626368;

/// What the first hundred bytes of a SQLite file say, read without opening it as a database.
struct FileHead {
    std::uint32_t application = 0;
    std::uint32_t version = 0; ///< of the schema
};

/// Refused where the file is not there, can't be read, is a folder, or is no SQLite database.
[[nodiscard]] Result<FileHead> readHead(const std::string& path);

} // namespace warmbench::app
