#include "ui/draft/draft_dialog.h"

#include "ui/draft/draft_watch.h"

#include <QMessageBox>
#include <QPushButton>

namespace warmbench::ui {

DraftDialog::DraftDialog(QWidget* parent) : QDialog(parent), m_watch(new DraftWatch(*this)) {}

void DraftDialog::ask(Drafts* drafts, const Draft& what) {
    m_watch->begin(drafts, what);
    if (exec() == QDialog::Accepted) m_watch->end();
}

void DraftDialog::reject() {
    if (!m_watch->hasTyped()) {
        m_watch->end();
        return QDialog::reject();
    }
    QMessageBox question(QMessageBox::Question, windowTitle(),
                         tr("What you typed is not in the book. What is to become of it?"),
                         QMessageBox::NoButton, this);
    question.setObjectName(QStringLiteral("leaveQuestion"));
    QPushButton* aside = question.addButton(tr("&Put it aside for later"), QMessageBox::AcceptRole);
    aside->setObjectName(QStringLiteral("leaveAside"));
    QPushButton* drop = question.addButton(tr("&Throw it away"), QMessageBox::DestructiveRole);
    drop->setObjectName(QStringLiteral("leaveDrop"));
    QPushButton* stay = question.addButton(tr("&Go on typing"), QMessageBox::RejectRole);
    stay->setObjectName(QStringLiteral("leaveStay"));
    question.setDefaultButton(stay);
    question.setEscapeButton(stay);
    question.exec();
    if (question.clickedButton() == aside)
        m_watch->putAside();
    else if (question.clickedButton() == drop)
        m_watch->end();
    else
        return;
    QDialog::reject();
}

} // namespace warmbench::ui
