#include "app/storage/undo_steps.h"

#include "app/storage/rows.h"

#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>

#include <algorithm>
#include <limits>
#include <string_view>

namespace warmbench::app {
namespace {

constexpr std::string_view undoMark = "Undo: ";
constexpr std::string_view redoMark = "Redo: ";
constexpr int entriesAtOnce = 200;

/// Takes one away from those counted under some words, where there is one.
bool takesOne(std::map<std::string, int>& counts, const std::string& words) {
    const auto found = counts.find(words);
    if (found == counts.end()) return false;
    if (--found->second == 0) counts.erase(found);
    return true;
}

} // namespace

UndoSteps::Told UndoSteps::told(const std::string& words) {
    if (words.starts_with(undoMark)) return {Way::TakenBack, words.substr(undoMark.size())};
    if (words.starts_with(redoMark)) return {Way::DoneAgain, words.substr(redoMark.size())};
    return {Way::Done, words};
}

std::string UndoSteps::undoWords(const Step& step) {
    return std::string(undoMark) + step.words;
}

std::string UndoSteps::redoWords(const Step& step) {
    return std::string(redoMark) + step.words;
}

void UndoSteps::clear() {
    m_done.clear();
    m_undone.clear();
    m_more = false;
    m_takenBack.clear();
}

Outcome UndoSteps::read(const Store& store) {
    clear();
    m_store = &store;
    m_who = store.who();
    m_readFrom = std::numeric_limits<std::int64_t>::max();
    m_more = true;
    return readEarlier();
}

/// From the latest entry to the earliest. Every entry but `Undo` puts a step on those done, and `Undo` takes
/// one of the same words away: the last, unless another program of the same person has written between. So,
/// backwards, an `Undo` is made good by the next of its words that is not one. The same holds for those taken
/// back, up to the first step of another kind, after which none could be done again.
Outcome UndoSteps::readEarlier() {
    bool canBeRedone = m_readFrom == std::numeric_limits<std::int64_t>::max();
    std::map<std::string, int> doneAgain;
    while (m_more && m_done.empty()) {
        QSqlQuery query(m_store->database());
        query.setForwardOnly(true);
        query.prepare(QStringLiteral("SELECT seq, words FROM journal WHERE who = ? AND seq < ? AND seq > "
                                     "(SELECT MIN(seq) FROM journal) "
                                     "ORDER BY seq DESC LIMIT ?"));
        query.addBindValue(QString::fromStdString(m_who));
        query.addBindValue(static_cast<qlonglong>(m_readFrom));
        query.addBindValue(entriesAtOnce);
        if (!query.exec())
            return Refusal{{}, phrase("the journal can't be read: %1", wordsOf(query.lastError()))};
        std::vector<Step> earlier;
        int entries = 0;
        for (; query.next(); ++entries) {
            m_readFrom = query.value(0).toLongLong();
            const auto [way, step] = told(query.value(1).toString().toStdString());
            if (way == Way::TakenBack) {
                ++m_takenBack[step];
                if (!takesOne(doneAgain, step) && canBeRedone)
                    m_undone.insert(m_undone.begin(), {m_readFrom, step});
                continue;
            }
            if (way == Way::DoneAgain)
                ++doneAgain[step];
            else
                canBeRedone = false;
            if (!takesOne(m_takenBack, step)) earlier.push_back({m_readFrom, step});
        }
        m_more = entries == entriesAtOnce;
        m_done.assign(earlier.rbegin(), earlier.rend());
    }
    return std::nullopt;
}

void UndoSteps::add(std::int64_t seq, const std::string& words) {
    m_done.push_back({seq, words});
    m_undone.clear();
}

Outcome UndoSteps::undone(std::int64_t seq) {
    m_undone.push_back({seq, m_done.back().words});
    m_done.pop_back();
    return readEarlier();
}

void UndoSteps::redone(std::int64_t seq) {
    m_done.push_back({seq, m_undone.back().words});
    m_undone.pop_back();
}

} // namespace warmbench::app
