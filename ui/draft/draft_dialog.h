#pragma once

#include "ui/draft/drafts.h"

#include <QDialog>

namespace warmbench::ui {

class DraftWatch;

/// A dialog whose fields are kept as a draft while they are typed into. Left with something typed that is not
/// in the book, by Escape, its button or the window's cross, it asks what is to become of that.
class DraftDialog : public QDialog {
    Q_OBJECT
public:
    explicit DraftDialog(QWidget* parent);
    /// Runs it with what was typed into it before; `what` has no fields. With no drafts it asks nothing.
    void ask(Drafts* drafts, const Draft& what);
    void reject() override;

private:
    DraftWatch* m_watch;
};

} // namespace warmbench::ui
