#pragma once

#include <stop_token>
#include <thread>

#include <signal.h>

namespace warmbench::app {

/// While it lives, Ctrl-C (SIGINT) or SIGTERM asks for a stop in place of ending the program; a second one
/// ends it. Where the signal is ignored, as behind nohup, it stays so. One at a time.
class Interrupt {
public:
    Interrupt();
    ~Interrupt();
    Interrupt(const Interrupt&) = delete;
    Interrupt& operator=(const Interrupt&) = delete;

    [[nodiscard]] std::stop_token token() const { return m_source.get_token(); }

private:
    std::stop_source m_source;
    int m_ends[2] = {-1, -1}; ///< of the pipe that the handler writes to
    struct sigaction m_before[2] = {};
    std::jthread m_waiter;
};

} // namespace warmbench::app
