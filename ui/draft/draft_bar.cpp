#include "ui/draft/draft_bar.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace warmbench::ui {

DraftBar::DraftBar(QWidget* parent)
    : QFrame(parent), m_words(new QLabel(this)), m_goOn(new QPushButton(this)) {
    setObjectName(QStringLiteral("draftBar"));
    m_words->setObjectName(QStringLiteral("draftWords"));
    m_words->setWordWrap(true);
    m_goOn->setObjectName(QStringLiteral("draftGoOn"));
    m_goOn->setProperty("primary", true);
    auto* drop = new QPushButton(tr("Throw it away"), this);
    drop->setObjectName(QStringLiteral("draftDrop"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 6, 12, 6);
    row->addWidget(m_words, 1);
    row->addWidget(drop);
    row->addWidget(m_goOn);
    connect(m_goOn, &QPushButton::clicked, this, [this] {
        const QList<Draft> drafts = left();
        if (drafts.isEmpty()) return;
        if (drafts.front().gone)
            QGuiApplication::clipboard()->setText(drafts.front().told);
        else
            Q_EMIT goOnWanted(drafts.front());
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
    const Draft& first = drafts.front();
    const QString words = first.words.toHtmlEscaped();
    m_goOn->setText(first.gone ? tr("Copy what was typed") : tr("Go on with it"));
    m_words->setToolTip(first.told);
    if (first.gone)
        m_words->setText(
            tr("<b>What this was about is not in the book any more</b>: %1. What was typed can be "
               "copied, or thrown away.")
                .arg(words));
    else if (drafts.size() == 1)
        m_words->setText(tr("<b>Typed, and not in the book yet</b>: %1.").arg(words));
    else
        m_words->setText(
            tr("<b>Typed, and not in the book yet</b>: %1, and %2 more.").arg(words).arg(drafts.size() - 1));
}

} // namespace warmbench::ui
