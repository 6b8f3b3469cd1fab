#pragma once

#include "core/exchange/csv/moment.h"

#include <cstdint>

namespace warmbench::exchange {

/// Seconds since 1970 of a moment in UTC.
inline std::int64_t at(const char* iso) {
    return momentFromIso(iso)->microseconds / 1'000'000;
}

} // namespace warmbench::exchange
