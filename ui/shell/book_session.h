#pragma once

#include "core/book/command.h"
#include "core/book/house_book.h"
#include "core/crop/library/library.h"
#include "ui/away/away_copies.h"
#include "ui/backups/backup_shelf.h"
#include "ui/place/journal_step.h"

#include <QObject>
#include <QString>

#include <memory>
#include <vector>

namespace warmbench::ui {

/// A house book that is open: the window reads it and asks for changes here, and hears of every change,
/// whoever made it. How and where it is kept is not the window's business.
class BookSession : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    [[nodiscard]] virtual const HouseBook& book() const = 0;
    /// What people call it, such as the name of its file.
    [[nodiscard]] virtual QString name() const = 0;
    /// Does it and keeps it, whole or not at all; `changed` has been emitted when it returns nothing.
    virtual Outcome perform(const Command& command) = 0;
    virtual Outcome undo() = 0;
    virtual Outcome redo() = 0;
    /// What undo would take back, in words; empty where there is nothing.
    [[nodiscard]] virtual QString undoWords() const = 0;
    [[nodiscard]] virtual QString redoWords() const = 0;
    /// Why the book can only be read just now, in a sentence for the window; empty where it can be changed.
    [[nodiscard]] virtual QString onlyReadWhy() const { return {}; }
    /// The file that it is kept in; empty where it is none, or a backup that is only looked into.
    [[nodiscard]] virtual QString fileName() const { return {}; }
    /// Where what is typed and not in the book yet can be kept beside it; empty where nowhere.
    [[nodiscard]] virtual QString draftFile() const { return {}; }
    /// Why the last backup that the book wanted to make of itself could not be made; empty where it was.
    [[nodiscard]] virtual QString backupTrouble() const { return {}; }
    /// Copies of it that are taken along on a round; none for a book that can't be copied.
    [[nodiscard]] virtual AwayCopies* copies() { return nullptr; }
    /// All that was ever done in the book, the first step first.
    virtual Result<std::vector<JournalStep>> journal() = 0;
    /// The book as it was after a step of its journal.
    virtual Result<HouseBook> bookAfter(std::int64_t step) = 0;

Q_SIGNALS:
    void changed(const warmbench::Change& change);
    /// `onlyReadWhy` says something else than before.
    void standingChanged();
};

/// Opens books for the window.
class BookOpener {
public:
    BookOpener() = default;
    BookOpener(const BookOpener&) = delete;
    BookOpener& operator=(const BookOpener&) = delete;
    virtual ~BookOpener() = default;

    /// The book of this name; refused with words for a propagator.
    virtual Result<std::unique_ptr<BookSession>> open(const QString& name) = 0;
    /// Makes an empty book of this name and opens it; refused where there is one already.
    virtual Result<std::unique_ptr<BookSession>> create(const QString& name) = 0;
    /// Opens a backup to be looked at only; `why` says so in the window.
    virtual Result<std::unique_ptr<BookSession>> openToLook(const QString& backup, const QString& why);
    /// Where books keep their backups; none for books that keep none.
    [[nodiscard]] virtual BackupShelf* backups() { return nullptr; }
    /// The built-in recipes, for planning.
    [[nodiscard]] virtual const RecipeLibrary& recipes() = 0;
    /// Files that it opens, as a file dialog wants them: `House books (*.wbook)`.
    [[nodiscard]] virtual QString fileFilter() const = 0;
};

inline Result<std::unique_ptr<BookSession>> BookOpener::openToLook(const QString& backup, const QString&) {
    return Refusal{backup.toStdString(), "there are no backups here"};
}

} // namespace warmbench::ui
