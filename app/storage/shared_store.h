#pragma once

#include "app/storage/shared_address.h"
#include "app/storage/store.h"

#include <QObject>

namespace warmbench::app {

/// A house book in a PostgreSQL database that several workstations share: the schema `warmbench` of it, one
/// book a database. Writers take turns: each holds a lock on the journal until its change is committed.
class SharedStore : public Store {
public:
    SharedStore(SharedAddress address, OpenMode mode);

    /// The database must be there; its owner makes the book in it.
    Outcome make(const std::function<Outcome()>& fill) override;
    Outcome open() override;
    Outcome beginToRead() override;
    Outcome beginToWrite() override;
    [[nodiscard]] bool isReachable() const override;
    Outcome reopen() override;
    [[nodiscard]] std::function<bool()> prober() const override;
    bool listen(std::function<void()> news) override;
    /// The database's own name of the user.
    [[nodiscard]] std::string who() const override { return m_who; }
    /// The server's time when this writer's turn came.
    [[nodiscard]] std::string now() const override { return m_now; }
    Outcome addToJournal(const JournalRow& entry, const std::string& chain) override;
    void findFaults(std::vector<Refusal>& wrong) const override;

private:
    Outcome connect();
    Outcome subscribe();
    Outcome setUp(const char* statement);
    Result<int> version();
    Outcome migrate(int from);

    SharedAddress m_address;
    std::string m_who;
    std::string m_now;
    bool m_making = false; ///< the book is being made, by its owner
    std::function<void()> m_news;
    QObject m_listener; ///< ends what was connected to the driver
};

} // namespace warmbench::app
