#pragma once

#include "ui/wants/thing_dialog.h"
#include "ui/words/wording.h"

class QComboBox;
class QDateEdit;
class QLineEdit;
class QSpinBox;

namespace warmbench::ui {

/// Asks how many cuttings can be struck on a day, or on several in a row: as the weekday says, none, half of
/// that, or a number.
class HandsDialog : public ThingDialog {
    Q_OBJECT
public:
    HandsDialog(const HouseBook& book, Day day, const Wording& wording, Performer performer, QWidget* parent);

protected:
    [[nodiscard]] Result<Command> command() const override;

private:
    /// Fills the fields with what the book says of the day.
    void readDay();
    void choose(int kind);

    const HouseBook& m_book;
    QDateEdit* m_day;
    QSpinBox* m_days;
    QComboBox* m_kind;
    QSpinBox* m_hands;
    QLineEdit* m_note;
};

} // namespace warmbench::ui
