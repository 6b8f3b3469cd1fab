#include "app/command/reckon.h"

namespace warmbench::app {

void addReckon(CLI::App& program, Work& work) {
    CLI::App& reckon = *program.add_subcommand("reckon", "Single computations.");
    reckon.require_subcommand(1);
    addOneTake(reckon, work);
    addDifference(reckon, work);
    addStrikeCount(reckon, work);
    addVapour(reckon, work);
    addDegreeDays(reckon, work);
    addHeat(reckon, work);
    addMat(reckon, work);
    addPot(reckon, work);
    addDilution(reckon, work);
}

} // namespace warmbench::app
