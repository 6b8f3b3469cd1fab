#pragma once

#include "core/quantity/day.h"
#include "core/quantity/result.h"

#include <string>
#include <vector>

/// Backups that a book in a file has made of itself, in the folder `BOOK.backups` beside it: one of each day
/// on which it was changed, from before that day's first change.
namespace warmbench::app {

struct Backup {
    Day day;
    std::string path;
};

/// The folder of a book's backups; there need be none.
[[nodiscard]] std::string backupFolder(const std::string& book);
/// The backups that are there, the newest first.
[[nodiscard]] std::vector<Backup> backupsOf(const std::string& book);

/// Which of these days' backups may go, as there are enough others: kept are those of the last seven days,
/// the first of each of the last five weeks, of each of the last twelve months, and of every year.
[[nodiscard]] std::vector<Day> daysToThin(std::vector<Day> days, Day today);

/// Puts a backup in the place of the book. What was there is kept beside it (`BOOK.before-restore-1`, ...)
/// and told as the result, which is empty where nothing was there. Refused, and nothing changed, where the
/// backup does not open sound. The book must not be open. At each moment of it there is a whole book of the
/// book's name, the old one or the backup.
[[nodiscard]] Result<std::string> restoreBackup(const std::string& backup, const std::string& book);

/// Puts a backup into a new file beside all others. Refused where there is a file of that name, or where the
/// backup does not open sound.
[[nodiscard]] Outcome copyBackup(const std::string& backup, const std::string& newBook);

} // namespace warmbench::app
