#include "ui/place/place.h"

#include <QAbstractItemView>

namespace warmbench::ui {

Place::Place(const QString& name, const QString& title, QWidget* parent)
    : QWidget(parent), m_name(name), m_title(title) {
    setObjectName(name + QStringLiteral("Page"));
}

void Place::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_palette = &palette;
    m_type = &type;
    m_wording = &wording;
}

void Place::offerBatchMenu(QAbstractItemView* list, std::function<std::optional<BatchId>(int)> batchOf) {
    list->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(list, &QWidget::customContextMenuRequested, this,
            [this, list, batchOf = std::move(batchOf)](QPoint at) {
                const QModelIndex line = list->indexAt(at);
                const auto batch = line.isValid() ? batchOf(line.row()) : std::nullopt;
                if (batch) Q_EMIT batchMenuWanted(*batch, list->viewport()->mapToGlobal(at));
            });
}

} // namespace warmbench::ui
