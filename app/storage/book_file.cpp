#include "app/storage/book_file.h"

#include "app/storage/file_head.h"
#include "app/storage/journal_chain.h"
#include "app/storage/rows.h"
#include "app/storage/schema.h"
#include "app/storage/whole_book.h"
#include "core/exchange/book/book_json.h"

#include <QDateTime>
#include <QSqlError>
#include <QSqlQuery>
#include <QSqlRecord>
#include <QUrl>
#include <QUuid>
#include <QVariant>

#include <filesystem>
#include <system_error>

#include <fcntl.h>
#include <unistd.h>

namespace warmbench::app {
namespace {

namespace fs = std::filesystem;

Refusal at(const std::string& path, const Refusal& refusal) {
    return {path, refusal.text()};
}

std::string userName() {
    const QString user = qEnvironmentVariable("USER", qEnvironmentVariable("LOGNAME"));
    return user.isEmpty() ? "someone" : user.toStdString();
}

void syncFolder(const fs::path& file) {
    const fs::path folder = file.parent_path().empty() ? fs::path(".") : file.parent_path();
    const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY);
    if (descriptor < 0) return;
    ::fsync(descriptor);
    ::close(descriptor);
}

/// Gives a finished file its name, unless there is one of that name.
Outcome giveName(const std::string& finished, const std::string& path) {
    std::error_code failed;
    fs::create_hard_link(finished, path, failed);
    std::error_code ignored;
    fs::remove(finished, ignored);
    if (failed == std::errc::file_exists)
        return Refusal{path, "there is a file of this name already; choose another"};
    if (failed) return Refusal{path, "it can't be written: " + failed.message()};
    syncFolder(path);
    return std::nullopt;
}

std::string temporaryName(const std::string& path) {
    return path + ".part-" + QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
}

Refusal newerProgram(const std::string& path, int version) {
    return {path, "it was written by a newer Warmbench (found version " + std::to_string(version) +
                      ", expected at most " + std::to_string(BookFile::schemaVersion) + "); use that one"};
}

std::string wordsOfFirst(const std::vector<BrokenRule>& broken) {
    return broken.front().refusal.text() +
           (broken.size() > 1 ? " (and " + std::to_string(broken.size() - 1) + " more)" : "");
}

} // namespace

BookFile::BookFile(std::string path, OpenMode mode)
    : m_path(std::move(path)), m_mode(mode), m_connection(QUuid::createUuid().toString()) {}

BookFile::~BookFile() {
    {
        QSqlDatabase database = databaseOf(m_connection);
        if (database.isOpen()) database.close();
    }
    QSqlDatabase::removeDatabase(m_connection);
}

Outcome BookFile::connect() {
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_connection);
    QString options = QStringLiteral("QSQLITE_BUSY_TIMEOUT=5000");
    QString name = QString::fromStdString(fs::absolute(m_path).string());
    if (m_mode == OpenMode::Read) {
        options += QStringLiteral(";QSQLITE_OPEN_READONLY;QSQLITE_OPEN_URI");
        // Without a log beside it nobody is writing, and nothing need be made beside it to read it.
        std::error_code ignored;
        const bool quiet = !fs::exists(m_path + "-wal", ignored);
        name = QStringLiteral("file:%1?%2")
                   .arg(QString::fromUtf8(QUrl::toPercentEncoding(name, "/")),
                        quiet ? QStringLiteral("immutable=1") : QStringLiteral("mode=ro"));
    }
    database.setDatabaseName(name);
    database.setConnectOptions(options);
    if (!database.open())
        return Refusal{m_path, "it can't be opened: " + database.lastError().text().toStdString()};
    return std::nullopt;
}

Outcome BookFile::prepareToWrite() {
    for (const char* pragma :
         {"PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL", "PRAGMA foreign_keys = ON"})
        if (auto refusal = run(databaseOf(m_connection), QString::fromLatin1(pragma)))
            return at(m_path, *refusal);
    return std::nullopt;
}

Outcome BookFile::create(const std::string& path, const HouseBook& book) {
    std::error_code ignored;
    if (fs::exists(path, ignored))
        return Refusal{path, "there is a file of this name already; choose another"};
    const std::string unfinished = temporaryName(path);
    Outcome refusal;
    {
        BookFile file(unfinished, OpenMode::Write);
        refusal = file.connect();
        if (!refusal) refusal = file.prepareToWrite();
        const QSqlDatabase database = databaseOf(file.m_connection);
        if (!refusal)
            refusal = run(database, QStringLiteral("PRAGMA application_id = %1").arg(applicationId));
        if (!refusal) refusal = applySteps(database, 0, schemaVersion);
        if (!refusal) refusal = file.keep(changeTo(book), "Make the book");
        if (!refusal) refusal = run(database, QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)"));
    }
    if (!refusal) return giveName(unfinished, path);
    for (const char* ending : {"", "-wal", "-shm"}) fs::remove(unfinished + ending, ignored);
    return Refusal{path, "it can't be written: " + refusal->what};
}

Result<std::unique_ptr<BookFile>> BookFile::open(const std::string& path, OpenMode mode) {
    const auto head = readHead(path);
    if (!head) return head.refusal();
    if (head->application != applicationId)
        return Refusal{path, "this is no house book (found another program's database)"};
    if (head->version > static_cast<std::uint32_t>(schemaVersion))
        return newerProgram(path, static_cast<int>(head->version));
    const std::string folder = fs::absolute(path).parent_path().string();
    if (mode == OpenMode::Write && (::access(path.c_str(), W_OK) != 0 || ::access(folder.c_str(), W_OK) != 0))
        return Refusal{
            path,
            "it is read-only (the file or its folder can't be written), so nothing can be changed in it"};
    std::unique_ptr<BookFile> file(new BookFile(path, mode));
    if (auto refusal = file->connect()) return *refusal;
    QSqlQuery query(databaseOf(file->m_connection));
    const bool whole = query.exec(QStringLiteral("PRAGMA quick_check(1)")) && query.next() &&
                       query.value(0).toString() == QStringLiteral("ok");
    if (!whole) return Refusal{path, "the file is damaged; open a backup, and keep this file as it is"};
    // The log may hold a later version than the head of the file, until it is written back.
    query.exec(QStringLiteral("PRAGMA user_version"));
    const int version = query.next() ? query.value(0).toInt() : 0;
    query.finish();
    query.clear();
    if (version > schemaVersion) return newerProgram(path, version);
    if (mode == OpenMode::Write)
        if (auto refusal = file->prepareToWrite()) return *refusal;
    if (version < schemaVersion && mode == OpenMode::Write)
        if (auto refusal = file->migrate(version)) return *refusal;
    if (auto refusal = file->load()) return *refusal;
    return file;
}

Outcome BookFile::migrate(int from) {
    const std::string saved = m_path + ".version-" + std::to_string(from) + ".backup";
    std::error_code ignored;
    if (!fs::exists(saved, ignored)) {
        const std::string unfinished = temporaryName(saved);
        if (auto refusal = copyInto(databaseOf(m_connection), unfinished))
            return Refusal{m_path,
                           "no backup can be made before it is brought up to date: " + refusal->text()};
        if (auto refusal = giveName(unfinished, saved)) return refusal;
    }
    if (auto refusal = applySteps(databaseOf(m_connection), from, schemaVersion))
        return Refusal{m_path, "it can't be brought up to date: " + refusal->text()};
    return std::nullopt;
}

Outcome BookFile::load() {
    const QSqlDatabase database = databaseOf(m_connection);
    if (auto refusal = run(database, QStringLiteral("BEGIN"))) return at(m_path, *refusal);
    auto things = readRows(database);
    QSqlQuery last(database);
    last.exec(QStringLiteral("SELECT * FROM journal ORDER BY seq DESC LIMIT 1"));
    if (last.next()) {
        m_seq = last.value(QStringLiteral("seq")).toLongLong();
        // A book of version 1 that is only read has no chain.
        if (last.record().contains(QStringLiteral("chain")))
            m_chain = last.value(QStringLiteral("chain")).toString().toStdString();
    }
    last.finish();
    [[maybe_unused]] const Outcome ended = run(database, QStringLiteral("COMMIT"));
    if (!things) return Refusal{m_path, "the file is damaged: " + things.refusal().text()};
    auto made = HouseBook::make(std::move(*things));
    if (const auto* broken = std::get_if<std::vector<BrokenRule>>(&made))
        return Refusal{m_path, "the file is damaged: " + wordsOfFirst(*broken)};
    m_book = std::move(std::get<HouseBook>(made));
    return std::nullopt;
}

Outcome BookFile::keep(const Change& change, const std::string& words) {
    const QSqlDatabase database = databaseOf(m_connection);
    const JournalRow entry{m_seq + 1,
                           QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs).toStdString(),
                           userName(), words, writeChange(change)};
    const std::string chain = chained(m_chain, entry);
    Outcome refusal = writeRows(database, change);
    if (!refusal) {
        QSqlQuery query(database);
        query.prepare(QStringLiteral(
            "INSERT INTO journal (seq, at, who, words, change, chain) VALUES (?, ?, ?, ?, ?, ?)"));
        query.addBindValue(static_cast<qlonglong>(entry.seq));
        for (const std::string& text : {entry.at, entry.who, entry.words, entry.change, chain})
            query.addBindValue(QString::fromStdString(text));
        if (!query.exec())
            refusal = Refusal{{}, "the database says: " + query.lastError().text().toStdString()};
    }
    if (refusal) return Refusal{m_path, "it could not be kept: " + refusal->text()};
    m_seq = entry.seq;
    m_chain = chain;
    return std::nullopt;
}

} // namespace warmbench::app
