#include "app/storage/schema.h"

#include "app/resource/resource.h"
#include "app/storage/journal_chain.h"
#include "app/storage/rows.h"

#include <QStringList>

#include <algorithm>
#include <array>

namespace warmbench::app {
namespace {

struct Step {
    const char* file;
    Outcome (*fill)(const QSqlDatabase&); ///< what SQL alone can't do; null where it can
};

constexpr std::array<Step, 4> steps{{{"schema/sqlite/0001_book.sql", nullptr},
                                     {"schema/sqlite/0002_journal_chain.sql", chainJournal},
                                     {"schema/sqlite/0003_readings.sql", nullptr},
                                     {"schema/sqlite/0004_weanings.sql", nullptr}}};

/// The first step makes a shared book of version 2; there were none before.
constexpr int firstShared = 2;
constexpr std::array<const char*, 3> sharedSteps{{"schema/postgresql/0002_book.sql",
                                                  "schema/postgresql/0003_readings.sql",
                                                  "schema/postgresql/0004_weanings.sql"}};

/// Runs the statements of a script, which end with a semicolon at the end of a line that is not between two
/// `$$`.
Outcome runScript(const QSqlDatabase& database, const QString& script) {
    QString statement;
    for (const QString& line : script.split(QLatin1Char('\n'))) {
        if (line.startsWith(QStringLiteral("--"))) continue;
        statement += line + QLatin1Char('\n');
        const bool quoted = statement.count(QStringLiteral("$$")) % 2 == 1;
        if (quoted || !line.endsWith(QLatin1Char(';'))) continue;
        if (auto refusal = run(database, statement)) return refusal;
        statement.clear();
    }
    return std::nullopt;
}

Outcome applyStep(const QSqlDatabase& database, int version) {
    const Step& step = steps[static_cast<std::size_t>(version) - 1];
    if (auto refusal = runScript(database, QString::fromStdString(resourceText(step.file)))) return refusal;
    if (step.fill)
        if (auto refusal = step.fill(database)) return refusal;
    return run(database, QStringLiteral("PRAGMA user_version = %1").arg(version));
}

} // namespace

Outcome applySteps(const QSqlDatabase& database, int from, int to) {
    for (int version = from + 1; version <= to; ++version) {
        if (auto refusal = run(database, QStringLiteral("BEGIN IMMEDIATE"))) return refusal;
        Outcome refusal = applyStep(database, version);
        if (!refusal) refusal = run(database, QStringLiteral("COMMIT"));
        if (refusal) {
            [[maybe_unused]] const Outcome back = run(database, QStringLiteral("ROLLBACK"));
            return refusal;
        }
    }
    return std::nullopt;
}

Outcome applySharedSteps(const QSqlDatabase& database, int from, int to) {
    for (int version = std::max(from + 1, firstShared); version <= to; ++version)
        if (auto refusal = runScript(database, QString::fromStdString(resourceText(sharedSteps.at(
                                                   static_cast<std::size_t>(version - firstShared))))))
            return refusal;
    if (auto refusal =
            runScript(database, QString::fromStdString(resourceText("schema/postgresql/rights.sql"))))
        return refusal;
    return run(database, QStringLiteral("UPDATE about SET version = %1").arg(to));
}

} // namespace warmbench::app
