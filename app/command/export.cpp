#include "app/command/book_words.h"
#include "app/command/call.h"
#include "app/command/open_book.h"
#include "core/exchange/book/book_json.h"
#include "core/exchange/book/book_table.h"
#include "core/exchange/calendar/calendar.h"
#include "core/exchange/file/file.h"
#include "core/exchange/workbook/workbook.h"

#include <iostream>
#include <memory>
#include <sstream>

namespace warmbench::app {
namespace {

struct ExportOptions {
    std::string book;
    std::string as;
    std::string what;
    std::string from;
    std::string out;
};

/// What tells a book from every other: a hash (FNV-1a, 64 bits) of how and when its journal began.
std::string originOf(const JournalEntry& first) {
    std::uint64_t hash = 14695981039346656037U;
    for (const char c : first.at + first.who + first.words)
        hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211U;
    std::ostringstream text;
    text << std::hex << hash;
    return text.str();
}

/// `2027-02-01T06:30:00Z` as a calendar writes it: `20270201T063000Z`.
std::string calendarMoment(const std::string& iso) {
    std::string moment;
    for (const char c : iso.substr(0, 19))
        if (c != '-' && c != ':') moment += c;
    return moment + 'Z';
}

Result<std::string> calendarOf(const BookFile& file, const ExportOptions& options) {
    const auto from = readDay("--from", options.from);
    if (!from) return from.refusal();
    const auto journal = file.journal();
    if (!journal) return journal.refusal();
    exchange::CalendarStamp stamp{"new", 0, calendarMoment(from->iso() + "T00:00:00")};
    // The last change of the book is the moment of what the calendar tells.
    if (!journal->empty())
        stamp = {originOf(journal->front()), journal->back().seq, calendarMoment(journal->back().at)};
    return exchange::writeCalendar(file.book(), *from, stamp);
}

Refusal noSuchList(const std::string& found) {
    std::string names;
    for (const std::string& name : tableNames()) names += (names.empty() ? "" : ", ") + name;
    return {"--what", "found '" + found + "', expected one of " + names};
}

Result<std::string> textOf(const BookFile& file, const ExportOptions& options) {
    const HouseBook& book = file.book();
    if (options.as == "json") return writeBook(book);
    if (options.as == "ics") return calendarOf(file, options);
    if (options.as != "csv")
        return Refusal{"--as", "found '" + options.as + "', expected json, csv, xlsx or ics"};
    const auto table = bookTable(book, options.what);
    if (table) return csvText(*table);
    return noSuchList(options.what);
}

/// One list, or all of them, as a spreadsheet file.
int exportWorkbook(const HouseBook& book, const ExportOptions& options) {
    if (options.out.empty()) return refuse({"--out", "a spreadsheet needs a file's name"});
    std::vector<exchange::NamedTable> tables;
    for (const std::string& name : tableNames())
        if (options.what.empty() || options.what == name) tables.push_back({name, *bookTable(book, name)});
    if (tables.empty()) return refuse(noSuchList(options.what));
    if (auto refusal = exchange::writeWorkbook(options.out, tables))
        return refuseFile(*refusal, storageFailed);
    return done;
}

int exportBook(const ExportOptions& options) {
    const auto file = openBook(options.book, OpenMode::Read);
    if (!file) return refuseFile(file.refusal());
    if (options.as == "xlsx") return exportWorkbook((*file)->book(), options);
    const auto text = textOf(**file, options);
    if (!text) return refuse(text.refusal());
    if (options.out.empty()) {
        std::cout << *text;
        return done;
    }
    if (auto refusal = exchange::replaceFile(options.out, *text)) return refuseFile(*refusal, storageFailed);
    return done;
}

} // namespace

void addExport(CLI::App& program, Work& work) {
    CLI::App* call = program.add_subcommand("export", "Write a house book, or one of its lists, for others");
    const auto options = std::make_shared<ExportOptions>();
    call->add_option("book", options->book, "The house book")->required();
    call->add_option("--as", options->as,
                     "json: the whole book; csv: one list; xlsx: one list or all; ics: a calendar")
        ->required();
    call->add_option("--what", options->what, "The list for csv or xlsx, such as targets");
    call->add_option("--from", options->from, "First day of the calendar; today without it");
    call->add_option("--out", options->out, "The file; standard output without it");
    call->callback([&work, options] { work = [options] { return exportBook(*options); }; });
}

} // namespace warmbench::app
