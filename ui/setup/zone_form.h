#pragma once

#include "ui/setup/thing_form.h"

class QCheckBox;
class QComboBox;
class QDateEdit;
class QDoubleSpinBox;
class QLineEdit;
class QSpinBox;

namespace warmbench::ui {

/// A zone: its rectangle of a bench, its cover, and its mat if it has one.
class ZoneForm : public ThingForm {
    Q_OBJECT
public:
    /// `mat` stands in the fields where the zone has none, to be ticked; `today` as the day from which it is
    /// out of order.
    ZoneForm(const Zone& zone, const Mat& mat, Day today, const Wording& wording, QWidget* parent);
    [[nodiscard]] Result<Command> command() const override;

private:
    void enableMat();

    Zone m_zone;
    Wording m_wording;
    QLineEdit* m_name;
    QComboBox* m_cover;
    QCheckBox* m_hasMat;
    QLineEdit* m_matName;
    QDoubleSpinBox* m_rated;
    QDoubleSpinBox* m_loss;
    QLineEdit* m_setPoints;
    QCheckBox* m_isOut;
    QDateEdit* m_outFrom;
    QSpinBox* m_row;
    QSpinBox* m_col;
    QSpinBox* m_rows;
    QSpinBox* m_cols;
    QLineEdit* m_blocked;
};

} // namespace warmbench::ui
