#pragma once

#include "ui/place/journal_step.h"

#include <QFrame>
#include <QLocale>

class QAction;
class QLabel;
class QPushButton;

namespace warmbench::ui {

/// Says over the places that the house is shown as it was, not as it is, and leads on, back, and to now.
class PastBar : public QFrame {
    Q_OBJECT
public:
    /// `toNow` is the menu's action to go back to now.
    explicit PastBar(QAction& toNow, QWidget* parent = nullptr);
    void show(const JournalStep& step, const QLocale& locale, bool hasEarlier, bool hasLater);

Q_SIGNALS:
    void earlierWanted();
    void laterWanted();

private:
    QLabel* m_words;
    QPushButton* m_earlier;
    QPushButton* m_later;
};

} // namespace warmbench::ui
