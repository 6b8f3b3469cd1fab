#pragma once

#include "ui/setup/thing_form.h"

#include <array>

class QComboBox;
class QDoubleSpinBox;
class QLineEdit;

namespace warmbench::ui {

class CelsiusBox;

/// A house: its size, and its air and unheated root zone by month.
class HouseForm : public ThingForm {
    Q_OBJECT
public:
    HouseForm(const House& house, const Wording& wording, QWidget* parent);
    [[nodiscard]] Result<Command> command() const override;

private:
    using MonthBoxes = std::array<CelsiusBox*, 12>;
    MonthBoxes addMonths(const QString& label, const char* name, const MonthlyCelsius& values,
                         const Wording& wording);

    House m_house;
    QLineEdit* m_name;
    QComboBox* m_kind;
    QDoubleSpinBox* m_length;
    QDoubleSpinBox* m_width;
    MonthBoxes m_air{};
    MonthBoxes m_rootZone{};
};

} // namespace warmbench::ui
