#include "tests/faults/crash/scenario.h"

#include "core/exchange/book/book_json.h"
#include "core/exchange/file/file.h"
#include "tests/app/storage/book_folder.h"
#include "tests/support/small_book.h"

#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace warmbench::tests {
namespace {

namespace fs = std::filesystem;
using app::BookFile;
using app::OpenMode;

constexpr int firstCommand = 10;
constexpr int commandsInARun = 12;

std::string contentOf(const std::string& file) {
    std::ostringstream content;
    content << std::ifstream(file, std::ios::binary).rdbuf();
    return content.str();
}

/// The book of checks: large enough that a write has many calls.
const HouseBook& largeBook() {
    static const HouseBook book = bookOfChecks(40, 200);
    return book;
}

/// Opens a book as the next start of the program would, looks it over, and goes on working with it.
std::string unsound(const std::string& file, const std::function<std::string(const HouseBook&)>& holds) {
    const auto book = BookFile::open(file, OpenMode::Write);
    if (!book) return "the book does not open: " + book.refusal().text();
    if (std::string wrong = holds((*book)->book()); !wrong.empty()) return wrong;
    if (const auto wrong = (*book)->check(); !wrong.empty())
        return "the book is not sound: " + wrong.front().text();
    if (const auto refusal = (*book)->perform(handsOf(5000))) return "work can't go on: " + refusal->text();
    return {};
}

std::string isThis(const HouseBook& book, const HouseBook& expected) {
    return book == expected ? std::string() : "the book does not hold what it must";
}

/// A new file is there whole or not at all; where the program said that it was done it is there.
std::string half(const std::string& file, const Ended& ended, const HouseBook& expected) {
    if (!fs::exists(file))
        return !ended.killed && ended.status == 0 ? "the program says that it is done, and nothing is there"
                                                  : std::string();
    return unsound(file, [&](const HouseBook& book) { return isThis(book, expected); });
}

std::string judgeCommands(const std::string& file, const HouseBook& before, const Ended& ended,
                          int& acknowledged) {
    // A line that is cut short was not said.
    std::istringstream said(ended.out.substr(0, ended.out.rfind('\n') + 1));
    std::vector<int> kept;
    for (int n = 0; said >> n;) kept.push_back(n);
    acknowledged += static_cast<int>(kept.size());
    return unsound(file, [&](const HouseBook& book) -> std::string {
        for (const int n : kept)
            if (book.withKey<HandDay>(day("2030-01-01") + n).size() != 1)
                return "a command that was said to be kept is missing";
        const std::size_t more = book.all<HandDay>().size() - before.all<HandDay>().size() - kept.size();
        return more > 1 ? "more was kept than had been begun" : "";
    });
}

std::vector<std::string> burst(const std::string& file) {
    return {FAULTS_BURST, file, std::to_string(firstCommand), std::to_string(commandsInARun)};
}

void make(const std::string& file, const HouseBook& book) {
    if (const auto refusal = BookFile::create(file, book)) throw std::runtime_error(refusal->text());
}

Scenario commands(const std::string& prototype) {
    return {"commands", [=](const std::string& folder) { fs::copy_file(prototype, folder + "/book"); },
            [](const std::string& folder) { return burst(folder + "/book"); },
            [](const std::string& folder, const Ended& ended, int& acknowledged) {
                return judgeCommands(folder + "/book", smallBook().book, ended, acknowledged);
            }};
}

Scenario upgrade() {
    HouseBook before = smallBook().book;
    perform(before, handsOf(1));
    return {"upgrade",
            [](const std::string& folder) {
                fs::copy_file(WARMBENCH_TEST_DATA "/data/book/version-1.wbook", folder + "/book");
            },
            [](const std::string& folder) { return burst(folder + "/book"); },
            [before](const std::string& folder, const Ended& ended, int& acknowledged) -> std::string {
                const std::string saved = folder + "/book.version-1.backup";
                if (fs::exists(saved)) {
                    const auto backup = BookFile::open(saved, OpenMode::Read);
                    if (!backup) return "the backup does not open: " + backup.refusal().text();
                    if (!((*backup)->book() == before)) return "the backup is not what was backed up";
                }
                return judgeCommands(folder + "/book", before, ended, acknowledged);
            }};
}

Scenario import(const std::string& empty, const std::string& description) {
    return {"import", [=](const std::string& folder) { fs::copy_file(empty, folder + "/book"); },
            [=](const std::string& folder) {
                return std::vector<std::string>{WARMBENCH_PROGRAM, "import", folder + "/book", description};
            },
            [](const std::string& folder, const Ended& ended, int&) {
                return unsound(folder + "/book", [&](const HouseBook& book) -> std::string {
                    const bool said = !ended.killed && ended.status == 0;
                    return book == largeBook() || (book == HouseBook{} && !said) ? "" : "it is half imported";
                });
            }};
}

/// A call that makes the file `made` from a book or description that is not to change.
Scenario making(const char* name, const std::string& source,
                std::function<std::vector<std::string>(const std::string& made)> call) {
    return {
        name, [](const std::string&) {}, [=](const std::string& folder) { return call(folder + "/made"); },
        [=, before = contentOf(source)](const std::string& folder, const Ended& ended, int&) -> std::string {
            if (contentOf(source) != before) return "the source has been changed";
            return half(folder + "/made", ended, largeBook());
        }};
}

Scenario exporting(const char* name, const std::string& source, const std::string& old) {
    return {name,
            [=](const std::string& folder) {
                if (!old.empty()) std::ofstream(folder + "/made.json") << old;
            },
            [=](const std::string& folder) {
                return std::vector<std::string>{
                    WARMBENCH_PROGRAM, "export", source, "--as", "json", "--out", folder + "/made.json"};
            },
            [=](const std::string& folder, const Ended& ended, int&) -> std::string {
                const std::string text = contentOf(folder + "/made.json");
                const bool said = !ended.killed && ended.status == 0;
                if (text == old && !said) return {};
                const auto book = readBook(text);
                return book && *book == largeBook() ? "" : "the export is neither the old one nor the new";
            }};
}

/// Going back to a backup of an empty book, from one whose last commands are in its log only.
Scenario restoring(const std::string& old, const std::string& backup, const HouseBook& before) {
    return {"restore",
            [=](const std::string& folder) {
                fs::create_directories(folder + "/book.backups");
                fs::copy_file(backup, folder + "/book.backups/2026-03-01.warmbench");
                for (const char* part : {"", "-wal"}) fs::copy_file(old + part, folder + "/book" + part);
            },
            [](const std::string& folder) {
                return std::vector<std::string>{WARMBENCH_PROGRAM, "backups", folder + "/book", "--restore",
                                                "2026-03-01"};
            },
            [=](const std::string& folder, const Ended& ended, int&) -> std::string {
                const bool said = !ended.killed && ended.status == 0;
                bool back = false;
                const std::string wrong = unsound(folder + "/book", [&](const HouseBook& book) {
                    back = book == HouseBook{};
                    return back || (book == before && !said) ? ""
                                                             : "it is neither the old book nor the backup";
                });
                if (!wrong.empty() || !back) return wrong;
                return unsound(folder + "/book.before-restore-1",
                               [&](const HouseBook& book) { return isThis(book, before); });
            }};
}

/// A book with commands that are in its log only, as a program that was killed leaves it.
HouseBook leaveLog(const std::string& small, const std::string& file) {
    const std::string working = file + ".working";
    fs::copy_file(small, working);
    const auto book = BookFile::open(working, OpenMode::Write);
    if (!book) throw std::runtime_error(book.refusal().text());
    for (int n = 0; n < firstCommand; ++n)
        if (const auto refusal = (*book)->perform(handsOf(n))) throw std::runtime_error(refusal->text());
    for (const char* part : {"", "-wal"}) fs::copy_file(working + part, file + part);
    return (*book)->book();
}

} // namespace

Verdict struck(const Scenario& scenario, const Fault& fault, int& acknowledged) {
    fs::create_directories(fault.folder);
    scenario.prepare(fault.folder);
    Verdict verdict{runUnder(fault, scenario.call(fault.folder)), {}};
    const Ended& ended = verdict.ended;
    if (ended.crashed)
        verdict.wrong = "the program crashed: " + ended.error;
    else if (!ended.killed && ended.status != 0 && ended.error.empty())
        verdict.wrong = "the program failed without a word";
    else
        verdict.wrong = scenario.judge(fault.folder, ended, acknowledged);
    fs::remove_all(fault.folder);
    return verdict;
}

std::vector<Scenario> scenarios(const std::string& prototypes) {
    const std::string small = prototypes + "/small.wbook";
    const std::string empty = prototypes + "/empty.wbook";
    const std::string large = prototypes + "/large.wbook";
    const std::string description = prototypes + "/large.json";
    make(small, smallBook().book);
    make(empty, HouseBook{});
    make(large, largeBook());
    std::ofstream(description) << writeBook(largeBook());
    const std::string logged = prototypes + "/logged.wbook";
    const HouseBook before = leaveLog(small, logged);
    const std::string program = WARMBENCH_PROGRAM;
    return {commands(small),
            upgrade(),
            import(empty, description),
            making("new", description,
                   [=](const std::string& made) {
                       return std::vector<std::string>{program, "new", made, "--from", description};
                   }),
            making("backup", large,
                   [=](const std::string& made) {
                       return std::vector<std::string>{program, "backup", large, "--out", made};
                   }),
            making("copy", large,
                   [=](const std::string& made) {
                       return std::vector<std::string>{program, "copy", large, made};
                   }),
            restoring(logged, empty, before),
            exporting("export", large, ""),
            exporting("export over", large, "an older export\n")};
}

} // namespace warmbench::tests
