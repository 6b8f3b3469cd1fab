#pragma once

#include "ui/map/map_scene.h"

#include <QLineEdit>

namespace warmbench::ui {

/// The field in which anything of the book is found as one types.
class FindBox : public QLineEdit {
    Q_OBJECT
public:
    explicit FindBox(QWidget* parent = nullptr);
    /// What it finds from now on.
    void offer(const HouseBook& book);
    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void found(const warmbench::ui::Selection& selection);
};

} // namespace warmbench::ui
