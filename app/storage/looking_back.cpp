#include "app/storage/book_file.h"
#include "app/storage/rows.h"
#include "core/book/past.h"
#include "core/exchange/book/book_json.h"

#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>

/// Looking back in a book's journal.
namespace warmbench::app {

Result<std::vector<JournalLine>> BookFile::journalLines() const {
    QSqlQuery query(m_store->database());
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT seq, at, who, words FROM journal ORDER BY seq")))
        return Refusal{path(), phrase("the journal can't be read: %1", wordsOf(query.lastError()))};
    std::vector<JournalLine> lines;
    while (query.next())
        lines.push_back({query.value(0).toLongLong(), query.value(1).toString().toStdString(),
                         query.value(2).toString().toStdString(), query.value(3).toString().toStdString()});
    return lines;
}

Result<HouseBook> BookFile::bookAfter(std::int64_t seq) {
    if (const auto taken = catchUp(); !taken) return taken.refusal();
    QSqlQuery query(m_store->database());
    query.setForwardOnly(true);
    query.prepare(QStringLiteral("SELECT change FROM journal WHERE seq > ? AND seq <= ? ORDER BY seq DESC"));
    query.addBindValue(static_cast<qlonglong>(seq));
    query.addBindValue(static_cast<qlonglong>(m_seq));
    if (!query.exec())
        return Refusal{path(), phrase("the journal can't be read: %1", wordsOf(query.lastError()))};
    std::vector<Change> latestFirst;
    while (query.next()) {
        auto change = readChange(query.value(0).toString().toStdString());
        if (!change) return Refusal{path(), phrase("the journal is damaged: %1", wordsOf(change.refusal()))};
        latestFirst.push_back(std::move(*change));
    }
    auto past = bookBefore(m_book, latestFirst);
    if (!past)
        return Refusal{path(), phrase("the journal does not lead back there: %1", wordsOf(past.refusal()))};
    return past;
}

} // namespace warmbench::app
