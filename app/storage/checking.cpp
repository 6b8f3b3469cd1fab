#include "app/storage/book_file.h"

#include "app/storage/journal_chain.h"
#include "app/storage/rows.h"
#include "core/book/rules.h"
#include "core/exchange/book/book_json.h"

#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>

/// Looking a book over, and its journal.
namespace warmbench::app {
Result<std::vector<JournalEntry>> BookFile::journal() const {
    QSqlQuery query(m_store->database());
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT seq, at, who, words, change FROM journal ORDER BY seq")))
        return Refusal{path(), phrase("the journal can't be read: %1", wordsOf(query.lastError()))};
    std::vector<JournalEntry> entries;
    while (query.next()) {
        auto change = readChange(query.value(4).toString().toStdString());
        if (!change)
            return Refusal{path(),
                           phrase("journal entry %1 is damaged: %2", query.value(0).toString().toStdString(),
                                  wordsOf(change.refusal()))};
        entries.push_back({{query.value(0).toLongLong(), query.value(1).toString().toStdString(),
                            query.value(2).toString().toStdString(), query.value(3).toString().toStdString()},
                           std::move(*change)});
    }
    return entries;
}

std::vector<Refusal> BookFile::check() const {
    std::vector<Refusal> wrong;
    const QSqlDatabase database = m_store->database();
    m_store->findFaults(wrong);
    for (const BrokenRule& broken : audit(m_book)) wrong.push_back(broken.refusal);
    QSqlQuery query(database);
    query.setForwardOnly(true);
    std::string chain;
    if (query.exec(QStringLiteral("SELECT seq, at, who, words, change, chain FROM journal ORDER BY seq")))
        while (query.next()) {
            const auto text = [&](int column) { return query.value(column).toString().toStdString(); };
            chain = chained(chain, {query.value(0).toLongLong(), text(1), text(2), text(3), text(4)});
            if (chain != text(5)) {
                wrong.push_back(
                    {"journal entry " + text(0), phrase("it, or one before it, has been tampered with")});
                break;
            }
        }
    const auto entries = journal();
    if (!entries) {
        wrong.push_back(entries.refusal());
        return wrong;
    }
    HouseBook retold;
    for (const JournalEntry& entry : *entries)
        if (auto refusal = retold.apply(entry.change)) {
            wrong.push_back({"journal entry " + std::to_string(entry.seq),
                             phrase("it does not follow from those before: %1", wordsOf(*refusal))});
            return wrong;
        }
    if (!(retold == m_book)) wrong.push_back({"journal", phrase("it does not lead to what the book holds")});
    return wrong;
}

} // namespace warmbench::app
