#include "ui/shell/strike_tray.h"

#include "core/book/query.h"

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

void StrikeTray::addDay(Day day) {
    auto* heading = new QListWidgetItem(m_wording.longDate(day), m_list);
    heading->setFlags(Qt::ItemIsEnabled);
}

void StrikeTray::addCard(const HouseBook& book, const Batch& batch, const Letters& letters) {
    const QString taxon = text(book.get<Taxon>(batch.taxon).name);
    const QString pots = m_wording.containers(static_cast<int>(batch.containers.size()),
                                              book.get<ContainerType>(batch.containerType));
    const Stay* stay = stayOn(book, batch.id, batch.strikeDay);
    const QString place =
        stay ? tr("zone %1").arg(text(book.get<Zone>(stay->zone).name)) : tr("no place yet");
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

void StrikeTray::show(const HouseBook& book, const Letters& letters) {
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    std::vector<const Batch*> planned;
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.state == BatchState::Planned) planned.push_back(&batch);
    std::stable_sort(planned.begin(), planned.end(),
                     [](const Batch* a, const Batch* b) { return a->strikeDay < b->strikeDay; });
    int cuttings = 0;
    const Batch* before = nullptr;
    for (const Batch* batch : planned) {
        if (!before || before->strikeDay != batch->strikeDay) addDay(batch->strikeDay);
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
