#pragma once

#include "app/storage/book_file.h"
#include "ui/shell/book_session.h"

#include <QTimer>

namespace warmbench::app {

/// A house book in a file, open in the window: every change is on the disk before the window shows it. What
/// others write into the same file is taken over every few seconds.
class FileSession : public ui::BookSession {
    Q_OBJECT
public:
    explicit FileSession(std::unique_ptr<BookFile> file);

    [[nodiscard]] const HouseBook& book() const override { return m_file->book(); }
    [[nodiscard]] QString name() const override;
    Outcome perform(const Command& command) override { return m_file->perform(command); }
    Outcome undo() override { return m_file->undo(); }
    Outcome redo() override { return m_file->redo(); }
    [[nodiscard]] QString undoWords() const override { return QString::fromStdString(m_file->undoWords()); }
    [[nodiscard]] QString redoWords() const override { return QString::fromStdString(m_file->redoWords()); }

private:
    std::unique_ptr<BookFile> m_file;
    QTimer m_catchUp;
};

/// Opens house books in files for the window.
class FileOpener : public ui::BookOpener {
public:
    Result<std::unique_ptr<ui::BookSession>> open(const QString& name) override;
    Result<std::unique_ptr<ui::BookSession>> create(const QString& name) override;
    [[nodiscard]] const RecipeLibrary& recipes() override;
    [[nodiscard]] QString fileFilter() const override;
};

} // namespace warmbench::app
