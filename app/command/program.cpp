#include "app/command/program.h"

#include "app/command/call.h"
#include "app/command/parse_error.h"

#include <algorithm>
#include <iostream>
#include <memory>

namespace warmbench::app {

int refuseFile(const Refusal& refusal, ExitStatus status) {
    std::string line = refusal.text();
    std::replace(line.begin(), line.end(), '\n', ' ');
    std::cerr << line << '\n';
    return status;
}

int refuse(const Refusal& refusal, ExitStatus status) {
    std::cerr << "warmbench: ";
    return refuseFile(refusal, status);
}

Call readCall(int argc, char** argv) {
    // The work looks at its options, which live as long as the program that read them.
    const auto parsed =
        std::make_shared<CLI::App>("Warmbench plans the work of a propagation house.", "warmbench");
    CLI::App& program = *parsed;
    program.set_version_flag("--version", "warmbench 0.1.0");
    program.require_subcommand(0, 1);
    Work work;
    addNew(program, work);
    addPlan(program, work);
    addPrint(program, work);
    addCheck(program, work);
    addBackup(program, work);
    addBackups(program, work);
    addClimate(program, work);
    addCopy(program, work);
    addExport(program, work);
    addImport(program, work);
    addFit(program, work);
    addForecast(program, work);
    addMap(program, work);
    addOpen(program, work);
    addReckon(program, work);
    addRecipes(program, work);
    addOwnRecipe(program, work);
    addRescue(program, work);
    addRound(program, work);
    addSolve(program, work);
    addTake(program, work);
    addVerify(program, work);
    try {
        program.parse(argc, argv);
    } catch (const CLI::Success& success) {
        return {{}, program.exit(success)};
    } catch (const CLI::ParseError& error) {
        return {{}, refuse(refusalOf(program, error))};
    }
    if (!work) return {{}, done};
    return {[parsed, work] { return work(); }, done};
}

int runProgram(int argc, char** argv) {
    const Call call = readCall(argc, argv);
    return call.work ? call.work() : call.status;
}

} // namespace warmbench::app
