#include "ui/draft/draft_watch.h"

#include "ui/draft/form_fields.h"

#include <QWidget>

namespace warmbench::ui {
namespace {

constexpr int lookMilliseconds = 300;

} // namespace

DraftWatch::DraftWatch(QWidget& form) : QObject(&form), m_form(form) {
    m_timer.setInterval(lookMilliseconds);
    connect(&m_timer, &QTimer::timeout, this, &DraftWatch::look);
}

void DraftWatch::begin(Drafts* drafts, const Draft& what) {
    m_timer.stop();
    if (m_drafts) disconnect(m_drafts, nullptr, this, nullptr);
    m_drafts = drafts;
    if (!drafts) return;
    connect(drafts, &Drafts::toldNow, this, [this] {
        if (m_timer.isActive()) look();
    });
    m_draft = what;
    m_before = fieldsOf(m_form);
    m_latest = m_before;
    if (const Draft* found = drafts->find(what.place, what.key)) {
        const Draft typed = *found; // filling in may make the form tell, and so change the draft
        // Where the thing is not what it was, only what was typed is put over it.
        const bool same = what.fresh || typed.before.isEmpty() || typed.before == m_before;
        fillFields(m_form, same ? typed.fields : changedFields(typed.before, typed.fields));
        m_latest = fieldsOf(m_form);
    }
    m_timer.start();
}

void DraftWatch::leave() {
    if (m_timer.isActive()) look();
    m_timer.stop();
}

void DraftWatch::putAside() {
    leave();
    if (m_drafts) m_drafts->giveBack(m_draft);
}

bool DraftWatch::hasTyped() {
    if (m_timer.isActive()) look();
    return m_drafts && fieldsOf(m_form) != m_before;
}

void DraftWatch::end() {
    m_timer.stop();
    if (m_drafts) m_drafts->drop(m_draft.place, m_draft.key);
}

void DraftWatch::again() {
    if (!m_drafts) return;
    m_latest = m_before;
    look();
    m_timer.start();
}

void DraftWatch::look() {
    if (!m_drafts) return;
    const QJsonObject now = fieldsOf(m_form);
    if (now == m_latest) return;
    m_latest = now;
    if (now == m_before) return m_drafts->drop(m_draft.place, m_draft.key);
    Draft draft = m_draft;
    draft.fields = now;
    draft.before = m_before;
    draft.told = toldFields(m_form, changedFields(m_before, now));
    m_drafts->keep(draft);
}

} // namespace warmbench::ui
