#pragma once

#include "ui/map/legend.h"

#include <QWidget>

namespace warmbench::ui {

/// The legend under the map.
class LegendStrip : public QWidget {
    Q_OBJECT
public:
    explicit LegendStrip(QWidget* parent = nullptr);
    /// Palette, type and wording must outlive the widget or be set anew.
    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override { return {400, heightForWidth(width())}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Palette* m_palette = nullptr;
    const TypeSizes* m_type = nullptr;
    const Wording* m_wording = nullptr;
};

} // namespace warmbench::ui
