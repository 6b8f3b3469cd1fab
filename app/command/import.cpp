#include "app/command/call.h"
#include "app/command/open_book.h"
#include "app/resource/built_in_recipes.h"
#include "core/exchange/file/file.h"
#include "core/season/target_list.h"

#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct ImportOptions {
    std::string book;
    std::string file;
    std::string what;
    bool rest = false;
    bool ownTaxa = false;
};

/// A list of targets longer than this is something else.
constexpr std::size_t mostListBytes = 16 << 20;

int importWhole(BookFile& file, const ImportOptions& options) {
    const auto read = readBookFile(options.file);
    if (!read) return refuseFile(read.refusal());
    if (auto refusal = file.adopt(*read, "Import " + options.file)) return refuseFile(*refusal);
    std::cout << options.book << ": it now holds what " << options.file << " describes\n";
    return done;
}

int importTargets(BookFile& file, const ImportOptions& options) {
    const auto text = exchange::readFile(options.file, mostListBytes);
    if (!text) return refuseFile(text.refusal());
    const HouseBook& book = file.book();
    const auto unknown = options.ownTaxa ? season::UnknownTaxa::TakeAsOwn : season::UnknownTaxa::Refuse;
    const season::TargetListShape shape = season::targetListShape(*text, book, builtInRecipes());
    const auto list = season::readTargetList(*text, shape, book, builtInRecipes(), unknown);
    std::size_t wrong = 0;
    for (const season::ListedTarget& one : list) {
        if (one.trouble.empty()) continue;
        ++wrong;
        refuseFile({options.file, "line " + std::to_string(one.line) + ": " + one.trouble});
    }
    if (list.empty()) return refuseFile({options.file, "it holds no line that could be a target"});
    if (wrong > 0 && !options.rest)
        return refuseFile(
            {options.file, std::to_string(wrong) + " of " + std::to_string(list.size()) +
                               " lines are wrong, so nothing was put in; --rest puts in the rest"});
    const std::size_t right = list.size() - wrong;
    if (right > 0)
        if (auto refusal = file.perform(season::putTargets(book, list))) return refuseFile(*refusal);
    std::cout << options.book << ": " << right << " targets put in\n";
    return right > 0 ? done : badInput;
}

int importInto(const ImportOptions& options) {
    if (!options.what.empty() && options.what != "targets")
        return refuse({"--what", "found '" + options.what + "', expected targets"});
    const auto file = openBook(options.book, OpenMode::Write);
    if (!file) return refuseFile(file.refusal());
    return options.what.empty() ? importWhole(**file, options) : importTargets(**file, options);
}

} // namespace

void addImport(CLI::App& program, Work& work) {
    CLI::App* call =
        program.add_subcommand("import", "Fill an empty house book from a JSON export, or put in a list");
    const auto options = std::make_shared<ImportOptions>();
    call->add_option("book", options->book, "The house book; empty so far for a JSON export")->required();
    call->add_option("file", options->file, "A house book as JSON, or the list")->required();
    call->add_option("--what", options->what,
                     "targets: a list with taxon, plants, date; tabs, semicolons or commas");
    call->add_flag("--rest", options->rest, "Put in the lines that are right, though others are wrong");
    call->add_flag("--own-taxa", options->ownTaxa, "Take names that nobody knows as taxa of your own");
    call->callback([&work, options] { work = [options] { return importInto(*options); }; });
}

} // namespace warmbench::app
