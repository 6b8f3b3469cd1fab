#pragma once

#include "app/command/call.h"

namespace warmbench::app {

// The single computations under `warmbench reckon`; each adds its call.
void addOneTake(CLI::App& reckon, Work& work);
void addDifference(CLI::App& reckon, Work& work);
void addStrikeCount(CLI::App& reckon, Work& work);
void addVapour(CLI::App& reckon, Work& work);
void addDegreeDays(CLI::App& reckon, Work& work);
void addHeat(CLI::App& reckon, Work& work);
void addMat(CLI::App& reckon, Work& work);
void addPot(CLI::App& reckon, Work& work);
void addDilution(CLI::App& reckon, Work& work);

} // namespace warmbench::app
