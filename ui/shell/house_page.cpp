#include "ui/shell/house_page.h"

#include "ui/form/labels.h"
#include "ui/placing/placing_bar.h"
#include "ui/shell/fact_panel.h"
#include "ui/shell/legend_strip.h"
#include "ui/shell/strike_tray.h"
#include "ui/shell/window_menus.h"

#include <algorithm>

#include <QAction>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace warmbench::ui {
namespace {

void addButton(QHBoxLayout& row, const QString& words, const QString& meaning, QAction* action) {
    auto* button = new QPushButton(words);
    button->setToolTip(meaning);
    button->setAccessibleName(meaning);
    QObject::connect(button, &QPushButton::clicked, action, &QAction::trigger);
    row.addWidget(button);
}

} // namespace

HousePage::HousePage(const WindowMenus& menus, QWidget* parent)
    : QSplitter(Qt::Horizontal, parent), m_tray(new StrikeTray(this)), m_map(new BenchMap),
      m_placing(new PlacingBar(m_hand)), m_legend(new LegendStrip), m_dayTitle(new QLabel),
      m_refusal(new TroubleLabel(QStringLiteral("refusal"))), m_panel(new FactPanel) {
    setObjectName(QStringLiteral("house"));
    setHandleWidth(1);
    addWidget(m_tray);
    addWidget(makeCentre(menus));
    addWidget(m_panel);
    setStretchFactor(1, 1);
    setSizes({248, 880, 264});
    connect(m_map, &BenchMap::selectionChanged, this, &HousePage::chosen);
    connect(m_tray, &StrikeTray::chosen, this, [this](BatchId batch) { Q_EMIT chosen(Selection{batch}); });
    connect(m_map, &BenchMap::menuWanted, this, &HousePage::menuWanted);
    connect(m_tray, &StrikeTray::menuWanted, this, &HousePage::menuWanted);
    connect(m_panel, &FactPanel::strikeWanted, this, &HousePage::strikeWanted);
    connect(m_panel, &FactPanel::planWanted, this, &HousePage::planWanted);
    m_map->setHand(&m_hand);
    connect(m_map, &BenchMap::takenUp, this, &HousePage::take);
    connect(m_tray, &StrikeTray::takenUp, this, &HousePage::take);
    const auto onMap = [this](QPoint global) { return m_map->viewport()->mapFromGlobal(global); };
    connect(m_tray, &StrikeTray::dragged, this, [this, onMap](QPoint at) { m_map->pointHandAt(onMap(at)); });
    connect(m_tray, &StrikeTray::letGo, this, [this, onMap](QPoint at) { m_map->letHandGo(onMap(at)); });
    connect(m_placing, &PlacingBar::done, m_map, [this] { m_map->setFocus(); });
    connect(&m_hand, &PlacingHand::heldChanged, m_map, [this] { m_map->setHand(&m_hand); });
    connect(&m_hand, &PlacingHand::heldChanged, m_legend,
            [this] { m_legend->setVisible(!m_hand.isActive()); });
    connect(&m_hand, &PlacingHand::aimChanged, m_map, &BenchMap::showAim);
    connect(&m_hand, &PlacingHand::placed, this, &HousePage::placed);
}

QWidget* HousePage::makeCentre(const WindowMenus& menus) {
    auto* head = new QHBoxLayout;
    head->setContentsMargins(16, 8, 16, 4);
    head->setSpacing(4);
    head->addWidget(m_dayTitle, 1);
    addButton(*head, QStringLiteral("−"), tr("Zoom out"), menus.zoomOut);
    addButton(*head, QStringLiteral("+"), tr("Zoom in"), menus.zoomIn);
    addButton(*head, tr("Fit"), tr("Show everything"), menus.fit);
    auto* centre = new QWidget;
    auto* column = new QVBoxLayout(centre);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(head);
    column->addWidget(m_refusal);
    column->addWidget(m_map, 1);
    // What is carried is told where the legend stands, so that the map stays as it is under the pointer.
    m_foot = new QWidget;
    auto* foot = new QVBoxLayout(m_foot);
    foot->setContentsMargins(0, 0, 0, 0);
    foot->setSpacing(0);
    foot->addWidget(m_legend);
    foot->addWidget(m_placing);
    column->addWidget(m_foot);
    return centre;
}

void HousePage::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_wording = &wording;
    m_hand.setWording(wording);
    m_placing->setType(type);
    m_map->setLook(palette, type, wording);
    m_legend->setLook(palette, type, wording);
    m_foot->setMinimumHeight(std::max(m_legend->sizeHint().height(), m_placing->sizeHint().height()));
    m_tray->setLook(palette, type, wording);
    m_panel->setLook(palette, type, wording);
    m_dayTitle->setFont(type.title);
}

void HousePage::showBook(const HouseBook& book, const Letters& letters) {
    // What is carried was taken from the book as it was.
    m_hand.putBack();
    m_book = &book;
    m_logs.forget();
    m_tray->show(book, letters);
}

void HousePage::showDay(const HouseBook& book, Day day, const Letters& letters, Day today) {
    if (day != m_day) m_hand.putBack();
    m_day = day;
    m_book = &book;
    m_tray->showHomeless(book, day, letters);
    m_map->showScene(mapScene(book, day, letters, m_logs, today));
    m_dayTitle->setText(m_wording->longDate(day));
}

void HousePage::select(const Selection& selection, const Facts& facts) {
    const auto* batch = std::get_if<BatchId>(&selection);
    m_panel->show(facts);
    m_map->select(selection);
    m_tray->mark(batch ? std::optional(*batch) : std::nullopt);
}

void HousePage::foresee(const HouseBook& book, const RecipeLibrary& recipes, BatchId batch, Day day) {
    m_panel->foresee(book, recipes, batch, day);
}

void HousePage::take(BatchId batch, bool dragged) {
    if (!m_book || !m_book->find<Batch>(batch)) return;
    Q_EMIT chosen(Selection{batch});
    const Outcome refusal = m_hand.take(*m_book, batch, {}, m_day);
    tell(refusal);
    if (refusal) return;
    m_hand.setDragging(dragged);
    m_map->setFocus();
}

void HousePage::takeUp(BatchId batch) {
    take(batch, false);
}

void HousePage::tell(const Outcome& refusal) {
    m_refusal->tell(refusal);
}

} // namespace warmbench::ui
