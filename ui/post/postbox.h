#pragma once

#include <QObject>

#include <functional>
#include <mutex>
#include <vector>

namespace warmbench::ui {

/// Where other threads leave what is to be done in the thread of its owner, in the order in which it was
/// left. What is left when the box goes is not done. A thread that posts must end before the box does.
///
/// What is posted is handed on under a lock of the program's own, which the thread sanitizer sees, as it does
/// not see those inside of Qt.
class Postbox : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    /// From any thread.
    void post(std::function<void()> errand);

private Q_SLOTS:
    void deliver();

private:
    std::mutex m_lock;
    std::vector<std::function<void()>> m_errands;
};

} // namespace warmbench::ui
