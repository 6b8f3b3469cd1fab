#pragma once

#include "core/quantity/result.h"

#include <QSqlDatabase>

namespace warmbench::app {

/// Brings a database's schema from version `from` (0: empty) to version `to`, each step in a transaction of
/// its own. The steps are the files of resources/schema/sqlite, in their order.
[[nodiscard]] Outcome applySteps(const QSqlDatabase& database, int from, int to);

} // namespace warmbench::app
