#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/open_book.h"
#include "app/command/without_screen.h"
#include "app/resource/built_in_recipes.h"
#include "core/book/query.h"
#include "ui/map/map_sheet.h"
#include "ui/paper/day_sheet.h"
#include "ui/paper/label_paper.h"
#include "ui/paper/month_sheet.h"
#include "ui/paper/round_sheet.h"
#include "ui/paper/season_sheet.h"
#include "ui/paper/strike_list.h"

#include <memory>

namespace warmbench::app {
namespace {

struct PrintOptions {
    std::string kind;
    std::string book;
    std::string out;
    std::string from;
    std::string seen;
    std::optional<int> days; ///< nothing: as many as its kind usually has
    std::vector<std::string> batches;
    std::string page = "210x297";
    std::string label = "70x36";
    std::string grid = "3x8";
    std::string margin = "0x4.5";
    std::string gap = "0x0";
    std::string roll;
    int used = 0;
};

/// Days are counted with four digits of years only.
constexpr int mostDaysPrinted = 3660;
constexpr int daysOfLists = 28;
constexpr int daysOfSeason = 365;
constexpr int mostDaysOfMonth = 84;

Result<ui::LabelLayout> readLayout(const PrintOptions& options) {
    if (!options.roll.empty()) {
        const auto size = ui::readSize("--roll", options.roll);
        if (!size) return size.refusal();
        return ui::LabelLayout::roll(*size);
    }
    ui::LabelLayout layout;
    const auto page = ui::readSize("--page", options.page);
    const auto label = ui::readSize("--label", options.label);
    const auto grid = ui::readSize("--grid", options.grid);
    const auto margin = ui::readSize("--margin", options.margin);
    const auto gap = ui::readSize("--gap", options.gap);
    for (const auto* size : {&page, &label, &grid, &margin, &gap})
        if (!*size) return size->refusal();
    layout.page = *page;
    layout.label = *label;
    if (grid->width() != std::floor(grid->width()) || grid->height() != std::floor(grid->height()) ||
        !(grid->width() >= 1 && grid->width() <= 1000 && grid->height() >= 1 && grid->height() <= 1000))
        return Refusal{"--grid", "found '" + options.grid + "', expected columns and rows such as 3x8"};
    layout.columns = static_cast<int>(grid->width());
    layout.rows = static_cast<int>(grid->height());
    layout.left = margin->width();
    layout.top = margin->height();
    layout.gap = *gap;
    layout.used = options.used;
    return layout;
}

Result<std::vector<BatchId>> readBatches(const HouseBook& book, const PrintOptions& options,
                                         const std::optional<ui::DaySpan>& span) {
    if (options.batches.empty())
        return ui::batchesToLabel(book, span ? span->from : Day::first(), span ? span->to : Day::last());
    std::vector<BatchId> found;
    for (const std::string& code : options.batches) {
        const Batch* batch = findBatch(book, code);
        if (!batch)
            return Refusal{"--batch", "found '" + code + "', expected the code of a batch of this book"};
        found.push_back(batch->id);
    }
    return found;
}

std::string titleOf(const std::string& what, const HouseBook& book) {
    const std::string& name = book.nursery().name;
    return name.empty() ? what : what + " · " + name;
}

Result<ui::Paper> seasonPaper(const HouseBook& book, const PrintOptions& options,
                              const std::optional<ui::DaySpan>& span) {
    if (!span) return Refusal{"--from", "a season's report needs its first day, such as 2027-02-01"};
    const auto seen = readDay("--seen", options.seen);
    if (!seen) return seen.refusal();
    if (*seen < span->from)
        return Refusal{"--seen", "found " + seen->iso() + ", expected a day of the season or after it"};
    ui::SeasonSheet sheet = ui::seasonSheet(book, {span->from, span->to, *seen}, ui::Wording());
    return ui::documentPaper(ui::text(titleOf("Season's report", book)), sheet.html, QPageLayout::Landscape,
                             std::move(sheet.plots));
}

Result<ui::Paper> monthPaper(const HouseBook& book, const ui::DaySpan& days) {
    season::PlanRequest request;
    request.from = days.from;
    request.days = days.to - days.from;
    request.surenessPermille = book.nursery().surenessPermille;
    if (request.days > mostDaysOfMonth)
        return Refusal{"--days",
                       "found " + std::to_string(request.days) + ", expected at most 84 for a month's plan"};
    ui::MonthSheet sheet =
        ui::monthSheet(book,
                       season::monthPlan(book, season::targetNeeds(book, builtInRecipes(), request),
                                         request.from, request.days),
                       ui::Wording());
    return ui::documentPaper(ui::text(titleOf("Month plan", book)), sheet.html, QPageLayout::Landscape,
                             std::move(sheet.plots));
}

Result<ui::Paper> paperOf(const HouseBook& book, const PrintOptions& options,
                          const std::optional<ui::DaySpan>& span) {
    const ui::Wording wording;
    if (options.kind == "labels") {
        const auto layout = readLayout(options);
        if (!layout) return layout.refusal();
        const auto batches = readBatches(book, options, span);
        if (!batches) return batches.refusal();
        return ui::labelPaper(ui::labelsOf(book, *batches, wording), *layout);
    }
    if (options.kind == "strike-list")
        return ui::documentPaper(ui::text(titleOf("Strike list", book)),
                                 ui::strikeListHtml(book, span, ui::Letters(book), wording),
                                 QPageLayout::Landscape);
    if (options.kind == "season") return seasonPaper(book, options, span);
    const auto day = readDay("--from", options.from);
    if (!day) return day.refusal();
    if (options.kind == "month")
        return monthPaper(book, span.value_or(ui::DaySpan{*day, *day + options.days.value_or(daysOfLists)}));
    if (options.kind == "day") {
        ui::DaySheet sheet =
            ui::daySheet(book, season::dayWork(book, forecast::BookForecast(book, *day)), wording);
        return ui::documentPaper(ui::text(titleOf(dayWords(*day), book)), sheet.html, QPageLayout::Portrait,
                                 std::move(sheet.plots));
    }
    return ui::documentPaper(ui::text(titleOf("Round of " + dayWords(*day), book)),
                             ui::roundSheetHtml(book, forecast::BookForecast(book, *day), wording),
                             QPageLayout::Landscape);
}

int printOnPaper(const PrintOptions& options) {
    std::optional<ui::DaySpan> span;
    if (options.days && (*options.days < 1 || *options.days > mostDaysPrinted))
        return refuse({"--days", "found " + std::to_string(*options.days) + ", expected 1 to 3660"});
    const int days = options.days.value_or(options.kind == "season" ? daysOfSeason : daysOfLists);
    if (!options.from.empty()) {
        const auto from = readDay("--from", options.from);
        if (!from) return refuse(from.refusal());
        span = ui::DaySpan{*from, *from + days};
    }
    const auto application = applicationWithoutScreen();
    const auto store = openBook(options.book, OpenMode::Read);
    if (!store) return refuseFile(store.refusal());
    const HouseBook& book = (*store)->book();
    const QString file = QString::fromStdString(options.out);
    if (options.kind == "map") {
        const auto day = readDay("--from", options.from);
        if (!day) return refuse(day.refusal());
        const ui::SheetOptions sheet;
        if (auto refusal = ui::checkMapSheet(file, sheet)) return refuse(*refusal);
        const auto refusal = ui::writeMapSheet(book, *day, file, sheet, ui::Wording());
        return refusal ? refuseFile(*refusal, storageFailed) : done;
    }
    const auto paper = paperOf(book, options, span);
    if (!paper) return refuse(paper.refusal());
    const auto refusal = ui::writePdf(*paper, file);
    return refusal ? refuseFile(*refusal, storageFailed) : done;
}

} // namespace

void addPrint(CLI::App& program, Work& work) {
    CLI::App* call = program.add_subcommand("print", "Put labels, lists and sheets into a PDF to be printed");
    const auto options = std::make_shared<PrintOptions>();
    call->add_option("kind", options->kind, "labels, strike-list, day, round, map, month or season")
        ->required()
        ->check(CLI::IsMember({"labels", "strike-list", "day", "round", "map", "month", "season"}));
    call->add_option("book", options->book, "The house book")->required();
    call->add_option("--out", options->out, "The file, such as labels.pdf")->required();
    call->add_option(
        "--from", options->from,
        "First day of labels, strike list, month and season, or the day of the day sheet, the "
        "round and the map; month, day sheet, round and map: today without it; a season needs it");
    call->add_option("--days", options->days,
                     "Days of labels, strike list and month, 28 without it; of a season, 365 without it");
    call->add_option("--seen", options->seen, "The day as of which a season is known; today without it");
    call->add_option("--batch", options->batches, "Labels of this batch only; may be given again");
    call->add_option("--page", options->page, "Sheet of labels, width x height in mm")->capture_default_str();
    call->add_option("--label", options->label, "One label, in mm")->capture_default_str();
    call->add_option("--grid", options->grid, "Labels across and down a sheet")->capture_default_str();
    call->add_option("--margin", options->margin, "Left and top of the first label, in mm")
        ->capture_default_str();
    call->add_option("--gap", options->gap, "Between labels, across and down, in mm")->capture_default_str();
    call->add_option("--used", options->used, "Labels of the first sheet that are gone")
        ->capture_default_str();
    call->add_option("--roll", options->roll, "A roll of labels of this size instead, in mm");
    call->callback([&work, options] { work = [options] { return printOnPaper(*options); }; });
}

} // namespace warmbench::app
