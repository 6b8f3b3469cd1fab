#pragma once

#include "ui/shell/book_session.h"

#include <vector>

namespace warmbench::ui {

/// A book in memory that nothing keeps: for tests and for looking at an exported book.
class MemorySession : public BookSession {
    Q_OBJECT
public:
    MemorySession(HouseBook book, QString name);

    [[nodiscard]] const HouseBook& book() const override { return m_book; }
    [[nodiscard]] QString name() const override { return m_name; }
    Outcome perform(const Command& command) override;
    Outcome undo() override;
    Outcome redo() override;
    [[nodiscard]] QString undoWords() const override;
    [[nodiscard]] QString redoWords() const override;
    /// Its first step, 0, is the book as it was given.
    Result<std::vector<JournalStep>> journal() override { return m_journal; }
    Result<HouseBook> bookAfter(std::int64_t step) override;

private:
    struct Step {
        Change change;
        QString words;
    };

    void note(const Change& change, const QString& words);

    HouseBook m_book;
    QString m_name;
    std::vector<Step> m_steps;
    std::size_t m_done = 0; ///< steps that are in the book
    std::vector<JournalStep> m_journal;
    std::vector<Change> m_changes; ///< one for each step of the journal but the first
};

} // namespace warmbench::ui
