#pragma once

#include "core/quantity/result.h"

#include <QSqlDatabase>

namespace warmbench::app {

/// Brings a database's schema from version `from` (0: empty) to version `to`, each step in a transaction of
/// its own. The steps are the files of resources/schema/sqlite, in their order.
[[nodiscard]] Outcome applySteps(const QSqlDatabase& database, int from, int to);

/// The same for a shared book, by the files of resources/schema/postgresql and inside the caller's
/// transaction.
[[nodiscard]] Outcome applySharedSteps(const QSqlDatabase& database, int from, int to);

} // namespace warmbench::app
