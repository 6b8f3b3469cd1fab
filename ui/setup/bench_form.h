#pragma once

#include "ui/setup/thing_form.h"

class QLineEdit;
class QSpinBox;

namespace warmbench::ui {

/// A bench: where it stands in its house, and its grid of slots.
class BenchForm : public ThingForm {
    Q_OBJECT
public:
    BenchForm(const Bench& bench, QWidget* parent);
    [[nodiscard]] Result<Command> command() const override;

private:
    Bench m_bench;
    QLineEdit* m_name;
    QSpinBox* m_x;
    QSpinBox* m_y;
    QSpinBox* m_rows;
    QSpinBox* m_cols;
    QSpinBox* m_slot;
};

} // namespace warmbench::ui
