#include "app/storage/file_store.h"

#include "app/storage/file_head.h"
#include "app/storage/file_name.h"
#include "app/storage/rows.h"
#include "app/storage/schema.h"

#include <QDateTime>
#include <QSqlError>
#include <QSqlQuery>
#include <QUrl>
#include <QVariant>

#include <filesystem>

#include <sys/stat.h>
#include <unistd.h>

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

Outcome FileStore::connect(const std::string& file) {
    QSqlDatabase database = connection("QSQLITE");
    QString options = QStringLiteral("QSQLITE_BUSY_TIMEOUT=5000");
    QString fileName = QString::fromStdString(fs::absolute(file).string());
    if (mode() == OpenMode::Read) {
        options += QStringLiteral(";QSQLITE_OPEN_READONLY;QSQLITE_OPEN_URI");
        // Without a log beside it nobody is writing, and nothing need be made beside it to read it.
        std::error_code ignored;
        const bool quiet = !fs::exists(file + "-wal", ignored);
        fileName = QStringLiteral("file:%1?%2")
                       .arg(QString::fromUtf8(QUrl::toPercentEncoding(fileName, "/")),
                            quiet ? QStringLiteral("immutable=1") : QStringLiteral("mode=ro"));
    }
    database.setDatabaseName(fileName);
    database.setConnectOptions(options);
    if (!database.open())
        return refusal(phrase("it can't be opened: %1", database.lastError().text().toStdString()));
    return std::nullopt;
}

Outcome FileStore::prepareToWrite() {
    for (const char* pragma :
         {"PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL", "PRAGMA foreign_keys = ON"})
        if (auto failed = run(database(), QString::fromLatin1(pragma))) return refusal(wordsOf(*failed));
    return std::nullopt;
}

Outcome FileStore::make(const std::function<Outcome()>& fill) {
    std::error_code ignored;
    if (fs::exists(name(), ignored))
        return refusal(phrase("there is a file of this name already; choose another"));
    const std::string unfinished = temporaryName(name());
    Outcome failed = connect(unfinished);
    if (!failed) failed = prepareToWrite();
    if (!failed) failed = run(database(), QStringLiteral("PRAGMA application_id = %1").arg(applicationId));
    if (!failed) failed = applySteps(database(), 0, currentSchema);
    if (!failed) failed = beginToWrite();
    if (!failed) failed = fill();
    if (!failed) failed = commit();
    if (!failed) failed = run(database(), QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)"));
    disconnect();
    if (!failed) return giveName(unfinished, name());
    for (const char* ending : {"", "-wal", "-shm"}) fs::remove(unfinished + ending, ignored);
    return refusal(phrase("it can't be written: %1", failed->what));
}

Outcome FileStore::open() {
    const auto head = readHead(name());
    if (!head) return head.refusal();
    if (head->application != applicationId)
        return refusal(phrase("this is no house book (found another program's database)"));
    if (head->version > static_cast<std::uint32_t>(currentSchema))
        return newerProgram(static_cast<int>(head->version));
    const std::string folder = fs::absolute(name()).parent_path().string();
    if (mode() == OpenMode::Write &&
        (::access(name().c_str(), W_OK) != 0 || ::access(folder.c_str(), W_OK) != 0))
        return refusal(phrase(
            "it is read-only (the file or its folder can't be written), so nothing can be changed in it"));
    m_opened = identityOf(name());
    if (auto failed = connect(name())) return failed;
    QSqlQuery query(database());
    // What somebody else has put into the file may do nothing when it is read.
    query.exec(QStringLiteral("PRAGMA trusted_schema = OFF"));
    if (const std::string foreign = foreignPart(database()); !foreign.empty())
        return refusal(phrase(
            "something stands in it that no house book has (%1); open a backup, and keep this file as it is",
            foreign));
    const bool whole = query.exec(QStringLiteral("PRAGMA quick_check(1)")) && query.next() &&
                       query.value(0).toString() == QStringLiteral("ok");
    if (!whole) return refusal(phrase("the file is damaged; open a backup, and keep this file as it is"));
    // The log may hold a later version than the head of the file, until it is written back.
    query.exec(QStringLiteral("PRAGMA user_version"));
    const int version = query.next() ? query.value(0).toInt() : 0;
    query.finish();
    query.clear();
    if (version > currentSchema) return newerProgram(version);
    if (mode() == OpenMode::Read) return std::nullopt;
    if (auto failed = prepareToWrite()) return failed;
    return version < currentSchema ? migrate(version) : std::nullopt;
}

Outcome FileStore::migrate(int from) {
    const std::string saved = name() + ".version-" + std::to_string(from) + ".backup";
    std::error_code ignored;
    if (!fs::exists(saved, ignored)) {
        const std::string unfinished = temporaryName(saved);
        if (auto failed = copyInto(database(), unfinished))
            return refusal(
                phrase("no backup can be made before it is brought up to date: %1", wordsOf(*failed)));
        if (auto failed = giveName(unfinished, saved)) return failed;
    }
    if (auto failed = applySteps(database(), from, currentSchema))
        return refusal(phrase("it can't be brought up to date: %1", wordsOf(*failed)));
    return std::nullopt;
}

Outcome FileStore::beginToRead() {
    const Outcome failed = run(database(), QStringLiteral("BEGIN"));
    return failed ? Outcome{refusal(wordsOf(*failed))} : std::nullopt;
}

Outcome FileStore::beginToWrite() {
    if (mode() == OpenMode::Read) return refusal(phrase("it was opened for reading only"));
    // What is written into a file that has no name any more is lost.
    if (m_opened != Identity{} && !isReachable())
        return refusal(phrase("the file has been moved, removed or replaced since it was opened, so nothing "
                              "can be changed; put it back, or open it again"));
    const Outcome failed = run(database(), QStringLiteral("BEGIN IMMEDIATE"));
    return failed ? Outcome{refusal(phrase("another program is writing to it; try again (%1)", failed->what))}
                  : std::nullopt;
}

FileStore::Identity FileStore::identityOf(const std::string& file) {
    struct stat found {};
    if (::stat(file.c_str(), &found) != 0) return {};
    return {found.st_dev, found.st_ino};
}

bool FileStore::isReachable() const {
    return identityOf(name()) == m_opened;
}

Outcome FileStore::reopen() {
    return open();
}

std::function<bool()> FileStore::prober() const {
    return [file = name()] { return readHead(file).ok(); };
}

std::string FileStore::now() const {
    return QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs).toStdString();
}

Outcome FileStore::addToJournal(const JournalRow& entry, const std::string& chain) {
    return addEntry(database(), entry, chain);
}

std::string FileStore::who() const {
    const QString user = qEnvironmentVariable("USER", qEnvironmentVariable("LOGNAME"));
    return user.isEmpty() ? "someone" : user.toStdString();
}

void FileStore::findFaults(std::vector<Refusal>& wrong) const {
    askDatabase(database(), "PRAGMA integrity_check", "file", wrong);
    askDatabase(database(), "PRAGMA foreign_key_check", "reference", wrong);
}

} // namespace warmbench::app
