#include "ui/shell/strike_tray.h"

#include "core/book/query.h"
#include "core/book/whereabouts.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace warmbench::ui {

StrikeTray::StrikeTray(QWidget* parent)
    : QWidget(parent), m_title(new QLabel(tr("To strike"), this)), m_count(new QLabel(this)),
      m_list(new QListWidget(this)), m_card(new TrayCard(m_list)) {
    setObjectName(QStringLiteral("sidePanel"));
    setAttribute(Qt::WA_StyledBackground);
    setMinimumWidth(204);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 16, 12, 12);
    column->setSpacing(2);
    column->addWidget(m_title);
    column->addWidget(m_count);
    column->addWidget(m_list, 1);
    m_count->setProperty("rank", QStringLiteral("quiet"));
    m_count->setWordWrap(true);
    m_list->setObjectName(QStringLiteral("strikeTray"));
    m_list->setAccessibleName(tr("Batches to strike"));
    m_list->setItemDelegate(m_card);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setResizeMode(QListView::Adjust);
    m_list->installEventFilter(this);
    m_list->viewport()->installEventFilter(this);
    m_list->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(m_list, &QWidget::customContextMenuRequested, this, [this](QPoint at) {
        const QListWidgetItem* item = m_list->itemAt(at);
        if (item && item->data(BatchRole).isValid())
            Q_EMIT menuWanted(BatchId{item->data(BatchRole).toLongLong()},
                              m_list->viewport()->mapToGlobal(at));
    });
    connect(m_list, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* item) {
        if (item && item->data(BatchRole).isValid())
            Q_EMIT chosen(BatchId{item->data(BatchRole).toLongLong()});
    });
}

void StrikeTray::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_card->setLook(palette, type, wording);
    m_wording = wording;
    m_title->setFont(type.strong);
    m_count->setFont(type.quiet);
    m_list->viewport()->update();
}

void StrikeTray::addHeading(const QString& words) {
    auto* heading = new QListWidgetItem(words, m_list);
    heading->setFlags(Qt::ItemIsEnabled);
}

void StrikeTray::addCard(const HouseBook& book, const Batch& batch, const Letters& letters) {
    const QString taxon = text(book.get<Taxon>(batch.taxon).name);
    const QString pots = m_wording.containers(static_cast<int>(batch.containers.size()),
                                              book.get<ContainerType>(batch.containerType));
    // A struck one is here as it has no place any more.
    const bool planned = batch.state == BatchState::Planned;
    const std::vector<ZoneId> zones =
        planned ? zonesOn(book, batch.id, batch.strikeDay) : zonesLastOn(book, batch.id, Day::last());
    QStringList names;
    for (const ZoneId zone : zones) names += text(book.get<Zone>(zone).name);
    const QString place = zones.empty()       ? (planned ? tr("no place yet") : tr("no place"))
                          : !planned          ? tr("last in %1").arg(names.join(QStringLiteral(", ")))
                          : zones.size() == 1 ? tr("zone %1").arg(names.front())
                                              : tr("zones %1").arg(names.join(QStringLiteral(", ")));
    auto* card = new QListWidgetItem(m_list);
    card->setData(BatchRole, static_cast<qlonglong>(batch.id.number));
    card->setData(LettersRole, letters.of(batch.id));
    card->setData(TaxonRole, taxon);
    card->setData(WoodRole, m_wording.wood(batch.recipe.wood));
    card->setData(PotsRole, pots);
    card->setData(HeatRole, static_cast<qlonglong>(batch.recipe.rootZoneIdeal.value.parts));
    card->setData(PlaceRole, place);
    card->setData(
        Qt::AccessibleTextRole,
        QStringList{taxon, pots, m_wording.temperature(batch.recipe.rootZoneIdeal.value), place}.join(
            QStringLiteral(", ")));
    card->setToolTip(QStringList{taxon, text(batch.code), place}.join(QStringLiteral(" · ")));
}

std::optional<BatchId> StrikeTray::currentBatch() const {
    const QListWidgetItem* item = m_list->currentItem();
    if (!item || !item->data(BatchRole).isValid()) return std::nullopt;
    return BatchId{item->data(BatchRole).toLongLong()};
}

bool StrikeTray::eventFilter(QObject* watched, QEvent* event) {
    const auto type = event->type();
    if (watched == m_list && type == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        const bool takes =
            key == Qt::Key_M || key == Qt::Key_Space || key == Qt::Key_Return || key == Qt::Key_Enter;
        const auto batch = currentBatch();
        if (!takes || !batch) return false;
        Q_EMIT takenUp(*batch, false);
        return true;
    }
    const bool ofMouse =
        type == QEvent::MouseButtonPress || type == QEvent::MouseMove || type == QEvent::MouseButtonRelease;
    return watched == m_list->viewport() && ofMouse && mouse(*static_cast<QMouseEvent*>(event));
}

/// Whether it belongs to a drag onto the map, and not to the list.
bool StrikeTray::mouse(const QMouseEvent& event) {
    if (event.type() == QEvent::MouseButtonPress) {
        const QListWidgetItem* item = m_list->itemAt(event.pos());
        if (event.button() == Qt::LeftButton && item && item->data(BatchRole).isValid())
            m_pressed = event.pos();
        return false;
    }
    if (event.type() == QEvent::MouseButtonRelease) {
        const bool wasDragging = m_dragging;
        m_pressed.reset();
        m_dragging = false;
        if (wasDragging) Q_EMIT letGo(event.globalPosition().toPoint());
        return wasDragging;
    }
    if (!m_pressed) return false;
    const bool far = (event.pos() - *m_pressed).manhattanLength() >= QApplication::startDragDistance();
    if (far && !m_dragging)
        if (const auto batch = currentBatch()) {
            m_dragging = true;
            Q_EMIT takenUp(*batch, true);
        }
    if (m_dragging) Q_EMIT dragged(event.globalPosition().toPoint());
    return true;
}

void StrikeTray::show(const HouseBook& book, const Letters& letters) {
    m_homeless.clear();
    fill(book, letters);
}

void StrikeTray::showHomeless(const HouseBook& book, Day day, const Letters& letters) {
    std::vector<BatchId> homeless;
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.state != BatchState::Struck || batch.strikeDay > day) continue;
        std::size_t placed = 0;
        for (const Stay* stay : staysOn(book, id, day)) placed += stay->places.size();
        if (placed >= batch.containers.size()) continue;
        if (std::any_of(batch.containers.begin(), batch.containers.end(), [&](const BatchContainer& one) {
                return !stayOf(book, id, one.number, day) && standing(book, batch, one.number, day) > 0;
            }))
            homeless.push_back(id);
    }
    if (homeless == m_homeless) return;
    m_homeless = std::move(homeless);
    const auto marked = currentBatch();
    fill(book, letters);
    mark(marked);
}

void StrikeTray::fill(const HouseBook& book, const Letters& letters) {
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    if (!m_homeless.empty()) addHeading(tr("Struck, without a place"));
    for (const BatchId id : m_homeless) addCard(book, book.get<Batch>(id), letters);
    std::vector<const Batch*> planned;
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.state == BatchState::Planned) planned.push_back(&batch);
    std::stable_sort(planned.begin(), planned.end(),
                     [](const Batch* a, const Batch* b) { return a->strikeDay < b->strikeDay; });
    int cuttings = 0;
    const Batch* before = nullptr;
    for (const Batch* batch : planned) {
        if (!before || before->strikeDay != batch->strikeDay)
            addHeading(m_wording.longDate(batch->strikeDay));
        addCard(book, *batch, letters);
        cuttings += batch->cuttings();
        before = batch;
    }
    const QString batches = planned.size() == 1
                                ? tr("1 batch")
                                : tr("%1 batches").arg(m_wording.number(static_cast<int>(planned.size())));
    m_count->setText(planned.empty() ? tr("Nothing is planned to be struck.")
                                     : batches + QStringLiteral(" · ") + m_wording.cuttings(cuttings));
}

void StrikeTray::mark(std::optional<BatchId> batch) {
    const QSignalBlocker quiet(m_list);
    for (int row = 0; row < m_list->count(); ++row) {
        const QVariant id = m_list->item(row)->data(BatchRole);
        if (batch && id.isValid() && id.toLongLong() == batch->number) {
            m_list->setCurrentRow(row);
            return;
        }
    }
    m_list->setCurrentRow(-1);
}

} // namespace warmbench::ui
