#pragma once

#include "ui/setup/thing_form.h"

#include <array>

class QDoubleSpinBox;
class QLineEdit;
class QSpinBox;

namespace warmbench::ui {

/// The nursery's place, its hands by weekday, and how sure targets are to be met.
class NurseryForm : public ThingForm {
    Q_OBJECT
public:
    NurseryForm(const Nursery& nursery, const Wording& wording, QWidget* parent);
    [[nodiscard]] Result<Command> command() const override;

private:
    Nursery m_nursery;
    QLineEdit* m_name;
    QDoubleSpinBox* m_latitude;
    QSpinBox* m_shift;
    QSpinBox* m_sureness;
    QLineEdit* m_currency;
    QDoubleSpinBox* m_price;
    std::array<QSpinBox*, 7> m_hands{};
};

} // namespace warmbench::ui
