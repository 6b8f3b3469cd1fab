#include "ui/shell/memory_session.h"

#include "core/book/past.h"

#include <algorithm>

namespace warmbench::ui {

MemorySession::MemorySession(HouseBook book, QString name)
    : m_book(std::move(book)), m_name(std::move(name)) {
    m_journal.push_back({0, QDateTime::currentDateTimeUtc(), tr("you"), tr("The book as it was opened")});
}

void MemorySession::note(const Change& change, const QString& words) {
    const auto number = static_cast<std::int64_t>(m_journal.size());
    m_journal.push_back({number, QDateTime::currentDateTimeUtc(), tr("you"), words});
    m_changes.push_back(change);
}

Result<HouseBook> MemorySession::bookAfter(std::int64_t step) {
    const auto first = std::clamp<std::int64_t>(step, 0, static_cast<std::int64_t>(m_changes.size()));
    return bookBefore(m_book, {m_changes.rbegin(), m_changes.rend() - first});
}

Outcome MemorySession::perform(const Command& command) {
    const QString said = QString::fromStdString(words(m_book, command).text());
    const Result<Change> change = m_book.perform(command);
    if (!change) return change.refusal();
    m_steps.resize(m_done);
    m_steps.push_back({*change, said});
    ++m_done;
    note(*change, said);
    Q_EMIT changed(*change);
    return std::nullopt;
}

Outcome MemorySession::undo() {
    if (m_done == 0) return std::nullopt;
    const Change back = m_steps[m_done - 1].change.inverse();
    if (auto refusal = m_book.apply(back)) return refusal;
    --m_done;
    note(back, tr("Undo: %1").arg(m_steps[m_done].words));
    Q_EMIT changed(back);
    return std::nullopt;
}

Outcome MemorySession::redo() {
    if (m_done == m_steps.size()) return std::nullopt;
    const Change again = m_steps[m_done].change;
    if (auto refusal = m_book.apply(again)) return refusal;
    ++m_done;
    note(again, tr("Redo: %1").arg(m_steps[m_done - 1].words));
    Q_EMIT changed(again);
    return std::nullopt;
}

QString MemorySession::undoWords() const {
    return m_done == 0 ? QString() : m_steps[m_done - 1].words;
}

QString MemorySession::redoWords() const {
    return m_done == m_steps.size() ? QString() : m_steps[m_done].words;
}

} // namespace warmbench::ui
