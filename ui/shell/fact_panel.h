#pragma once

#include "core/crop/library/library.h"
#include "ui/shell/facts.h"
#include "ui/theme/palette.h"
#include "ui/theme/type.h"

#include <QScrollArea>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace warmbench::ui {

class ForecastCard;

/// Shows the facts of what is selected, and offers what can be done with it.
class FactPanel : public QScrollArea {
    Q_OBJECT
public:
    explicit FactPanel(QWidget* parent = nullptr);

    /// Palette must outlive the panel or be set anew.
    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    /// The facts of one thing, without a forecast until `foresee`.
    void show(const Facts& facts);
    /// Adds what becomes of the batch that is shown, if it has been struck.
    void foresee(const HouseBook& book, const RecipeLibrary& recipes, BatchId batch, Day day);

Q_SIGNALS:
    void strikeWanted(warmbench::BatchId batch);
    void planWanted();

private:
    QLabel* addText(const QString& text, const QFont& font, const char* rank);
    void addFact(const Fact& fact);

    TypeSizes m_type;
    QWidget* m_page = nullptr;
    QVBoxLayout* m_column = nullptr;
    ForecastCard* m_forecast; ///< moves from page to page
};

} // namespace warmbench::ui
