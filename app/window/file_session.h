#pragma once

#include "app/storage/book_file.h"
#include "app/window/password_keeper.h"
#include "ui/post/postbox.h"
#include "ui/shell/book_session.h"

#include <QTimer>

#include <thread>

namespace warmbench::app {

/// A house book, in a file or shared, open in the window: every change is kept before the window shows it.
/// What others do is taken over as soon as the database tells of it, else within a second. Where file or
/// database can't be reached any more the book can only be read, until it is found again.
class FileSession : public ui::BookSession, public ui::AwayCopies {
    Q_OBJECT
public:
    /// `onlyLookWhy` says why the book is only to be looked at, for good; empty for one that is to be
    /// changed.
    explicit FileSession(std::unique_ptr<BookFile> file, QString onlyLookWhy = {});
    ~FileSession() override;

    [[nodiscard]] const HouseBook& book() const override { return m_file->book(); }
    [[nodiscard]] QString name() const override;
    Outcome perform(const Command& command) override;
    Outcome undo() override;
    Outcome redo() override;
    [[nodiscard]] QString undoWords() const override { return QString::fromStdString(m_file->undoWords()); }
    [[nodiscard]] QString redoWords() const override { return QString::fromStdString(m_file->redoWords()); }
    [[nodiscard]] QString onlyReadWhy() const override { return m_onlyReadWhy; }
    [[nodiscard]] QString fileName() const override;
    [[nodiscard]] QString draftFile() const override;
    [[nodiscard]] QString backupTrouble() const override;
    [[nodiscard]] ui::AwayCopies* copies() override { return m_onlyLook ? nullptr : this; }
    Result<std::vector<ui::JournalStep>> journal() override;
    Result<HouseBook> bookAfter(std::int64_t step) override { return m_file->bookAfter(step); }

    [[nodiscard]] QString proposedName(Day day) const override;
    [[nodiscard]] Outcome take(const QString& file) override;
    [[nodiscard]] Result<ui::AwayContent> lookInto(const QString& file) override;

private:
    Outcome change(const std::function<Outcome()>& act);
    void catchUp();
    void setOnlyRead(const QString& why);
    void seek();
    void found(bool again);

    std::unique_ptr<BookFile> m_file;
    QTimer m_look; ///< for what others have done; while the book is lost, for the book
    QString m_onlyReadWhy;
    bool m_onlyLook;
    ui::Postbox m_answer;
    std::thread m_seeker; ///< waits for a server, so that the window need not
    bool m_seeking = false;
};

/// Opens house books for the window. Passwords of shared ones are looked up and kept by `keys`, which must
/// outlive it.
class FileOpener : public ui::BookOpener, public ui::BackupShelf {
public:
    explicit FileOpener(PasswordKeeper& keys) : m_keys(keys) {}

    Result<std::unique_ptr<ui::BookSession>> open(const QString& name) override;
    Result<std::unique_ptr<ui::BookSession>> create(const QString& name) override;
    Result<std::unique_ptr<ui::BookSession>> openToLook(const QString& backup, const QString& why) override;
    [[nodiscard]] ui::BackupShelf* backups() override { return this; }
    [[nodiscard]] const RecipeLibrary& recipes() override;
    [[nodiscard]] QString fileFilter() const override;

    [[nodiscard]] std::vector<ui::KeptBackup> backupsOf(const QString& book) override;
    [[nodiscard]] Result<ui::BackupContent> lookInto(const QString& backup) override;
    [[nodiscard]] Outcome copyTo(const QString& backup, const QString& newBook) override;
    [[nodiscard]] Result<QString> putInPlaceOf(const QString& backup, const QString& book) override;

private:
    PasswordKeeper& m_keys;
};

/// A line of a journal, as the window has it.
[[nodiscard]] ui::JournalStep stepOf(const JournalLine& line);

/// A book's name as it may be shown and kept: that of a shared one without its password.
[[nodiscard]] QString shownName(const QString& name);

} // namespace warmbench::app
