#pragma once

#include "core/exchange/json/value.h"

#include <string>
#include <string_view>

namespace warmbench::json {

/// A string in quotes with what must be escaped. Takes what Value::string gives, lone surrogates too.
[[nodiscard]] std::string inQuotes(std::string_view text);

/// A value as a refusal shows it: on one line, cut after 40 bytes.
[[nodiscard]] std::string shown(Value value);

} // namespace warmbench::json
