#include "app/storage/journal_chain.h"

#include "app/storage/rows.h"

#include <QCryptographicHash>
#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>

namespace warmbench::app {

std::string chained(const std::string& before, const JournalRow& entry) {
    QCryptographicHash hash(QCryptographicHash::Sha256);
    // Lengths stand before the texts, so that no two entries read as the same bytes.
    for (const std::string& part :
         {before, std::to_string(entry.seq), entry.at, entry.who, entry.words, entry.change}) {
        hash.addData(QByteArray::number(static_cast<qulonglong>(part.size())) + ':');
        hash.addData(QByteArray::fromRawData(part.data(), static_cast<qsizetype>(part.size())));
    }
    return hash.result().toHex().toStdString();
}

Outcome addEntry(const QSqlDatabase& database, const JournalRow& entry, const std::string& chain) {
    QSqlQuery query(database);
    query.prepare(
        QStringLiteral("INSERT INTO journal (seq, at, who, words, change, chain) VALUES (?, ?, ?, ?, ?, ?)"));
    query.addBindValue(static_cast<qlonglong>(entry.seq));
    for (const std::string& text : {entry.at, entry.who, entry.words, entry.change, chain})
        query.addBindValue(QString::fromStdString(text));
    if (query.exec()) return std::nullopt;
    return Refusal{{}, phrase("the database says: %1", wordsOf(query.lastError()))};
}

Outcome chainJournal(const QSqlDatabase& database) {
    QSqlQuery rows(database);
    QSqlQuery set(database);
    if (!rows.exec(QStringLiteral("SELECT seq, at, who, words, change FROM journal ORDER BY seq")) ||
        !set.prepare(QStringLiteral("UPDATE journal SET chain = ? WHERE seq = ?")))
        return Refusal{{}, phrase("the journal can't be chained: %1", rows.lastError().text().toStdString())};
    std::string chain;
    while (rows.next()) {
        chain =
            chained(chain, {rows.value(0).toLongLong(), rows.value(1).toString().toStdString(),
                            rows.value(2).toString().toStdString(), rows.value(3).toString().toStdString(),
                            rows.value(4).toString().toStdString()});
        set.addBindValue(QString::fromStdString(chain));
        set.addBindValue(rows.value(0));
        if (!set.exec())
            return Refusal{{},
                           phrase("the journal can't be chained: %1", set.lastError().text().toStdString())};
    }
    return std::nullopt;
}

} // namespace warmbench::app
