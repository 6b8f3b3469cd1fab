#pragma once

#include "app/window/password_keeper.h"

#include <QDeadlineTimer>
#include <QEventLoop>
#include <QTimer>

#include <functional>

namespace warmbench::tests {

/// Lets the event loop run until it is so; gives up after a time that no sound run needs.
inline bool comes(const std::function<bool()>& so) {
    const QDeadlineTimer end(60'000);
    while (!so() && !end.hasExpired()) {
        QEventLoop loop;
        QTimer::singleShot(20, &loop, &QEventLoop::quit);
        loop.exec();
    }
    return so();
}

/// No key store.
class NoKeys : public app::PasswordKeeper {
public:
    std::string find(const std::string&) override { return {}; }
    Outcome keep(const std::string& address, const std::string&) override { return Refusal{address, "none"}; }
};

} // namespace warmbench::tests
