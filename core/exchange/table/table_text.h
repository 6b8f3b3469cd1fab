#pragma once

#include "core/quantity/result.h"

#include <string>

namespace warmbench::exchange {

/// The text of a table's file, of at most 1 GiB.
Result<std::string> readTableText(const std::string& path);

} // namespace warmbench::exchange
