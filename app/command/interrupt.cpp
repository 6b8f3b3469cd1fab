#include "app/command/interrupt.h"

#include <cerrno>

#include <fcntl.h>
#include <unistd.h>

namespace warmbench::app {

namespace {

constexpr int stopSignals[] = {SIGINT, SIGTERM};
constexpr char asked = 's';
constexpr char ended = 'e';

/// The handler knows nothing else.
volatile sig_atomic_t stopPipe = -1;

void sendByte(int pipe, char byte) {
    while (::write(pipe, &byte, 1) < 0 && errno == EINTR) {
    }
}

void onStopSignal(int /*signal*/) {
    const int before = errno;
    sendByte(static_cast<int>(stopPipe), asked);
    errno = before;
}

} // namespace

Interrupt::Interrupt() {
    if (::pipe2(m_ends, O_CLOEXEC) != 0) return; // the signal then ends the program, as ever
    stopPipe = m_ends[1];
    m_waiter = std::jthread([this] {
        char byte = ended;
        while (::read(m_ends[0], &byte, 1) < 0 && errno == EINTR) {
        }
        if (byte == asked) m_source.request_stop();
    });
    struct sigaction action = {};
    action.sa_handler = onStopSignal;
    action.sa_flags = static_cast<int>(SA_RESTART | SA_RESETHAND);
    sigemptyset(&action.sa_mask);
    for (int i = 0; i < 2; ++i) {
        ::sigaction(stopSignals[i], nullptr, &m_before[i]);
        if (m_before[i].sa_handler != SIG_IGN) ::sigaction(stopSignals[i], &action, nullptr);
    }
}

Interrupt::~Interrupt() {
    if (!m_waiter.joinable()) return;
    for (int i = 0; i < 2; ++i) ::sigaction(stopSignals[i], &m_before[i], nullptr);
    sendByte(m_ends[1], ended);
    m_waiter.join();
    stopPipe = -1;
    ::close(m_ends[0]);
    ::close(m_ends[1]);
}

} // namespace warmbench::app
