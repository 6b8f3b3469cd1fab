#include "app/storage/rows.h"

#include "app/storage/columns.h"

#include <QRegularExpression>
#include <QSqlError>
#include <QSqlQuery>
#include <QSqlRecord>
#include <QStringList>

#include <filesystem>
#include <system_error>

namespace warmbench::app {
namespace {

/// Whether a kind's table came after the first version of the schema.
template <class E>
constexpr bool cameLater = std::is_same_v<E, ReadingMonth>;

/// Whether a kind's table gained a column after the first version of the schema, which may be null.
template <class E>
constexpr bool gainedColumns = std::is_same_v<E, Stay>;

Outcome failure(const QSqlQuery& query) {
    return Refusal{{}, phrase("the database says: %1", wordsOf(query.lastError()))};
}

template <class E>
QStringList columnsOf() {
    QStringList names;
    E example{};
    describe(example, [&](const char* name, const auto&) {
        names << QStringLiteral("\"%1\"").arg(QLatin1String(name));
    });
    return names;
}

template <class E>
QString tableOf() {
    return QString::fromLatin1(kindName<E>.many);
}

/// A statement, prepared once for each run over rows of a kind.
template <class E>
Outcome put(const QSqlDatabase& database, const E& thing) {
    static const QString statement = [] {
        const QStringList names = columnsOf<E>();
        QStringList marks;
        QStringList updates;
        for (const QString& name : names) {
            marks << QStringLiteral("?");
            updates << QStringLiteral("%1 = excluded.%1").arg(name);
        }
        return QStringLiteral("INSERT INTO %1 (%2) VALUES (%3) ON CONFLICT (id) DO UPDATE SET %4")
            .arg(tableOf<E>(), names.join(QStringLiteral(", ")), marks.join(QStringLiteral(", ")),
                 updates.join(QStringLiteral(", ")));
    }();
    QSqlQuery query(database);
    if (!query.prepare(statement)) return failure(query);
    describe(thing, [&](const char*, const auto& field) { query.addBindValue(toColumn(field)); });
    return query.exec() ? std::nullopt : failure(query);
}

template <class E>
Outcome remove(const QSqlDatabase& database, IdOf<E> id) {
    QSqlQuery query(database);
    if (!query.prepare(QStringLiteral("DELETE FROM %1 WHERE id = ?").arg(tableOf<E>())))
        return failure(query);
    query.addBindValue(toColumn(id));
    return query.exec() ? std::nullopt : failure(query);
}

template <class E>
QString selectAll([[maybe_unused]] const QSqlDatabase& database) {
    QStringList names = columnsOf<E>();
    if constexpr (gainedColumns<E>) {
        QSqlQuery head(database);
        if (head.exec(QStringLiteral("SELECT * FROM %1 LIMIT 0").arg(tableOf<E>())))
            for (QString& name : names)
                if (!head.record().contains(name.mid(1, name.size() - 2)))
                    name.prepend(QStringLiteral("NULL AS "));
    }
    return QStringLiteral("SELECT %1 FROM %2").arg(names.join(QStringLiteral(", ")), tableOf<E>());
}

/// The thing of a row; the name of the first field that its column can't be, where there is one.
template <class E>
std::string readThing(const QSqlQuery& row, E& thing) {
    int column = 0;
    std::string wrong;
    describe(thing, [&](const char* name, auto& field) {
        if (!fromColumn(row.value(column++), field) && wrong.empty()) wrong = name;
    });
    return wrong;
}

template <class E>
bool isThere([[maybe_unused]] const QSqlDatabase& database) {
    if constexpr (cameLater<E>) {
        // PostgreSQL's driver may put the schema before a table's name.
        const QStringList tables = database.tables();
        return tables.contains(tableOf<E>()) ||
               !tables.filter(QRegularExpression(QStringLiteral("\\.%1$").arg(tableOf<E>()))).isEmpty();
    }
    return true;
}

template <class E>
Outcome readKind(const QSqlDatabase& database, std::map<IdOf<E>, E>& things) {
    QSqlQuery query(database);
    query.setForwardOnly(true);
    if (!query.exec(selectAll<E>(database))) return failure(query);
    while (query.next()) {
        E thing{};
        const std::string wrong = readThing(query, thing);
        if (!wrong.empty())
            return Refusal{{},
                           phrase("%1 number %2: found nothing that can be its %3", Phrase(kindName<E>.one),
                                  query.value(0).toString().toStdString(), wrong)};
        things.emplace(thing.id, std::move(thing));
    }
    return query.lastError().isValid() ? failure(query) : std::nullopt;
}

/// The rows of a kind that can be read, from one end of the table; false where some can't be.
template <class E>
bool readFrom(const QSqlDatabase& database, const char* order, std::map<IdOf<E>, E>& things) {
    QSqlQuery query(database);
    query.setForwardOnly(true);
    if (!query.exec(selectAll<E>(database) + QStringLiteral(" ORDER BY id ") + QLatin1String(order)))
        return false;
    bool all = true;
    while (query.next()) {
        E thing{};
        if (readThing(query, thing).empty())
            things.emplace(thing.id, std::move(thing));
        else
            all = false;
    }
    return all && !query.lastError().isValid();
}

} // namespace

Phrase wordsOf(const Refusal& refusal) {
    return refusal.place.empty() ? refusal.what : phrase("%1: %2", refusal.place, refusal.what);
}

std::string wordsOf(const QSqlError& error) {
    // insufficient_privilege, as PostgreSQL numbers it
    const bool notAllowed = error.nativeErrorCode() == QStringLiteral("42501");
    QString text = error.databaseText().isEmpty() ? error.driverText() : error.databaseText();
    // PostgreSQL tells details and the place in the statement on further lines.
    text = text.section(QLatin1Char('\n'), 0, 0).trimmed();
    for (const char* grade : {"ERROR:", "FATAL:"})
        if (text.startsWith(QLatin1String(grade))) text = text.mid(6).trimmed();
    if (notAllowed)
        text = QStringLiteral("your part in this shared book does not allow that; ask who keeps it (%1)")
                   .arg(text);
    return text.toStdString();
}

Outcome run(const QSqlDatabase& database, const QString& statement) {
    QSqlQuery query(database);
    return query.exec(statement) ? std::nullopt : failure(query);
}

std::string foreignPart(const QSqlDatabase& database) {
    QSqlQuery query(database);
    const bool found = query.exec(QStringLiteral(
        "SELECT type || ' ' || quote(name) FROM sqlite_master WHERE type NOT IN ('table', 'index') OR "
        "sql LIKE 'CREATE VIRTUAL%' LIMIT 1"));
    return found && query.next() ? query.value(0).toString().toStdString() : std::string();
}

Outcome copyInto(const QSqlDatabase& database, const std::string& path) {
    QSqlQuery query(database);
    query.prepare(QStringLiteral("VACUUM INTO ?"));
    query.addBindValue(QString::fromStdString(path));
    if (query.exec()) return std::nullopt;
    std::error_code ignored;
    std::filesystem::remove(path, ignored);
    return failure(query);
}

Outcome writeRows(const QSqlDatabase& database, const Change& change) {
    for (const AnyEdit& edit : change.edits) {
        Outcome refusal = std::visit(
            [&]<class E>(const Edit<E>& one) {
                return one.after ? put(database, *one.after) : remove<E>(database, one.id());
            },
            edit);
        if (refusal) return refusal;
    }
    return std::nullopt;
}

Result<Things> readRows(const QSqlDatabase& database) {
    Things things;
    Outcome refusal;
    forEachKind([&]<class E>() {
        if (!refusal && isThere<E>(database))
            refusal = readKind<E>(database, std::get<std::map<IdOf<E>, E>>(things));
    });
    if (refusal) return *refusal;
    return things;
}

SalvagedRows salvageRows(const QSqlDatabase& database) {
    SalvagedRows salvaged;
    forEachKind([&]<class E>() {
        auto& things = std::get<std::map<IdOf<E>, E>>(salvaged.things);
        const bool whole = !isThere<E>(database) || readFrom<E>(database, "ASC", things);
        if (!whole) readFrom<E>(database, "DESC", things);
        salvaged.damaged.push_back(!whole);
    });
    return salvaged;
}

} // namespace warmbench::app
