#pragma once

#include "core/season/taxon_choice.h"

#include <QWidget>

class QCheckBox;
class QLabel;
class QLineEdit;

namespace warmbench::ui {

/// A field for a taxon by any of its names, which says what it has understood while one types. A name that
/// nobody knows is taken only where a tick says that it is meant.
class TaxonField : public QWidget {
    Q_OBJECT
public:
    /// Filled in with a taxon of the book, or empty where it has none of that id. Book and library must
    /// outlive the field.
    TaxonField(const HouseBook& book, const RecipeLibrary& library, TaxonId taxon, QWidget* parent = nullptr);
    /// What was chosen, or why nothing is.
    [[nodiscard]] Result<season::TaxonChoice> choice() const;

private:
    void tell();

    const HouseBook& m_book;
    const RecipeLibrary& m_library;
    QLineEdit* m_name;
    QLabel* m_understood;
    QCheckBox* m_own;
};

} // namespace warmbench::ui
