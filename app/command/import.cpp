#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/open_book.h"
#include "app/resource/built_in_recipes.h"
#include "core/exchange/file/file.h"
#include "core/season/list/thing_list.h"

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

/// A list longer than this is something else.
constexpr std::size_t mostListBytes = 16 << 20;

int importWhole(BookFile& file, const ImportOptions& options) {
    const auto read = readBookFile(options.file);
    if (!read) return refuseFile(read.refusal());
    if (auto refusal = file.adopt(*read, phrase("Import %1", options.file).text()))
        return refuseFile(*refusal);
    std::cout << options.book << ": it now holds what " << options.file << " describes\n";
    return done;
}

int importList(BookFile& file, const ImportOptions& options, season::ListKind kind) {
    const auto text = exchange::readFile(options.file, mostListBytes);
    if (!text) return refuseFile(text.refusal());
    const HouseBook& book = file.book();
    const auto unknown = options.ownTaxa ? season::UnknownTaxa::TakeAsOwn : season::UnknownTaxa::Refuse;
    const season::ListShape shape = season::listShape(*text, kind, book, builtInRecipes());
    const season::ThingList list = season::readThingList(*text, kind, shape, book, builtInRecipes(), unknown);
    for (const season::ListedThing& one : list.lines)
        if (!one.trouble.empty())
            refuseFile({options.file, "line " + std::to_string(one.line) + ": " + one.trouble});
    if (list.lines.empty())
        return refuseFile({options.file, "it holds no line that could be one of " + options.what});
    const std::size_t wrong = list.lines.size() - list.right;
    if (wrong > 0 && !options.rest)
        return refuseFile({options.file, std::to_string(wrong) + " of " +
                                             counted(list.lines.size(), "line", "lines") +
                                             (wrong == 1 ? " is" : " are") +
                                             " wrong, so nothing was put in; --rest puts in the rest"});
    if (list.right > 0)
        if (auto refusal = file.perform(list.command)) return refuseFile(*refusal);
    std::cout << options.book << ": "
              << (kind == season::ListKind::Targets
                      ? counted(list.right, "target", "targets")
                      : counted(list.right, "line", "lines") + " of " + options.what)
              << " put in\n";
    return list.right > 0 ? done : badInput;
}

int importInto(const ImportOptions& options) {
    const auto kind = season::listKindFromName(options.what);
    if (!options.what.empty() && !kind)
        return refuse(
            {"--what", "found '" + options.what + "', expected targets, stocks, recipes or results"});
    const auto file = openBook(options.book, OpenMode::Write);
    if (!file) return refuseFile(file.refusal());
    return kind ? importList(**file, options, *kind) : importWhole(**file, options);
}

} // namespace

void addImport(CLI::App& program, Work& work) {
    CLI::App* call =
        program.add_subcommand("import", "Fill an empty house book from a JSON export, or put in a list");
    const auto options = std::make_shared<ImportOptions>();
    call->add_option("book", options->book, "The house book; empty so far for a JSON export")->required();
    call->add_option("file", options->file, "A house book as JSON, or the list")->required();
    call->add_option(
        "--what", options->what,
        "What a list holds, with tabs, semicolons or commas: targets (taxon, plants, date), stocks "
        "(taxon, plants, wood, from, to, cuttings), recipes (taxon, wood, figures) or results "
        "(taxon, wood, struck, cuttings, plants, potted on)");
    call->add_flag("--rest", options->rest, "Put in the lines that are right, though others are wrong");
    call->add_flag("--own-taxa", options->ownTaxa, "Take names that nobody knows as taxa of your own");
    call->callback([&work, options] { work = [options] { return importInto(*options); }; });
}

} // namespace warmbench::app
