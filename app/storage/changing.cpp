#include "app/storage/book_file.h"

#include "app/storage/rows.h"
#include "app/storage/whole_book.h"
#include "core/exchange/book/book_json.h"

#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>

/// How a book in a file changes: commands, undo and redo, and what others have changed.
namespace warmbench::app {

/// The right to write: the file locked against other writers, what they wrote taken over. It is given back,
/// and what was not committed with it, unless it has ended.
class BookFile::Transaction {
public:
    explicit Transaction(BookFile& file) : m_file(file) {}
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    ~Transaction() {
        if (m_open) m_file.m_store->rollBack();
    }

    Outcome begin() {
        if (auto refusal = m_file.m_store->beginToWrite()) return refusal;
        m_open = true;
        const auto taken = m_file.catchUp();
        return taken ? std::nullopt : Outcome{taken.refusal()};
    }
    void ended() { m_open = false; }

private:
    BookFile& m_file;
    bool m_open = false;
};

Result<int> BookFile::catchUp() {
    QSqlQuery query(m_store->database());
    query.prepare(QStringLiteral("SELECT seq, change, chain FROM journal WHERE seq > ? ORDER BY seq"));
    query.addBindValue(static_cast<qlonglong>(m_seq));
    if (!query.exec()) return Refusal{path(), "the journal can't be read: " + wordsOf(query.lastError())};
    int taken = 0;
    while (query.next()) {
        const auto change = readChange(query.value(1).toString().toStdString());
        if (!change) return Refusal{path(), "the journal is damaged: " + change.refusal().text()};
        if (auto refusal = m_book.apply(*change))
            return Refusal{path(), "what others have changed does not fit: " + refusal->text()};
        m_seq = query.value(0).toLongLong();
        m_chain = query.value(2).toString().toStdString();
        ++taken;
        if (m_listener) m_listener(*change);
    }
    return taken;
}

/// Keeps a change that the book in memory has made already, or takes it back there.
Outcome BookFile::keepNow(const Change& change, const std::string& said) {
    const auto seq = m_seq;
    const auto chain = m_chain;
    Outcome refusal = keep(change, said);
    if (!refusal)
        if (const auto failed = m_store->commit())
            refusal = Refusal{path(), "it could not be kept: " + failed->text()};
    if (refusal) {
        m_seq = seq;
        m_chain = chain;
        [[maybe_unused]] const Outcome back = m_book.apply(change.inverse());
    }
    return refusal;
}

Outcome BookFile::perform(const Command& command) {
    Transaction transaction(*this);
    if (auto refusal = transaction.begin()) return refusal;
    const std::string said = words(m_book, command);
    const auto change = m_book.perform(command);
    if (!change) return change.refusal();
    if (auto refusal = keepNow(*change, said)) return refusal;
    transaction.ended();
    m_done.push_back({said, *change});
    m_undone.clear();
    if (m_listener) m_listener(*change);
    return std::nullopt;
}

Outcome BookFile::adopt(const HouseBook& other, const std::string& said) {
    Transaction transaction(*this);
    if (auto refusal = transaction.begin()) return refusal;
    if (!(m_book == HouseBook{}))
        return Refusal{path(), "it is not empty; a whole book can be imported into an empty one only"};
    const Change change = changeTo(other);
    m_book = other;
    if (auto refusal = keepNow(change, said)) return refusal;
    transaction.ended();
    m_done.push_back({said, change});
    m_undone.clear();
    if (m_listener) m_listener(change);
    return std::nullopt;
}

/// Takes the last step of `from` back and lays its inverse on `to`.
Outcome BookFile::repeat(std::vector<Step>& from, std::vector<Step>& to, const std::string& verb) {
    if (from.empty()) return Refusal{{}, "there is nothing to " + verb};
    Transaction transaction(*this);
    if (auto refusal = transaction.begin()) return refusal;
    const Step step = from.back();
    const Change back = step.change.inverse();
    if (auto refusal = m_book.apply(back)) return refusal;
    if (auto refusal = keepNow(back, (verb == "undo" ? "Undo: " : "Redo: ") + step.words)) return refusal;
    transaction.ended();
    from.pop_back();
    to.push_back({step.words, back});
    if (m_listener) m_listener(back);
    return std::nullopt;
}

Outcome BookFile::undo() {
    return repeat(m_done, m_undone, "undo");
}

Outcome BookFile::redo() {
    return repeat(m_undone, m_done, "redo");
}

} // namespace warmbench::app
