#pragma once

#include "core/season/proposal.h"

#include <string>

namespace warmbench::app {

/// A plan for people: strike list by day, mats, what does not fit and why, materials, cautions.
std::string planWords(const HouseBook& book, const season::Proposal& proposal, const RecipeLibrary& library);

/// The same as one JSON object, for scripts.
std::string planJson(const HouseBook& book, const season::Proposal& proposal);

} // namespace warmbench::app
