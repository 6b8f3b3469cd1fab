#pragma once

#include "core/crop/library/library.h"
#include "ui/wants/thing_dialog.h"
#include "ui/words/wording.h"

class QComboBox;
class QDateEdit;
class QDoubleSpinBox;
class QLineEdit;
class QSpinBox;

namespace warmbench::ui {

class TaxonField;

/// Asks for a target: a taxon by any of its names, how many plants, by when, and what one is worth.
class TargetDialog : public ThingDialog {
    Q_OBJECT
public:
    /// `target` fills the fields; one with the id 0 is new.
    TargetDialog(const HouseBook& book, const RecipeLibrary& library, const Target& target,
                 const Wording& wording, Performer performer, QWidget* parent);

protected:
    [[nodiscard]] Result<Command> command() const override;

private:
    Target m_target;
    TaxonField* m_taxon;
    QLineEdit* m_name;
    QSpinBox* m_plants;
    QDateEdit* m_due;
    QDoubleSpinBox* m_worth;
    QComboBox* m_wood;
    QLineEdit* m_note;
};

} // namespace warmbench::ui
