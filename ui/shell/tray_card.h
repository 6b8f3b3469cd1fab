#pragma once

#include "ui/theme/palette.h"
#include "ui/theme/type.h"
#include "ui/words/wording.h"

#include <QStyledItemDelegate>

namespace warmbench::ui {

/// Roles of the items of the strike tray.
enum TrayRole : int {
    BatchRole = Qt::UserRole,
    LettersRole,
    TaxonRole,
    WoodRole,
    PotsRole,
    HeatRole,
    PlaceRole
};

/// Paints a planned batch as a card and a day as a heading.
class TrayCard : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    void paintDay(QPainter& painter, const QRect& area, const QString& words) const;
    void paintTaxon(QPainter& painter, QPointF at, int width, const QString& name) const;

    const Palette* m_palette = &lightPalette();
    TypeSizes m_type;
    Wording m_wording;
};

} // namespace warmbench::ui
