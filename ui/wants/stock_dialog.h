#pragma once

#include "core/crop/library/library.h"
#include "ui/wants/thing_dialog.h"
#include "ui/words/wording.h"

class QLineEdit;
class QSpinBox;

namespace warmbench::ui {

class FlushRows;
class TaxonField;

/// Asks for a stock: whose cuttings, how many plants, where, and what each wood yields.
class StockDialog : public ThingDialog {
    Q_OBJECT
public:
    /// `stock` fills the fields; one with the id 0 is new.
    StockDialog(const HouseBook& book, const RecipeLibrary& library, const Stock& stock,
                const Wording& wording, Performer performer, QWidget* parent);

protected:
    [[nodiscard]] Result<Command> command() const override;

private:
    Stock m_stock;
    TaxonField* m_taxon;
    QLineEdit* m_name;
    QLineEdit* m_place;
    QSpinBox* m_plants;
    FlushRows* m_flushes;
    QLineEdit* m_health;
};

} // namespace warmbench::ui
