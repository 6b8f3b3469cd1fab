#include "ui/post/postbox.h"

#include <QPointer>

#include <utility>

namespace warmbench::ui {

void Postbox::post(std::function<void()> errand) {
    const std::lock_guard guard(m_lock);
    m_errands.push_back(std::move(errand));
    // By its name: a call by pointer is made by the thread that posts and freed by the one that runs it.
    if (m_errands.size() == 1) QMetaObject::invokeMethod(this, "deliver", Qt::QueuedConnection);
}

void Postbox::deliver() {
    std::vector<std::function<void()>> errands;
    {
        const std::lock_guard guard(m_lock);
        errands.swap(m_errands);
    }
    const QPointer<Postbox> here(this); // an errand may close the window that owns the box
    for (const auto& errand : errands)
        if (here) errand();
}

} // namespace warmbench::ui
