#include "app/command/call.h"
#include "app/command/open_book.h"
#include "app/command/without_screen.h"
#include "ui/map/map_sheet.h"

#include <memory>

namespace warmbench::app {
namespace {

struct MapCall {
    std::string book;
    std::string day;
    std::string out;
    ui::SheetOptions options;
};

int writeMap(const MapCall& call) {
    const auto day = Day::fromIso(call.day);
    if (!day) return refuse({"--day", "'" + call.day + "'; expected a day such as 2027-02-04"});
    const QString file = QString::fromStdString(call.out);
    if (auto refusal = ui::checkMapSheet(file, call.options)) return refuse(*refusal);
    const auto application = applicationWithoutScreen();
    const auto book = openBook(call.book, OpenMode::Read);
    if (!book) return refuseFile(book.refusal());
    const auto refusal = ui::writeMapSheet((*book)->book(), *day, file, call.options, ui::Wording());
    return refusal ? refuseFile(*refusal, storageFailed) : done;
}

} // namespace

void addMap(CLI::App& program, Work& work) {
    auto* command = program.add_subcommand("map", "the bench map of a day as PNG, SVG or PDF");
    const auto call = std::make_shared<MapCall>();
    command->add_option("BOOK", call->book, "the house book")->required();
    command->add_option("--day", call->day, "the day, such as 2027-02-04")->required();
    command->add_option("--out", call->out, "the picture; its suffix says which kind")->required();
    command->add_option("--width", call->options.width, "width in pixels")->capture_default_str();
    command->add_flag("--dark", call->options.dark, "in the dark theme");
    command->callback([call, &work] { work = [call] { return writeMap(*call); }; });
}

} // namespace warmbench::app
