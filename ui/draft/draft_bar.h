#pragma once

#include "ui/draft/drafts.h"

#include <QFrame>
#include <QPointer>

class QLabel;

namespace warmbench::ui {

/// Offers what was typed when the program last ended and is not in the book; out of sight while there is
/// nothing of that.
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
};

} // namespace warmbench::ui
