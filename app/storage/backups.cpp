#include "app/storage/backups.h"

#include "app/storage/book_file.h"
#include "app/storage/file_name.h"
#include "app/storage/rows.h"

#include <QUuid>

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

/// The first name beside the book that a book put aside can have.
std::string nameToKeep(const std::string& book) {
    std::error_code ignored;
    for (int n = 1;; ++n) {
        std::string name = book + ".before-restore-" + std::to_string(n);
        if (!fs::exists(name, ignored)) return name;
    }
}

/// Writes a sound book's log back into its file; the log goes with it unless another program has the book
/// open.
void settleLog(const std::string& book) {
    std::error_code ignored;
    if (!fs::exists(book + "-wal", ignored) || !BookFile::open(book, OpenMode::Read)) return;
    const QString name = QUuid::createUuid().toString();
    {
        QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name);
        database.setDatabaseName(QString::fromStdString(fs::absolute(book).string()));
        if (database.open()) [[maybe_unused]]
            const Outcome done = run(database, QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)"));
    }
    QSqlDatabase::removeDatabase(name);
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
    if (failed) return Refusal{folder, phrase("no backup can be made: %1", failed.message())};
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

Outcome copyBackup(const std::string& backup, const std::string& newBook) {
    const auto sound = BookFile::open(backup, OpenMode::Read);
    if (!sound) return sound.refusal();
    if (const auto wrong = (*sound)->check(); !wrong.empty())
        return Refusal{backup, phrase("the backup is not sound: %1", wordsOf(wrong.front()))};
    return (*sound)->backup(newBook);
}

Result<std::string> restoreBackup(const std::string& backup, const std::string& book) {
    const std::string ready = temporaryName(book);
    if (auto refusal = copyBackup(backup, ready)) return *refusal;
    std::error_code failed;
    if (!fs::exists(book, failed)) {
        if (auto refusal = giveName(ready, book)) return *refusal;
        return std::string();
    }
    // A log that is left belongs to the old file: written back where that can be done, else kept with it.
    settleLog(book);
    const std::string kept = nameToKeep(book);
    const auto undone = [&](const std::string& what) {
        for (const std::string& name : {ready, kept, kept + "-wal"}) fs::remove(name, failed);
        return Refusal{book, phrase("it can't be put aside: %1", what)};
    };
    for (const char* part : {"-wal", ""}) {
        if (!fs::exists(book + part, failed)) continue;
        std::error_code refused;
        fs::create_hard_link(book + part, kept + part, refused);
        if (refused) return undone(refused.message());
    }
    syncFolder(book);
    for (const char* part : {"-wal", "-shm"}) fs::remove(book + part, failed);
    syncFolder(book);
    std::error_code refused;
    fs::rename(ready, book, refused);
    if (refused) {
        fs::create_hard_link(kept + "-wal", book + "-wal", failed);
        return undone(refused.message());
    }
    syncFolder(book);
    return kept;
}

} // namespace warmbench::app
