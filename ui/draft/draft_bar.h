#pragma once

#include "ui/draft/drafts.h"

#include <QFrame>
#include <QPointer>

class QLabel;
class QPushButton;

namespace warmbench::ui {

/// Offers what was typed and is not in the book: put aside, or over from when the program last ended. What
/// was about something that is gone can be copied. Out of sight while there is nothing of that.
class DraftBar : public QFrame {
    Q_OBJECT
public:
    explicit DraftBar(QWidget* parent);
    void setDrafts(Drafts* drafts);

Q_SIGNALS:
    /// Wants to go on with a draft, in its place.
    void goOnWanted(const warmbench::ui::Draft& draft);

private:
    void show();
    [[nodiscard]] QList<Draft> left() const;

    QPointer<Drafts> m_drafts;
    QLabel* m_words;
    QPushButton* m_goOn;
};

} // namespace warmbench::ui
