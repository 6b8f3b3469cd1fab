#include "ui/shell/place_row.h"

#include "ui/shell/find_box.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace warmbench::ui {

PlaceRow::PlaceRow(QWidget* parent)
    : QWidget(parent), m_row(new QHBoxLayout(this)), m_bookName(new QLabel(this)), m_find(new FindBox(this)) {
    setObjectName(QStringLiteral("places"));
    setAttribute(Qt::WA_StyledBackground);
    m_bookName->setProperty("rank", QStringLiteral("quiet"));
    m_row->setContentsMargins(8, 0, 12, 0);
    m_row->setSpacing(4);
    m_row->addStretch(1);
    m_row->addWidget(m_bookName);
    m_row->addSpacing(12);
    m_row->addWidget(m_find);
}

void PlaceRow::addPlace(const QString& name, const QString& title) {
    auto* button = new QPushButton(title, this);
    button->setObjectName(name + QStringLiteral("Place"));
    button->setProperty("place", true);
    button->setCheckable(true);
    button->setAutoExclusive(true);
    const auto place = static_cast<int>(m_buttons.size());
    connect(button, &QPushButton::clicked, this, [this, place] { Q_EMIT placeChosen(place); });
    m_row->insertWidget(place, button);
    m_buttons += button;
}

void PlaceRow::setCurrent(int place) {
    m_buttons[place]->setChecked(true);
}

void PlaceRow::setBookName(const QString& name) {
    m_bookName->setText(name);
}

} // namespace warmbench::ui
