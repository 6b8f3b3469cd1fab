#include "app/storage/backups.h"

#include "app/storage/book_file.h"
#include "app/storage/file_name.h"

#include <algorithm>
#include <filesystem>
#include <set>

namespace warmbench::app {
namespace {

namespace fs = std::filesystem;

constexpr const char* ending = ".warmbench";
constexpr int dailyKept = 7;
constexpr int weeksKept = 5;
constexpr int monthsKept = 12;

int monthOf(Day day) {
    return day.year() * 12 + static_cast<int>(day.month());
}

/// Weeks begin on a Monday.
int weekOf(Day day) {
    return (day - Day::first() - Day::first().weekday()) / 7;
}

} // namespace

std::string backupFolder(const std::string& book) {
    return book + ".backups";
}

std::vector<Backup> backupsOf(const std::string& book) {
    std::vector<Backup> found;
    std::error_code none;
    for (const auto& entry : fs::directory_iterator(backupFolder(book), none)) {
        const fs::path& path = entry.path();
        if (path.extension() != ending) continue;
        if (const auto day = Day::fromIso(path.stem().string())) found.push_back({*day, path.string()});
    }
    std::sort(found.begin(), found.end(), [](const Backup& a, const Backup& b) { return b.day < a.day; });
    return found;
}

std::vector<Day> daysToThin(std::vector<Day> days, Day today) {
    std::sort(days.begin(), days.end());
    std::set<int> weeks;
    std::set<int> months;
    std::set<int> years;
    std::vector<Day> gone;
    for (const Day day : days) {
        const bool year = years.insert(day.year()).second;
        const bool month = months.insert(monthOf(day)).second && monthOf(today) - monthOf(day) < monthsKept;
        const bool week = weeks.insert(weekOf(day)).second && weekOf(today) - weekOf(day) < weeksKept;
        if (!year && !month && !week && today - day >= dailyKept) gone.push_back(day);
    }
    return gone;
}

Outcome BookFile::backUpOn(Day today) {
    if (isShared(path())) return std::nullopt;
    const std::string folder = backupFolder(path());
    const std::string name = folder + "/" + today.iso() + ending;
    std::error_code failed;
    if (fs::exists(name, failed)) return std::nullopt;
    fs::create_directories(folder, failed);
    if (failed) return Refusal{folder, "no backup can be made: " + failed.message()};
    if (auto refusal = backup(name)) {
        // Another program may have been faster by a moment.
        if (fs::exists(name, failed)) return std::nullopt;
        return refusal;
    }
    std::vector<Day> days;
    for (const Backup& one : backupsOf(path())) days.push_back(one.day);
    for (const Day day : daysToThin(days, today)) fs::remove(folder + "/" + day.iso() + ending, failed);
    return std::nullopt;
}

Result<std::string> restoreBackup(const std::string& backup, const std::string& book) {
    {
        const auto sound = BookFile::open(backup, OpenMode::Read);
        if (!sound) return sound.refusal();
        if (const auto wrong = (*sound)->check(); !wrong.empty())
            return Refusal{backup, "the backup is not sound: " + wrong.front().text()};
    }
    // A copy is made first, so that there is never no book.
    const std::string ready = temporaryName(book);
    std::error_code failed;
    fs::copy_file(backup, ready, failed);
    if (failed) return Refusal{book, "the backup can't be copied beside it: " + failed.message()};
    int n = 1;
    const auto keptName = [&] { return book + ".before-restore-" + std::to_string(n); };
    while (fs::exists(keptName(), failed)) ++n;
    const std::string kept = keptName();
    // A log that was left belongs to the old file.
    for (const char* part : {"-wal", "-shm"})
        if (fs::exists(book + part, failed)) fs::rename(book + part, kept + part, failed);
    if (fs::exists(book, failed)) {
        fs::rename(book, kept, failed);
        if (failed) return Refusal{book, "it can't be put aside: " + failed.message()};
    }
    if (auto refusal = giveName(ready, book)) {
        fs::rename(kept, book, failed);
        return *refusal;
    }
    return kept;
}

} // namespace warmbench::app
