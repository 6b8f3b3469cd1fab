#include "ui/setup/refit_dialog.h"

#include "ui/form/labels.h"

#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace warmbench::ui {

RefitDialog::RefitDialog(const QStringList& words, QWidget* parent) : QDialog(parent) {
    setObjectName(QStringLiteral("refitDialog"));
    setWindowTitle(tr("What stands there"));
    auto* head = wrappedLabel(this);
    head->setText(tr("This changes more than the drawing. It is one step, which can be taken back."));
    auto* list = new QListWidget(this);
    list->setObjectName(QStringLiteral("refitWords"));
    list->setAccessibleName(tr("What changes"));
    list->setWordWrap(true);
    list->setSpacing(3);
    list->addItems(words);
    list->setCurrentRow(0);
    auto* change = new QPushButton(tr("&Change it"), this);
    change->setObjectName(QStringLiteral("refitChange"));
    change->setProperty("primary", true);
    auto* leave = new QPushButton(tr("&Leave it as it is"), this);
    leave->setObjectName(QStringLiteral("refitLeave"));
    leave->setDefault(true);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(change);
    buttons->addWidget(leave);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 12);
    column->setSpacing(10);
    column->addWidget(head);
    column->addWidget(list, 1);
    column->addLayout(buttons);
    connect(change, &QPushButton::clicked, this, &QDialog::accept);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    resize(620, 360);
}

} // namespace warmbench::ui
