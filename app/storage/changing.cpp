#include "app/storage/book_file.h"

#include "app/storage/rows.h"
#include "app/storage/whole_book.h"
#include "core/exchange/book/book_json.h"

#include <QDate>
#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>

#include <set>
#include <utility>

/// How a book in a file changes: commands, undo and redo, and what others have changed.
namespace warmbench::app {

/// What others have done between the state that a change was asked on and now.
struct BookFile::News {
    int entries = 0;
    std::string last;                                       ///< the last of them in words, with who did it
    std::set<std::pair<std::size_t, std::int64_t>> touched; ///< kind and number of each thing
};

namespace {

constexpr std::int64_t julianDayOfEpoch = 2'440'588; // of 1970-01-01

std::pair<std::size_t, std::int64_t> touchedBy(const AnyEdit& edit) {
    return {edit.index(), std::visit([](const auto& one) { return one.id().number; }, edit)};
}

bool replaces(const AnyEdit& edit) {
    return std::visit([](const auto& one) { return one.before.has_value(); }, edit);
}

} // namespace

/// The right to write: others kept from writing, what they wrote taken over. It is given back, and what was
/// not committed with it, unless it has ended.
class BookFile::Transaction {
public:
    explicit Transaction(BookFile& file) : m_file(file) {}
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    ~Transaction() {
        if (m_open) m_file.m_store->rollBack();
    }

    Outcome begin() {
        m_file.backUpToday();
        if (auto refusal = m_file.m_store->beginToWrite()) return refusal;
        m_open = true;
        const auto taken = m_file.takeOver(m_news);
        return taken ? std::nullopt : Outcome{taken.refusal()};
    }
    void ended() { m_open = false; }
    [[nodiscard]] const News& news() const { return m_news; }

private:
    BookFile& m_file;
    News m_news;
    bool m_open = false;
};

void BookFile::backUpToday() {
    if (!m_keepsBackups || m_store->mode() == OpenMode::Read) return;
    const Day today =
        Day::fromNumber(static_cast<int>(QDate::currentDate().toJulianDay() - julianDayOfEpoch));
    if (today == m_backedUpOn) return;
    m_backedUpOn = today;
    m_backupTrouble = backUpOn(today);
}

Result<int> BookFile::catchUp() {
    News news;
    return takeOver(news);
}

Result<int> BookFile::takeOver(News& news) {
    QSqlQuery query(m_store->database());
    query.setForwardOnly(true);
    query.prepare(
        QStringLiteral("SELECT seq, change, chain, who, words FROM journal WHERE seq > ? ORDER BY seq"));
    query.addBindValue(static_cast<qlonglong>(m_seq));
    if (!query.exec())
        return Refusal{path(), phrase("the journal can't be read: %1", wordsOf(query.lastError()))};
    while (query.next()) {
        const auto change = readChange(query.value(1).toString().toStdString());
        if (!change) return Refusal{path(), phrase("the journal is damaged: %1", wordsOf(change.refusal()))};
        if (auto refusal = m_book.apply(*change))
            return Refusal{path(), phrase("what others have changed does not fit: %1", wordsOf(*refusal))};
        m_seq = query.value(0).toLongLong();
        m_chain = query.value(2).toString().toStdString();
        ++news.entries;
        news.last = query.value(3).toString().toStdString() + ": " + query.value(4).toString().toStdString();
        for (const AnyEdit& edit : change->edits) news.touched.insert(touchedBy(edit));
        if (m_listener) m_listener(*change);
    }
    return news.entries;
}

Outcome BookFile::reopen() {
    if (auto refusal = m_store->reopen()) return refusal;
    QSqlQuery query(m_store->database());
    query.prepare(QStringLiteral("SELECT chain FROM journal WHERE seq = ?"));
    query.addBindValue(static_cast<qlonglong>(m_seq));
    const bool same = query.exec() && query.next() && query.value(0).toString().toStdString() == m_chain;
    query.clear();
    if (same) {
        const auto taken = catchUp();
        return taken ? std::nullopt : Outcome{taken.refusal()};
    }
    // It is not the book that it was, such as one restored from a backup.
    if (auto refusal = load()) return refusal;
    if (m_listener) m_listener({});
    return std::nullopt;
}

/// Keeps a change that the book in memory has made already, or takes it back there.
Outcome BookFile::keepNow(const Change& change, const std::string& said) {
    const auto seq = m_seq;
    const auto chain = m_chain;
    Outcome refusal = keep(change, said);
    if (!refusal)
        if (const auto failed = m_store->commit())
            refusal = Refusal{path(), phrase("it could not be kept: %1", wordsOf(*failed))};
    if (refusal) {
        m_seq = seq;
        m_chain = chain;
        [[maybe_unused]] const Outcome back = m_book.apply(change.inverse());
    }
    return refusal;
}

/// Keeps a change that the book in memory has made already, unless it replaces what somebody else has changed
/// since it was asked for: then that one's work would be gone without anybody's having seen it.
Outcome BookFile::keepHere(const Change& change, const std::string& said, const News& news) {
    for (const AnyEdit& edit : change.edits) {
        if (!replaces(edit) || !news.touched.contains(touchedBy(edit))) continue;
        [[maybe_unused]] const Outcome back = m_book.apply(change.inverse());
        return Refusal{said,
                       phrase("somebody was faster with the same things (%1); look at it again", news.last)};
    }
    return keepNow(change, said);
}

Outcome BookFile::perform(const Command& command) {
    Transaction transaction(*this);
    if (auto refusal = transaction.begin()) return refusal;
    const News& news = transaction.news();
    const std::string said = words(m_book, command).text();
    const auto change = m_book.perform(command);
    if (!change && news.entries > 0)
        return Refusal{change.refusal().place,
                       phrase("%1 (just before: %2)", change.refusal().what, news.last)};
    if (!change) return change.refusal();
    if (auto refusal = keepHere(*change, said, news)) return refusal;
    transaction.ended();
    m_steps.add(m_seq, said);
    if (m_listener) m_listener(*change);
    return std::nullopt;
}

Outcome BookFile::adopt(const HouseBook& other, const std::string& said) {
    Transaction transaction(*this);
    if (auto refusal = transaction.begin()) return refusal;
    if (!(m_book == HouseBook{}))
        return Refusal{path(),
                       phrase("it is not empty; a whole book can be imported into an empty one only")};
    const Change change = changeTo(other);
    m_book = other;
    if (auto refusal = keepNow(change, said)) return refusal;
    transaction.ended();
    m_steps.add(m_seq, said);
    if (m_listener) m_listener(change);
    return std::nullopt;
}

/// Does the inverse of a journal entry and keeps it.
Result<Change> BookFile::reverse(const UndoSteps::Step& step, const std::string& said) {
    Transaction transaction(*this);
    if (auto refusal = transaction.begin()) return *refusal;
    QSqlQuery query(m_store->database());
    query.prepare(QStringLiteral("SELECT change FROM journal WHERE seq = ?"));
    query.addBindValue(static_cast<qlonglong>(step.seq));
    if (!query.exec() || !query.next())
        return Refusal{path(), phrase("the journal can't be read: %1", wordsOf(query.lastError()))};
    const auto change = readChange(query.value(0).toString().toStdString());
    query.clear();
    if (!change) return Refusal{path(), phrase("the journal is damaged: %1", wordsOf(change.refusal()))};
    Change back = change->inverse();
    if (auto refusal = m_book.apply(back)) return *refusal;
    if (auto refusal = keepNow(back, said)) return *refusal;
    transaction.ended();
    return back;
}

Outcome BookFile::undo() {
    const UndoSteps::Step* step = m_steps.toUndo();
    if (!step) return Refusal{{}, phrase("there is nothing to undo")};
    const auto back = reverse(*step, UndoSteps::undoWords(*step));
    if (!back) return back.refusal();
    Outcome refusal = m_steps.undone(m_seq);
    if (m_listener) m_listener(*back);
    return refusal;
}

Outcome BookFile::redo() {
    const UndoSteps::Step* step = m_steps.toRedo();
    if (!step) return Refusal{{}, phrase("there is nothing to redo")};
    const auto back = reverse(*step, UndoSteps::redoWords(*step));
    if (!back) return back.refusal();
    m_steps.redone(m_seq);
    if (m_listener) m_listener(*back);
    return std::nullopt;
}

} // namespace warmbench::app
