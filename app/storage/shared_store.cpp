#include "app/storage/shared_store.h"

#include "app/storage/rows.h"
#include "app/storage/schema.h"

#include <QDateTime>
#include <QSqlDriver>
#include <QSqlError>
#include <QSqlQuery>
#include <QVariant>

#include <array>
#include <cstdio>
#include <mutex>

namespace warmbench::app {
namespace {

/// A value of a connection string, in quotes.
QString quoted(const std::string& value) {
    QString text = QString::fromStdString(value);
    text.replace(QLatin1Char('\\'), QStringLiteral("\\\\")).replace(QLatin1Char('\''), QStringLiteral("\\'"));
    return QLatin1Char('\'') + text + QLatin1Char('\'');
}

/// What is asked of every connection unless the address says otherwise: an end to waiting, for a server that
/// does not answer and for one that has gone without a word.
constexpr std::array<std::pair<const char*, const char*>, 6> usual{{{"connect_timeout", "5"},
                                                                    {"application_name", "warmbench"},
                                                                    {"keepalives_idle", "5"},
                                                                    {"keepalives_interval", "2"},
                                                                    {"keepalives_count", "2"},
                                                                    {"tcp_user_timeout", "8000"}}};

QtMessageHandler& tellAsBefore() {
    static QtMessageHandler handler = nullptr;
    return handler;
}

/// The driver warns that it can't free a statement in a transaction that has failed: the server has dropped
/// it by then, and what failed is told as a refusal.
void tellButThat(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    if (type == QtWarningMsg && message.startsWith(QStringLiteral("Unable to free statement"))) return;
    if (tellAsBefore())
        tellAsBefore()(type, context, message);
    else
        std::fprintf(stderr, "%s\n", qPrintable(message));
}

} // namespace

SharedStore::SharedStore(SharedAddress address, OpenMode mode)
    : Store(address.shown(), mode), m_address(std::move(address)) {}

Outcome SharedStore::setUp(const char* statement) {
    const Outcome failed = run(database(), QString::fromLatin1(statement));
    return failed ? Outcome{refusal(phrase("it can't be opened: %1", wordsOf(*failed)))} : std::nullopt;
}

Outcome SharedStore::connect() {
    static std::once_flag once;
    std::call_once(once, [] { tellAsBefore() = qInstallMessageHandler(tellButThat); });
    QSqlDatabase database = connection("QPSQL");
    if (!database.isValid())
        return refusal(phrase("shared books need Qt's driver for PostgreSQL, which is not installed (Debian: "
                              "libqt6sql6-psql)"));
    database.setHostName(QString::fromStdString(m_address.host));
    if (m_address.port > 0) database.setPort(m_address.port);
    database.setUserName(QString::fromStdString(m_address.user));
    database.setPassword(QString::fromStdString(m_address.password));
    database.setDatabaseName(QString::fromStdString(m_address.database));
    QStringList options;
    for (const auto& [name, value] : usual)
        if (!m_address.settings.contains(name))
            options << QStringLiteral("%1=%2").arg(QLatin1String(name), QLatin1String(value));
    for (const auto& [name, value] : m_address.settings)
        options << QString::fromStdString(name) + QLatin1Char('=') + quoted(value);
    database.setConnectOptions(options.join(QLatin1Char(';')));
    if (!database.open()) return refusal(phrase("it can't be opened: %1", wordsOf(database.lastError())));
    QSqlQuery user(database);
    user.setForwardOnly(true);
    if (user.exec(QStringLiteral("SELECT session_user")) && user.next())
        m_who = user.value(0).toString().toStdString();
    user.clear();
    for (const char* statement :
         {"SET search_path TO warmbench", "SET lock_timeout TO '5s'", "SET client_min_messages TO warning"})
        if (auto failed = setUp(statement)) return failed;
    return mode() == OpenMode::Read ? setUp("SET default_transaction_read_only TO on") : std::nullopt;
}

Result<int> SharedStore::version() {
    QSqlQuery query(database());
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT to_regclass('warmbench.about') IS NOT NULL, "
                                   "current_setting('server_encoding')")) ||
        !query.next())
        return refusal(phrase("it can't be read: %1", wordsOf(query.lastError())));
    if (query.value(1).toString() != QStringLiteral("UTF8"))
        return refusal(phrase("found a database in the encoding %1, expected UTF8",
                              query.value(1).toString().toStdString()));
    if (!query.value(0).toBool()) return 0;
    if (!query.exec(QStringLiteral("SELECT version FROM warmbench.about")))
        return refusal(
            phrase("you may not read the house book in this database: %1", wordsOf(query.lastError())));
    return query.next() ? query.value(0).toInt() : 0;
}

Outcome SharedStore::make(const std::function<Outcome()>& fill) {
    if (auto failed = connect()) return failed;
    const auto found = version();
    if (!found) return found.refusal();
    if (*found != 0) return refusal(phrase("there is a house book in this database already; choose another"));
    Outcome failed = run(database(), QStringLiteral("BEGIN"));
    if (!failed) failed = run(database(), QStringLiteral("CREATE SCHEMA warmbench"));
    if (!failed) failed = applySharedSteps(database(), 0, currentSchema);
    m_now = QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs).toStdString();
    m_making = true;
    if (!failed) failed = fill();
    m_making = false;
    if (!failed) failed = commit();
    if (!failed) return std::nullopt;
    rollBack();
    return refusal(phrase("no house book can be made in it: %1", failed->what));
}

Outcome SharedStore::open() {
    if (auto failed = connect()) return failed;
    const auto found = version();
    if (!found) return found.refusal();
    if (*found == 0)
        return refusal(
            phrase("there is no house book in this database; 'warmbench new' or 'warmbench copy' makes one"));
    if (*found > currentSchema) return newerProgram(*found);
    return *found < currentSchema && mode() == OpenMode::Write ? migrate(*found) : std::nullopt;
}

/// All steps or none, as one transaction; a step that fails leaves the older book as it was.
Outcome SharedStore::migrate(int from) {
    Outcome failed = beginToWrite();
    if (failed) return failed;
    failed = applySharedSteps(database(), from, currentSchema);
    if (!failed) failed = commit();
    if (!failed) return std::nullopt;
    rollBack();
    return refusal(phrase("it can't be brought up to date: %1", wordsOf(*failed)));
}

Outcome SharedStore::beginToRead() {
    const Outcome failed = run(database(), QStringLiteral("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY"));
    return failed ? Outcome{refusal(wordsOf(*failed))} : std::nullopt;
}

Outcome SharedStore::beginToWrite() {
    if (mode() == OpenMode::Read) return refusal(phrase("it was opened for reading only"));
    Outcome failed = run(database(), QStringLiteral("BEGIN"));
    if (!failed) {
        QSqlQuery turn(database());
        turn.setForwardOnly(true);
        if (turn.exec(QStringLiteral("SELECT take_turn()")) && turn.next())
            m_now = turn.value(0).toString().toStdString();
        else
            failed = Refusal{{}, wordsOf(turn.lastError())};
        turn.clear();
        if (failed) rollBack();
    }
    return failed ? Outcome{refusal(phrase("nothing can be changed just now; try again (%1)", failed->what))}
                  : std::nullopt;
}

bool SharedStore::isReachable() const {
    return !run(database(), QStringLiteral("SELECT 1"));
}

Outcome SharedStore::reopen() {
    if (auto failed = open()) return failed;
    return m_news ? subscribe() : std::nullopt;
}

std::function<bool()> SharedStore::prober() const {
    return [address = m_address] { return !SharedStore(address, OpenMode::Read).connect(); };
}

bool SharedStore::listen(std::function<void()> news) {
    m_news = std::move(news);
    return !subscribe();
}

Outcome SharedStore::subscribe() {
    QSqlDriver* driver = database().driver();
    QObject::connect(driver, &QSqlDriver::notification, &m_listener,
                     [this](const QString&, QSqlDriver::NotificationSource source) {
                         if (source == QSqlDriver::OtherSource && m_news) m_news();
                     });
    if (driver->subscribeToNotification(QStringLiteral("warmbench_journal"))) return std::nullopt;
    return refusal(phrase("it does not tell of changes: %1", wordsOf(driver->lastError())));
}

Outcome SharedStore::addToJournal(const JournalRow& entry, const std::string& chain) {
    if (m_making) return addEntry(database(), entry, chain);
    QSqlQuery query(database());
    query.prepare(QStringLiteral("SELECT add_entry(?, ?, ?, ?, ?, ?)"));
    query.addBindValue(static_cast<qlonglong>(entry.seq));
    for (const std::string& text : {entry.at, entry.who, entry.words, entry.change, chain})
        query.addBindValue(QString::fromStdString(text));
    if (query.exec()) return std::nullopt;
    return Refusal{{}, phrase("the database says: %1", wordsOf(query.lastError()))};
}

/// The server watches over its own pages; references are enforced by it.
void SharedStore::findFaults(std::vector<Refusal>&) const {}

} // namespace warmbench::app
