#pragma once

#include "core/book/command.h"
#include "ui/plan/planning.h"
#include "ui/words/wording.h"

#include <QDialog>

class QCheckBox;
class QDateEdit;
class QDoubleSpinBox;
class QLabel;
class QPushButton;
class QSpinBox;
class QTreeWidget;
class QTreeWidgetItem;

namespace warmbench::ui {

/// Asks for the days to plan, runs the planner with its progress in sight, and shows the proposal as a list
/// from which batches may be left out. Nothing is in the book until its command is performed.
class PlanDialog : public QDialog {
    Q_OBJECT
public:
    /// `book` is copied each time planning starts; both must outlive the dialog.
    PlanDialog(const HouseBook& book, const RecipeLibrary& library, Day from, const Wording& wording,
               QWidget* parent = nullptr);
    ~PlanDialog() override;

    /// What was accepted, as one command; meaningful once the dialog was accepted.
    [[nodiscard]] Command command() const;

Q_SIGNALS:
    /// What is ticked, each time that changes; nothing while no proposal is shown or nothing of it is ticked.
    void chosenChanged(const std::optional<warmbench::Command>& command);

private:
    void build(Day from);
    void fold(bool folded);
    void start();
    void showProgress(const planner::Progress& progress);
    void showProposal(const season::Proposal& proposal);
    void forgetProposal();
    void showRefusal(const QString& why);
    void setRunning(bool running);
    void tickAll(Qt::CheckState state);
    void countChosen();
    /// Which target can be planned next, and for when; empty where none waits for its season.
    [[nodiscard]] QString nextWords() const;
    void addLine(const HouseBook& book, std::size_t index);
    void addNotPlaced(const HouseBook& book, std::size_t index);
    [[nodiscard]] QString noteOf(const HouseBook& book, const season::StrikeLine& line) const;
    /// The proposal without what is not ticked.
    [[nodiscard]] season::Proposal chosen() const;

    const HouseBook& m_book;
    const RecipeLibrary& m_library;
    Wording m_wording;
    season::Proposal m_proposal;
    std::vector<QTreeWidgetItem*> m_lineItems; ///< by line of the proposal; null for those kept
    std::vector<QTreeWidgetItem*> m_leftItems; ///< by what has no place
    std::unique_ptr<Planning> m_planning;

    QWidget* m_asked; ///< the form
    QDateEdit* m_from;
    QSpinBox* m_days;
    QSpinBox* m_sureness;
    QDoubleSpinBox* m_seconds;
    QCheckBox* m_again;
    QPushButton* m_plan;
    QPushButton* m_stop;
    QPushButton* m_fold;
    QPushButton* m_accept;
    QRect m_unfolded;
    QLabel* m_state;
    QTreeWidget* m_list;
};

} // namespace warmbench::ui
