#include "ui/journal/past_bar.h"

#include "ui/journal/journal_list.h"
#include "ui/words/phrase_words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace warmbench::ui {
namespace {

QPushButton* addStepButton(QHBoxLayout& row, const char* name, const QString& words) {
    auto* button = new QPushButton(words);
    button->setObjectName(QString::fromLatin1(name));
    row.addWidget(button);
    return button;
}

} // namespace

PastBar::PastBar(QAction& toNow, QWidget* parent) : QFrame(parent), m_words(new QLabel(this)) {
    setObjectName(QStringLiteral("pastBar"));
    m_words->setObjectName(QStringLiteral("pastWords"));
    m_words->setWordWrap(true);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 6, 12, 6);
    row->addWidget(m_words, 1);
    m_earlier = addStepButton(*row, "pastEarlier", tr("A step back"));
    m_later = addStepButton(*row, "pastLater", tr("A step on"));
    auto* now = addStepButton(
        *row, "pastNow", tr("Back to now (%1)").arg(toNow.shortcut().toString(QKeySequence::NativeText)));
    now->setProperty("primary", true);
    connect(m_earlier, &QPushButton::clicked, this, &PastBar::earlierWanted);
    connect(m_later, &QPushButton::clicked, this, &PastBar::laterWanted);
    connect(now, &QPushButton::clicked, &toNow, &QAction::trigger);
    hide();
}

void PastBar::show(const JournalStep& step, const QLocale& locale, bool hasEarlier, bool hasLater) {
    m_words->setText(tr("<b>The house as it was</b> on %1, after: %2 (%3). Nothing can be changed here.")
                         .arg(stepTime(step, locale).toHtmlEscaped(),
                              told(step.words.toStdString(), Wording(locale)).toHtmlEscaped(),
                              step.who.toHtmlEscaped()));
    m_earlier->setEnabled(hasEarlier);
    m_later->setEnabled(hasLater);
    setVisible(true);
}

} // namespace warmbench::ui
