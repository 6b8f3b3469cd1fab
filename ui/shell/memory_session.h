#pragma once

#include "ui/shell/book_session.h"

#include <vector>

namespace warmbench::ui {

/// A book in memory that nothing keeps: for tests and for looking at an exported book.
class MemorySession : public BookSession {
    Q_OBJECT
public:
    MemorySession(HouseBook book, QString name) : m_book(std::move(book)), m_name(std::move(name)) {}

    [[nodiscard]] const HouseBook& book() const override { return m_book; }
    [[nodiscard]] QString name() const override { return m_name; }
    Outcome perform(const Command& command) override;
    Outcome undo() override;
    Outcome redo() override;
    [[nodiscard]] QString undoWords() const override;
    [[nodiscard]] QString redoWords() const override;

private:
    struct Step {
        Change change;
        QString words;
    };

    HouseBook m_book;
    QString m_name;
    std::vector<Step> m_steps;
    std::size_t m_done = 0; ///< steps that are in the book
};

} // namespace warmbench::ui
