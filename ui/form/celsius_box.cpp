#include "ui/form/celsius_box.h"

namespace warmbench::ui {

CelsiusBox::CelsiusBox(const Wording& wording, Celsius value, QWidget* parent)
    : QDoubleSpinBox(parent), m_fahrenheit(wording.isFahrenheit()), m_given(value) {
    setDecimals(1);
    setRange(m_fahrenheit ? -58 : -50, m_fahrenheit ? 140 : 60);
    setSuffix(QChar(0x00A0) + wording.degreeUnit());
    setValue(m_fahrenheit ? value.units() * 9 / 5 + 32 : value.units());
    m_shown = this->value();
}

Celsius CelsiusBox::celsius() const {
    if (value() == m_shown) return m_given;
    return Celsius::fromUnits(m_fahrenheit ? (value() - 32) * 5 / 9 : value());
}

} // namespace warmbench::ui
