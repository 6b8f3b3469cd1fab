#pragma once

#include "ui/setup/thing_form.h"

class QCheckBox;
class QDoubleSpinBox;
class QLineEdit;
class QSpinBox;

namespace warmbench::ui {

/// A kind of pot or tray.
class ContainerForm : public ThingForm {
    Q_OBJECT
public:
    ContainerForm(const ContainerType& type, QWidget* parent);
    [[nodiscard]] Result<Command> command() const override;

private:
    ContainerType m_type;
    QLineEdit* m_name;
    QSpinBox* m_height;
    QSpinBox* m_width;
    QCheckBox* m_turnable;
    QDoubleSpinBox* m_volume;
    QSpinBox* m_cuttings;
};

} // namespace warmbench::ui
