#include "app/storage/book_file.h"

#include "app/storage/journal_chain.h"
#include "app/storage/rows.h"
#include "core/book/rules.h"
#include "core/exchange/book/book_json.h"

#include <QSqlError>
#include <QSqlQuery>
#include <QUuid>
#include <QVariant>

#include <filesystem>

/// Looking a book's file over, its journal, and copies of it.
namespace warmbench::app {
namespace {

namespace fs = std::filesystem;

/// What the database finds wrong with itself: every row of a pragma that is not `ok`.
void askDatabase(const QSqlDatabase& database, const char* pragma, const std::string& place,
                 std::vector<Refusal>& wrong) {
    QSqlQuery query(database);
    if (!query.exec(QString::fromLatin1(pragma)))
        wrong.push_back({place, query.lastError().text().toStdString()});
    while (query.next())
        if (const QString said = query.value(0).toString(); said != QStringLiteral("ok"))
            wrong.push_back({place, said.toStdString()});
}

} // namespace

Result<std::vector<JournalEntry>> BookFile::journal() const {
    QSqlQuery query(databaseOf(m_connection));
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT seq, at, who, words, change FROM journal ORDER BY seq")))
        return Refusal{m_path, "the journal can't be read: " + query.lastError().text().toStdString()};
    std::vector<JournalEntry> entries;
    while (query.next()) {
        auto change = readChange(query.value(4).toString().toStdString());
        if (!change)
            return Refusal{m_path, "journal entry " + query.value(0).toString().toStdString() +
                                       " is damaged: " + change.refusal().text()};
        entries.push_back({query.value(0).toLongLong(), query.value(1).toString().toStdString(),
                           query.value(2).toString().toStdString(), query.value(3).toString().toStdString(),
                           std::move(*change)});
    }
    return entries;
}

std::vector<Refusal> BookFile::check() const {
    std::vector<Refusal> wrong;
    const QSqlDatabase database = databaseOf(m_connection);
    askDatabase(database, "PRAGMA integrity_check", "file", wrong);
    askDatabase(database, "PRAGMA foreign_key_check", "reference", wrong);
    for (const BrokenRule& broken : audit(m_book)) wrong.push_back(broken.refusal);
    QSqlQuery query(database);
    query.setForwardOnly(true);
    std::string chain;
    if (query.exec(QStringLiteral("SELECT seq, at, who, words, change, chain FROM journal ORDER BY seq")))
        while (query.next()) {
            const auto text = [&](int column) { return query.value(column).toString().toStdString(); };
            chain = chained(chain, {query.value(0).toLongLong(), text(1), text(2), text(3), text(4)});
            if (chain != text(5)) {
                wrong.push_back({"journal entry " + text(0), "it, or one before it, has been tampered with"});
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
                             "it does not follow from those before: " + refusal->text()});
            return wrong;
        }
    if (!(retold == m_book)) wrong.push_back({"journal", "it does not lead to what the book holds"});
    return wrong;
}

Outcome BookFile::backup(const std::string& path) const {
    std::error_code failed;
    if (fs::exists(path, failed))
        return Refusal{path, "there is a file of this name already; choose another"};
    const std::string unfinished =
        path + ".part-" + QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    if (auto refusal = copyInto(databaseOf(m_connection), unfinished))
        return Refusal{path, "the copy can't be written: " + refusal->text()};
    Outcome refusal;
    if (const auto copy = open(unfinished, OpenMode::Read); !copy)
        refusal = copy.refusal();
    else if (!((*copy)->book() == m_book))
        refusal = Refusal{path, "the copy does not hold what the book holds"};
    if (!refusal) {
        fs::create_hard_link(unfinished, path, failed);
        if (failed) refusal = Refusal{path, "the copy can't be given its name: " + failed.message()};
    }
    fs::remove(unfinished, failed);
    return refusal;
}

} // namespace warmbench::app
