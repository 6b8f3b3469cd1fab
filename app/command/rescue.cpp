#include "app/storage/rescue.h"

#include "app/command/book_words.h"
#include "app/command/call.h"

#include <iostream>
#include <memory>

namespace warmbench::app {
namespace {

struct RescueOptions {
    std::string book;
    std::string to;
};

int rescueTo(const RescueOptions& options) {
    const auto rescue = rescueBook(options.book, options.to);
    if (!rescue) return refuseFile(rescue.refusal());
    bool whole = true;
    for (const RescuedKind& kind : rescue->kinds) {
        std::cout << kind.several << ": " << kind.saved << " saved";
        if (kind.fromJournal > 0) std::cout << ", " << kind.fromJournal << " of them only from the journal";
        if (kind.dropped > 0)
            std::cout << ", " << kind.dropped << " left out that make no sense without what is lost";
        if (kind.damaged) std::cout << "; some of their rows can't be read";
        whole = whole && !kind.damaged && kind.dropped == 0;
        std::cout << '\n';
    }
    std::cout << "journal: " << counted(static_cast<std::size_t>(rescue->entries), "entry", "entries")
              << " in an unbroken chain"
              << (rescue->journalWhole ? ", whole: nothing is lost" : "; its end can't be read") << '\n'
              << options.to << ": a new book with what was saved; " << options.book
              << " is as it was. Compare them with your latest backup before you go on with one\n";
    return whole || rescue->journalWhole ? done : answerIsNo;
}

} // namespace

void addRescue(CLI::App& program, Work& work) {
    CLI::App* call =
        program.add_subcommand("rescue", "Save what can be saved of a damaged house book to a new one");
    const auto options = std::make_shared<RescueOptions>();
    call->add_option("book", options->book, "The damaged book; it is not touched")->required();
    call->add_option("--to", options->to, "Name of the new book")->required();
    call->callback([&work, options] { work = [options] { return rescueTo(*options); }; });
}

} // namespace warmbench::app
