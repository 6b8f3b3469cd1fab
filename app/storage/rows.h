#pragma once

#include "core/book/change.h"
#include "core/book/house_book.h"
#include "core/quantity/result.h"

#include <QSqlDatabase>
#include <QSqlError>

#include <string>
#include <vector>

namespace warmbench::app {

/// What a database says went wrong, on one line, in words where we know better ones.
[[nodiscard]] std::string wordsOf(const QSqlError& error);

/// A refusal, its place with it, to be said inside another.
[[nodiscard]] Phrase wordsOf(const Refusal& refusal);

/// Runs one statement that takes no values.
[[nodiscard]] Outcome run(const QSqlDatabase& database, const QString& statement);

/// Writes a consistent copy of the whole database to a new file; leaves none where that fails.
[[nodiscard]] Outcome copyInto(const QSqlDatabase& database, const std::string& path);

/// A part of a file's schema that runs statements of its own as soon as tables are read or written, which no
/// house book has: a view or trigger by its kind and name. Empty where there is none.
[[nodiscard]] std::string foreignPart(const QSqlDatabase& database);

/// Brings the tables from before a change to after it. Inside the caller's transaction.
[[nodiscard]] Outcome writeRows(const QSqlDatabase& database, const Change& change);

/// Everything that the tables hold; refused where a row holds what no thing can. An older book that is only
/// read may lack the tables and columns of later versions.
[[nodiscard]] Result<Things> readRows(const QSqlDatabase& database);

/// What can be read of the tables of a damaged database, row by row and from both ends, and of each kind in
/// their order whether some of its rows can't be.
struct SalvagedRows {
    Things things;
    std::vector<bool> damaged;
};
[[nodiscard]] SalvagedRows salvageRows(const QSqlDatabase& database);

} // namespace warmbench::app
