#include "app/command/call.h"
#include "app/command/open_book.h"

#include <nlohmann/json.hpp>

#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct CheckOptions {
    std::string book;
    bool json = false;
};

int checkBook(const CheckOptions& options) {
    const auto file = openBook(options.book, OpenMode::Read);
    if (!file) return refuseFile(file.refusal());
    const std::vector<Refusal> wrong = (*file)->check();
    if (options.json) {
        nlohmann::json told{{"sound", wrong.empty()}, {"wrong", nlohmann::json::array()}};
        for (const Refusal& one : wrong)
            told["wrong"].push_back({{"place", one.place}, {"what", one.what.text()}});
        std::cout << told.dump(2) << '\n';
    } else {
        for (const Refusal& one : wrong) std::cout << one.text() << '\n';
        if (wrong.empty()) std::cout << options.book << ": the book is sound\n";
    }
    return wrong.empty() ? done : answerIsNo;
}

} // namespace

void addCheck(CLI::App& program, Work& work) {
    CLI::App* call =
        program.add_subcommand("check", "Look a house book over: the file, every rule, the journal");
    const auto options = std::make_shared<CheckOptions>();
    call->add_option("book", options->book, "The house book")->required();
    call->add_flag("--json", options->json, "Print what was found as JSON");
    call->callback([&work, options] { work = [options] { return checkBook(*options); }; });
}

} // namespace warmbench::app
