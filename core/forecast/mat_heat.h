#pragma once

#include "core/book/house_book.h"
#include "core/climate/heat.h"

namespace warmbench::forecast {

/// What a zone's mat does to hold a set-point in air of a temperature: U A dT against its rated power. The
/// zone has a mat.
[[nodiscard]] climate::MatLoad matLoadIn(const HouseBook& book, const Zone& zone, Celsius setPoint,
                                         Celsius air);

} // namespace warmbench::forecast
