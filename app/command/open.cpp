#include "app/command/call.h"
#include "app/window/run_window.h"

#include <memory>

namespace warmbench::app {

void addOpen(CLI::App& program, Work& work) {
    auto* command = program.add_subcommand("open", "open a house book in the window");
    const auto book = std::make_shared<std::string>();
    command->add_option("BOOK", *book, "the house book; without it the window opens as it does by itself");
    command->callback([book, &work] {
        work = [book] {
            const auto refusal = runWindow(*book);
            return refusal ? refuseFile(*refusal) : done;
        };
    });
    // `warmbench` alone opens the window as well.
    work = [] {
        const auto refusal = runWindow({});
        return refusal ? refuseFile(*refusal) : done;
    };
}

} // namespace warmbench::app
