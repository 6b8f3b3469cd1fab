#include "ui/draft/draft_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace warmbench::ui {

DraftBar::DraftBar(QWidget* parent) : QFrame(parent), m_words(new QLabel(this)) {
    setObjectName(QStringLiteral("draftBar"));
    m_words->setObjectName(QStringLiteral("draftWords"));
    m_words->setWordWrap(true);
    auto* goOn = new QPushButton(tr("Go on with it"), this);
    goOn->setObjectName(QStringLiteral("draftGoOn"));
    goOn->setProperty("primary", true);
    auto* drop = new QPushButton(tr("Throw it away"), this);
    drop->setObjectName(QStringLiteral("draftDrop"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 6, 12, 6);
    row->addWidget(m_words, 1);
    row->addWidget(drop);
    row->addWidget(goOn);
    connect(goOn, &QPushButton::clicked, this, [this] {
        const QList<Draft> drafts = left();
        if (!drafts.isEmpty()) Q_EMIT goOnWanted(drafts.front());
    });
    connect(drop, &QPushButton::clicked, this, [this] {
        const QList<Draft> drafts = left();
        if (!drafts.isEmpty()) m_drafts->dropLeft(drafts.front());
    });
    hide();
}

void DraftBar::setDrafts(Drafts* drafts) {
    m_drafts = drafts;
    if (drafts) connect(drafts, &Drafts::changed, this, &DraftBar::show);
    show();
}

QList<Draft> DraftBar::left() const {
    QList<Draft> drafts;
    if (m_drafts)
        for (const Draft& one : m_drafts->all())
            if (one.left) drafts += one;
    return drafts;
}

void DraftBar::show() {
    const QList<Draft> drafts = left();
    setVisible(!drafts.isEmpty());
    if (drafts.isEmpty()) return;
    const QString words = drafts.front().words.toHtmlEscaped();
    m_words->setText(
        drafts.size() == 1
            ? tr("<b>Typed, and not in the book yet</b> when Warmbench last ended: %1.").arg(words)
            : tr("<b>Typed, and not in the book yet</b> when Warmbench last ended: %1, and %2 more.")
                  .arg(words)
                  .arg(drafts.size() - 1));
}

} // namespace warmbench::ui
