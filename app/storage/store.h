#pragma once

#include "app/storage/journal_chain.h"
#include "core/quantity/result.h"

#include <QSqlDatabase>
#include <QString>

#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace warmbench::app {

enum class OpenMode { Read, Write };

/// The version of the schema that this program writes.
inline constexpr int currentSchema = 4;

/// The database that keeps a house book: all that differs between a file of its own (SQLite) and a shared one
/// (PostgreSQL). The connection is the caller's alone; refusals have the store's name as their place.
class Store {
public:
    Store(std::string name, OpenMode mode);
    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;
    virtual ~Store();

    /// The name of the file, or the address of the shared book without any password.
    [[nodiscard]] const std::string& name() const { return m_name; }
    [[nodiscard]] OpenMode mode() const { return m_mode; }
    [[nodiscard]] QSqlDatabase database() const { return QSqlDatabase::database(m_connection, false); }

    /// Makes an empty book, has `fill` write into it, and only then lets others see it. Refused, and nothing
    /// left, where there is a book of this name or `fill` refuses.
    virtual Outcome make(const std::function<Outcome()>& fill) = 0;
    /// Opens the book that is there; an older one that is opened for writing is brought up to date first.
    virtual Outcome open() = 0;
    /// Begins to read one state of the book; ended by `commit`.
    virtual Outcome beginToRead() = 0;
    /// Begins to write: until `commit` or `rollBack` no other writer does.
    virtual Outcome beginToWrite() = 0;
    Outcome commit();
    void rollBack();

    /// Whether what was opened is still there; asked outside of a transaction.
    [[nodiscard]] virtual bool isReachable() const = 0;
    /// Opens it again after it was not reachable.
    virtual Outcome reopen() = 0;
    /// Tells from any thread whether opening it again would do; may wait for a server.
    [[nodiscard]] virtual std::function<bool()> prober() const = 0;
    /// Has `news` called from the event loop soon after others have changed the book; where the store can't
    /// tell that, false.
    virtual bool listen(std::function<void()> news) = 0;

    /// Whom the journal shall name.
    [[nodiscard]] virtual std::string who() const = 0;
    /// When the journal shall say that the change in hand was made: UTC, ISO 8601.
    [[nodiscard]] virtual std::string now() const = 0;
    /// Adds an entry to the journal, inside a transaction that `beginToWrite` has begun.
    virtual Outcome addToJournal(const JournalRow& entry, const std::string& chain) = 0;
    /// What the database finds wrong with itself.
    virtual void findFaults(std::vector<Refusal>& wrong) const = 0;

protected:
    /// Opens the connection anew with a driver.
    QSqlDatabase connection(const char* driver);
    void disconnect();
    [[nodiscard]] Refusal refusal(const Phrase& what) const { return {m_name, what}; }
    [[nodiscard]] Refusal newerProgram(int version) const;

private:
    std::string m_name;
    OpenMode m_mode;
    QString m_connection;
};

/// The store of a book's name: a file name, or `postgresql://...`. Refused where that is no address.
[[nodiscard]] Result<std::unique_ptr<Store>> storeOf(const std::string& name, OpenMode mode);

/// Whether a book's name is the address of a shared one.
[[nodiscard]] bool isShared(const std::string& name);

} // namespace warmbench::app
