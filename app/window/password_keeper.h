#pragma once

#include "core/quantity/result.h"

#include <string>

namespace warmbench::app {

/// Keeps the passwords of shared books, each under the book's address without it. No password is ever
/// written anywhere else.
class PasswordKeeper {
public:
    PasswordKeeper() = default;
    PasswordKeeper(const PasswordKeeper&) = delete;
    PasswordKeeper& operator=(const PasswordKeeper&) = delete;
    virtual ~PasswordKeeper() = default;

    /// The password that is kept for an address; empty where none is, or where they can't be had.
    [[nodiscard]] virtual std::string find(const std::string& address) = 0;
    /// Keeps one; refused where there is no key store, or it is locked.
    virtual Outcome keep(const std::string& address, const std::string& password) = 0;
};

/// The key store of the desktop or system (by QtKeychain). Waits for it, with an event loop of its own.
class SystemKeys : public PasswordKeeper {
public:
    [[nodiscard]] std::string find(const std::string& address) override;
    Outcome keep(const std::string& address, const std::string& password) override;
};

} // namespace warmbench::app
