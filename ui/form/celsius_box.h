#pragma once

#include "ui/words/wording.h"

#include <QDoubleSpinBox>

namespace warmbench::ui {

/// A field for a temperature, in the unit that the wording speaks in. A value that is only looked at stays
/// exactly what it was.
class CelsiusBox : public QDoubleSpinBox {
    Q_OBJECT
public:
    CelsiusBox(const Wording& wording, Celsius value, QWidget* parent = nullptr);
    [[nodiscard]] Celsius celsius() const;

private:
    bool m_fahrenheit;
    Celsius m_given;
    double m_shown; ///< as it came out of rounding
};

} // namespace warmbench::ui
