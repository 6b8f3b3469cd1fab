#include "ui/shell/start_page.h"

#include "ui/theme/type.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace warmbench::ui {

StartPage::StartPage(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    auto* title = new QLabel(tr("No house book is open"), this);
    title->setObjectName(QStringLiteral("startTitle"));
    auto* what =
        new QLabel(tr("A house book holds your house, its benches, and all that grows on them."), this);
    what->setProperty("rank", QStringLiteral("quiet"));
    what->setWordWrap(true);
    what->setAlignment(Qt::AlignHCenter);
    auto* open = new QPushButton(tr("Open a house book…"), this);
    open->setObjectName(QStringLiteral("startOpen"));
    open->setProperty("primary", true);
    auto* create = new QPushButton(tr("New house book…"), this);
    create->setObjectName(QStringLiteral("startNew"));
    column->addStretch(2);
    column->addWidget(title, 0, Qt::AlignHCenter);
    column->addWidget(what);
    column->addSpacing(12);
    column->addWidget(open, 0, Qt::AlignHCenter);
    column->addWidget(create, 0, Qt::AlignHCenter);
    column->addStretch(3);
    connect(create, &QPushButton::clicked, this, &StartPage::newWanted);
    connect(open, &QPushButton::clicked, this, &StartPage::openWanted);
}

void StartPage::setType(const TypeSizes& type) {
    findChild<QLabel*>(QStringLiteral("startTitle"))->setFont(type.title);
}

} // namespace warmbench::ui
