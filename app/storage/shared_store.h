#pragma once

#include "app/storage/shared_address.h"
#include "app/storage/store.h"

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
    /// The database's own name of the user.
    [[nodiscard]] std::string who() const override;
    void findFaults(std::vector<Refusal>& wrong) const override;

private:
    Outcome connect();
    Outcome setUp(const char* statement);
    Result<int> version();
    Outcome migrate(int from);

    SharedAddress m_address;
};

} // namespace warmbench::app
