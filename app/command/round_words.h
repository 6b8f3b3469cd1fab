#pragma once

#include "core/round/due.h"
#include "core/round/round.h"

#include <string>
#include <vector>

namespace warmbench::app {

/// The stops of a round as a sheet to carry along, with room for what is found, and what else is due.
std::string roundWords(const HouseBook& book, Day day, const std::vector<round::Stop>& stops,
                       const std::vector<round::Due>& due);
/// The same as JSON.
std::string roundJson(const HouseBook& book, Day day, const std::vector<round::Stop>& stops,
                      const std::vector<round::Due>& due);
/// A table to type the results into, in the order of the sheet.
std::string roundTable(const HouseBook& book, Day day, const std::vector<round::Stop>& stops);

} // namespace warmbench::app
