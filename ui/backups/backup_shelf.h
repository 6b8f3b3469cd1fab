#pragma once

#include "core/book/house_book.h"
#include "ui/place/journal_step.h"

#include <optional>
#include <vector>

namespace warmbench::ui {

/// A backup that a book has made of itself, from before the first change of a day.
struct KeptBackup {
    Day day;
    QString name; ///< by which it is asked for again
};

/// What is in a backup that opens sound.
struct BackupContent {
    HouseBook book;
    std::optional<JournalStep> last; ///< the last step that is in it
};

/// Where the backups of books are kept. How is not the window's business.
class BackupShelf {
public:
    BackupShelf() = default;
    BackupShelf(const BackupShelf&) = delete;
    BackupShelf& operator=(const BackupShelf&) = delete;
    virtual ~BackupShelf() = default;

    /// The backups of a book by its name, the newest first; the book itself need not open.
    [[nodiscard]] virtual std::vector<KeptBackup> backupsOf(const QString& book) = 0;
    /// Opens a backup and looks all of it over, without changing it; a refusal where it is not sound. May
    /// take seconds, and may be called from any thread.
    [[nodiscard]] virtual Result<BackupContent> lookInto(const QString& backup) = 0;
    /// Puts a backup into a new file; refused where there is one of that name.
    [[nodiscard]] virtual Outcome copyTo(const QString& backup, const QString& newBook) = 0;
    /// Puts a backup in the place of a book, which must not be open. Tells the name under which what stood
    /// there is kept; empty where nothing did.
    [[nodiscard]] virtual Result<QString> putInPlaceOf(const QString& backup, const QString& book) = 0;
};

} // namespace warmbench::ui
