#include "app/storage/book_file.h"

#include "app/storage/file_name.h"
#include "app/storage/rows.h"
#include "app/storage/whole_book.h"

#include <QSqlQuery>
#include <QSqlRecord>
#include <QVariant>

#include <filesystem>

/// Copies of a book: backups in files, and whole moves between files and shared books.
namespace warmbench::app {
namespace {

namespace fs = std::filesystem;

/// The journal up to an entry, letter by letter, and given to `put` one by one with its place in the chain.
Outcome eachEntry(const QSqlDatabase& database, std::int64_t upTo,
                  const std::function<Outcome(const JournalRow&, const std::string&)>& put) {
    QSqlQuery query(database);
    query.setForwardOnly(true);
    query.prepare(QStringLiteral("SELECT * FROM journal WHERE seq <= ? ORDER BY seq"));
    query.addBindValue(static_cast<qlonglong>(upTo));
    if (!query.exec())
        return Refusal{{}, phrase("the journal can't be read: %1", wordsOf(query.lastError()))};
    const int chainColumn = query.record().indexOf(QStringLiteral("chain"));
    std::string chain;
    while (query.next()) {
        const auto text = [&](const char* column) {
            return query.value(QLatin1String(column)).toString().toStdString();
        };
        const JournalRow row{query.value(QStringLiteral("seq")).toLongLong(), text("at"), text("who"),
                             text("words"), text("change")};
        // A book of version 1 has no chain yet; any other's goes along as it is, so that tampering shows
        // there too.
        chain = chainColumn < 0 ? chained(chain, row) : text("chain");
        if (auto refusal = put(row, chain)) return refusal;
    }
    return std::nullopt;
}

} // namespace

Outcome BookFile::copyTo(const std::string& path) const {
    auto made = storeOf(path, OpenMode::Write);
    if (!made) return made.refusal();
    Store& target = **made;
    const auto fill = [&]() -> Outcome {
        // The default nursery is no row of the empty target.
        if (auto refusal = writeRows(target.database(), changeTo(m_book))) return refusal;
        return eachEntry(m_store->database(), m_seq, [&](const JournalRow& row, const std::string& chain) {
            return target.addToJournal(row, chain);
        });
    };
    if (auto refusal = target.make(fill)) return refusal;
    const auto copy = open(path, OpenMode::Read);
    if (!copy) return copy.refusal();
    if (!((*copy)->m_book == m_book) || (*copy)->m_seq != m_seq)
        return Refusal{path, phrase("the copy does not hold what the book holds")};
    return std::nullopt;
}

Outcome BookFile::backup(const std::string& path) const {
    std::error_code failed;
    if (fs::exists(path, failed))
        return Refusal{path, phrase("there is a file of this name already; choose another")};
    if (isShared(this->path()) || isShared(path)) return copyTo(path);
    const std::string unfinished = temporaryName(path);
    if (auto refusal = copyInto(m_store->database(), unfinished))
        return Refusal{path, phrase("the copy can't be written: %1", wordsOf(*refusal))};
    Outcome refusal;
    if (const auto copy = open(unfinished, OpenMode::Read); !copy)
        refusal = copy.refusal();
    else if (!((*copy)->book() == m_book))
        refusal = Refusal{path, phrase("the copy does not hold what the book holds")};
    if (!refusal) return giveName(unfinished, path);
    fs::remove(unfinished, failed);
    return refusal;
}

} // namespace warmbench::app
