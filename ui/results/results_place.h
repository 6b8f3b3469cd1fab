#pragma once

#include "core/take/own_figures.h"
#include "core/take/trial.h"
#include "ui/place/place.h"

class QComboBox;
class QLabel;
class QPushButton;
class QTabWidget;
class QTreeWidget;

namespace warmbench::ui {

class TakeBarColumn;
class TroubleLabel;

/// What she got: takes by group against the recipes, trials, and her own figures, which are shown before they
/// are used.
class ResultsPlace : public Place {
    Q_OBJECT
public:
    explicit ResultsPlace(QWidget* parent);
    void showBook(const BookView& view) override;

private:
    QWidget* makeTakes();
    QWidget* makeTrials();
    QWidget* makeOwn();
    void offerYears();
    void showTakes();
    void showTrials();
    void showOwnList();
    void showOwn();
    void takeOver();
    [[nodiscard]] double level() const;

    const HouseBook* m_book = nullptr;
    const RecipeLibrary* m_recipes = nullptr;
    std::vector<RecipeId> m_ownRecipes; ///< by row: those that have batches of their own
    std::optional<take::OwnFigures> m_own;
    QTabWidget* m_tabs;
    QComboBox* m_by;
    QComboBox* m_level;
    QComboBox* m_year;
    QLabel* m_words;
    QTreeWidget* m_takes;
    TakeBarColumn* m_takeBars;
    QLabel* m_trialWords;
    QTreeWidget* m_trials;
    TakeBarColumn* m_trialBars;
    QLabel* m_verdict; ///< what the chosen trial says, whole
    QTreeWidget* m_ownList;
    QLabel* m_ownWords;
    QPushButton* m_takeOver;
    TroubleLabel* m_refusal;
};

} // namespace warmbench::ui
