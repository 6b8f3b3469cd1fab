#include "app/command/program.h"

#include "app/command/call.h"

#include <iostream>

namespace warmbench::app {

int runProgram(int argc, char** argv) {
    CLI::App program{"Warmbench plans the work of a propagation house.", "warmbench"};
    program.set_version_flag("--version", "warmbench 0.1.0");
    program.require_subcommand(0, 1);
    Work work;
    addRecipes(program, work);
    try {
        program.parse(argc, argv);
    } catch (const CLI::Success& success) {
        return program.exit(success);
    } catch (const CLI::ParseError& error) {
        std::cerr << "warmbench: " << error.what() << '\n';
        return badInput;
    }
    return work ? work() : done;
}

} // namespace warmbench::app
