#pragma once

#include "core/quantity/result.h"

#include <QSqlDatabase>

#include <string>

namespace warmbench::app {

/// The text of one journal entry, as it stands in its row.
struct JournalRow {
    std::int64_t seq = 0;
    std::string at;
    std::string who;
    std::string words;
    std::string change;
};

/// The hash (SHA-256, in hexadecimal) of an entry and the chain before it; the first entry follows an empty
/// chain.
[[nodiscard]] std::string chained(const std::string& before, const JournalRow& entry);

/// Adds an entry with its place in the chain to a journal. Inside the caller's transaction.
[[nodiscard]] Outcome addEntry(const QSqlDatabase& database, const JournalRow& entry,
                               const std::string& chain);

/// Gives every entry its place in the chain; for the step to version 2.
[[nodiscard]] Outcome chainJournal(const QSqlDatabase& database);

} // namespace warmbench::app
