#include "ui/shell/memory_session.h"

namespace warmbench::ui {

Outcome MemorySession::perform(const Command& command) {
    const QString said = QString::fromStdString(words(m_book, command));
    const Result<Change> change = m_book.perform(command);
    if (!change) return change.refusal();
    m_steps.resize(m_done);
    m_steps.push_back({*change, said});
    ++m_done;
    Q_EMIT changed(*change);
    return std::nullopt;
}

Outcome MemorySession::undo() {
    if (m_done == 0) return std::nullopt;
    const Change back = m_steps[m_done - 1].change.inverse();
    if (auto refusal = m_book.apply(back)) return refusal;
    --m_done;
    Q_EMIT changed(back);
    return std::nullopt;
}

Outcome MemorySession::redo() {
    if (m_done == m_steps.size()) return std::nullopt;
    const Change again = m_steps[m_done].change;
    if (auto refusal = m_book.apply(again)) return refusal;
    ++m_done;
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
