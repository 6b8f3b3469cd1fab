#include "ui/shell/place_row.h"

#include "ui/shell/find_box.h"

#include <QEvent>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QStyle>

#include <algorithm>

namespace warmbench::ui {
namespace {

constexpr int nearEdge = 8;
constexpr int farEdge = 12;
constexpr int gap = 4;
constexpr int namedFrom = 60; ///< less of the book's name than this tells nothing

} // namespace

PlaceRow::PlaceRow(QWidget* parent)
    : QWidget(parent), m_more(new QPushButton(tr("More"), this)), m_moreMenu(new QMenu(m_more)),
      m_bookLabel(new QLabel(this)), m_find(new FindBox(this)) {
    setObjectName(QStringLiteral("places"));
    setAttribute(Qt::WA_StyledBackground);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_bookLabel->setObjectName(QStringLiteral("bookName"));
    m_bookLabel->setProperty("rank", QStringLiteral("quiet"));
    m_more->setObjectName(QStringLiteral("morePlaces"));
    m_more->setProperty("place", true);
    m_more->setAccessibleName(tr("More places"));
    m_more->setToolTip(tr("Places for which the window is too narrow"));
    m_more->setMenu(m_moreMenu);
    connect(m_moreMenu, &QMenu::aboutToShow, this, [this] {
        m_moreMenu->clear();
        for (qsizetype i = 0; i < m_buttons.size(); ++i)
            if (m_buttons[i]->isHidden())
                connect(m_moreMenu->addAction(m_buttons[i]->text()), &QAction::triggered, this,
                        [this, i] { Q_EMIT placeChosen(static_cast<int>(i)); });
    });
}

void PlaceRow::addPlace(const QString& name, const QString& title) {
    auto* button = new QPushButton(title, this);
    button->setObjectName(name + QStringLiteral("Place"));
    button->setProperty("place", true);
    button->setCheckable(true);
    button->setAutoExclusive(true);
    const auto place = static_cast<int>(m_buttons.size());
    connect(button, &QPushButton::clicked, this, [this, place] { Q_EMIT placeChosen(place); });
    setTabOrder(m_buttons.empty() ? this : static_cast<QWidget*>(m_buttons.back()), button);
    setTabOrder(button, m_more);
    setTabOrder(m_more, m_find);
    m_buttons += button;
    updateGeometry();
    arrange();
}

void PlaceRow::setCurrent(int place) {
    m_current = place;
    m_buttons[place]->setChecked(true);
    arrange();
}

void PlaceRow::setBookName(const QString& name) {
    m_bookName = name;
    m_bookLabel->setToolTip(name);
    arrange();
}

QSize PlaceRow::sizeHint() const {
    int width = nearEdge + farEdge + m_find->sizeHint().width();
    int height = m_find->sizeHint().height();
    for (const QPushButton* button : m_buttons) {
        width += button->sizeHint().width() + gap;
        height = std::max(height, button->sizeHint().height());
    }
    return {width, height};
}

QSize PlaceRow::minimumSizeHint() const {
    int widest = 0;
    for (const QPushButton* button : m_buttons) widest = std::max(widest, button->sizeHint().width());
    return {nearEdge + widest + gap + m_more->sizeHint().width() + gap + m_find->minimumWidth() + farEdge,
            sizeHint().height()};
}

void PlaceRow::resizeEvent(QResizeEvent*) {
    arrange();
}

void PlaceRow::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::LayoutDirectionChange ||
        event->type() == QEvent::StyleChange)
        arrange();
}

bool PlaceRow::event(QEvent* event) {
    // A button has another size, as its words or its type have.
    if (event->type() == QEvent::LayoutRequest) arrange();
    return QWidget::event(event);
}

/// Which places have their buttons in a row of `room` pixels: all, or the first ones beside the current.
QList<bool> PlaceRow::shownIn(int room) const {
    int needed = 0;
    for (const QPushButton* button : m_buttons) needed += button->sizeHint().width() + gap;
    QList<bool> shown(m_buttons.size(), needed <= room);
    if (needed <= room || m_buttons.empty()) return shown;
    room -= m_more->sizeHint().width() + gap + m_buttons[m_current]->sizeHint().width() + gap;
    shown[m_current] = true;
    for (qsizetype i = 0; i < m_buttons.size(); ++i) {
        if (i == m_current) continue;
        room -= m_buttons[i]->sizeHint().width() + gap;
        if (room < 0) break;
        shown[i] = true;
    }
    return shown;
}

void PlaceRow::arrange() {
    const QFontMetrics letters(m_bookLabel->font());
    const int right = width() - farEdge;
    const QList<bool> shown = shownIn(right - nearEdge - m_find->minimumWidth() - gap);
    const auto put = [&](QWidget* widget, int x, int width) {
        const QRect at(x, 0, width, height());
        widget->setGeometry(QStyle::visualRect(layoutDirection(), rect(), at));
    };
    int x = nearEdge;
    const auto putButton = [&](QPushButton* button, bool visible) {
        button->setVisible(visible);
        if (!visible) return;
        put(button, x, button->sizeHint().width());
        x += button->sizeHint().width() + gap;
    };
    for (qsizetype i = 0; i < m_buttons.size(); ++i) putButton(m_buttons[i], shown[i]);
    putButton(m_more, shown.contains(false));

    const int wanted = std::max(m_find->minimumWidth(), m_find->sizeHint().width());
    const int found = std::clamp(right - x - gap, m_find->minimumWidth(), wanted);
    const int high = std::min(height(), m_find->sizeHint().height());
    m_find->setGeometry(QStyle::visualRect(layoutDirection(), rect(),
                                           QRect(right - found, (height() - high) / 2, found, high)));
    const int room = right - found - 3 * gap - x - gap;
    const int named = std::min(room, letters.horizontalAdvance(m_bookName) + 2);
    m_bookLabel->setVisible(named >= std::min(namedFrom, letters.horizontalAdvance(m_bookName)));
    m_bookLabel->setText(letters.elidedText(m_bookName, Qt::ElideMiddle, named));
    put(m_bookLabel, right - found - 3 * gap - named, named);
}

} // namespace warmbench::ui
