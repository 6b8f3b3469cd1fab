#pragma once

#include "core/season/whatif/what_if.h"
#include "ui/words/wording.h"

#include <QDialog>

#include <memory>
#include <vector>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QPushButton;
class QSpinBox;
class QTreeWidget;

namespace warmbench::ui {

class Planning;
class TroubleLabel;

/// Tries things on copies of the season: fewer hands, a cooler house, more sureness, another mat. Each trial
/// is planned beside the window and stands as a column beside the season as it is; one of them may be kept.
class WhatIfDialog : public QDialog {
    Q_OBJECT
public:
    /// Book and library must outlive the dialog.
    WhatIfDialog(const HouseBook& book, const RecipeLibrary& library, Day from, int days,
                 const Wording& wording, QWidget* parent = nullptr);
    ~WhatIfDialog() override;

    /// What is to be kept, as one command; meaningful once the dialog was accepted.
    [[nodiscard]] Command command() const;
    /// How many columns have their figures; the season as it is counts as one.
    [[nodiscard]] int triedCount() const { return static_cast<int>(m_trials.size()); }

private:
    struct Trial {
        QString name;
        season::Variation variation;
        season::Proposal plan;
        season::SeasonFigures figures;
    };

    void build();
    QWidget* variationFields();
    [[nodiscard]] season::Variation chosen() const;
    [[nodiscard]] QString nameOf(const season::Variation& variation) const;
    /// Plans a copy; the first one is the season as it is.
    void tryOut(const season::Variation& variation);
    void take(const season::Proposal& proposal);
    void setRunning(bool running);
    void showTrials();

    const HouseBook& m_book;
    const RecipeLibrary& m_library;
    season::PlanRequest m_request;
    Wording m_wording;
    std::vector<Trial> m_trials;
    std::optional<Trial> m_running;
    std::unique_ptr<Planning> m_planning;

    QSpinBox* m_hands;
    QDoubleSpinBox* m_warmer;
    QDoubleSpinBox* m_sureness;
    QComboBox* m_zone;
    QDoubleSpinBox* m_setPoint;
    QSpinBox* m_watts;
    QDoubleSpinBox* m_seconds;
    QPushButton* m_try;
    QPushButton* m_stop;
    QPushButton* m_keep;
    QComboBox* m_which;
    QLabel* m_state;
    TroubleLabel* m_refusal;
    QTreeWidget* m_table;
};

} // namespace warmbench::ui
