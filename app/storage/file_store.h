#pragma once

#include "app/storage/store.h"

namespace warmbench::app {

/// A house book in a SQLite file. What was committed is on the disk (write-ahead log, synchronous FULL).
class FileStore : public Store {
public:
    using Store::Store;

    Outcome make(const std::function<Outcome()>& fill) override;
    /// Refused, and the file not changed: none there, no house book, damaged, written by a newer program; for
    /// writing also where the file or its folder can't be written. An older one is backed up beside it
    /// (`BOOK.version-1.backup`) before it is brought up to date.
    Outcome open() override;
    Outcome beginToRead() override;
    Outcome beginToWrite() override;
    [[nodiscard]] bool isReachable() const override;
    Outcome reopen() override;
    [[nodiscard]] std::function<bool()> prober() const override;
    bool listen(std::function<void()>) override { return false; }
    [[nodiscard]] std::string who() const override;
    [[nodiscard]] std::string now() const override;
    Outcome addToJournal(const JournalRow& entry, const std::string& chain) override;
    void findFaults(std::vector<Refusal>& wrong) const override;

private:
    Outcome connect(const std::string& file);
    Outcome prepareToWrite();
    Outcome migrate(int from);

    /// Which file was opened, whatever its name is by now.
    struct Identity {
        std::uint64_t device = 0;
        std::uint64_t number = 0;
        friend bool operator==(const Identity&, const Identity&) = default;
    };
    static Identity identityOf(const std::string& file);
    Identity m_opened;
};

} // namespace warmbench::app
