#pragma once

#include "ui/draft/drafts.h"

#include <QPointer>
#include <QTimer>

class QWidget;

namespace warmbench::ui {

/// Looks at a form now and then, and keeps what has been typed into it as a draft until that is in the book
/// or given up.
class DraftWatch : public QObject {
    Q_OBJECT
public:
    /// `form` owns it.
    explicit DraftWatch(QWidget& form);

    /// The form has been filled in anew, as it is before anything is typed: what was typed into it before is
    /// put there again. `what` has no fields. With no drafts nothing is watched.
    void begin(Drafts* drafts, const Draft& what);
    /// The form is about to show something else; what was typed stays a draft.
    void leave();
    /// The same, and what was typed is offered to be gone on with.
    void putAside();
    /// Whether something is typed that is not in the book.
    [[nodiscard]] bool hasTyped();
    [[nodiscard]] const QString& key() const { return m_draft.key; }
    /// What was typed is in the book, or given up.
    void end();
    /// It was not taken after all: what was typed is a draft again.
    void again();

private:
    void look();

    QWidget& m_form;
    QPointer<Drafts> m_drafts;
    Draft m_draft;        ///< without its fields
    QJsonObject m_before; ///< the fields as the form was filled in
    QJsonObject m_latest; ///< as they were when they were last looked at
    QTimer m_timer;
};

} // namespace warmbench::ui
