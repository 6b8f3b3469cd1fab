#pragma once

#include "core/book/command.h"
#include "ui/plan/planning.h"
#include "ui/words/wording.h"

#include <functional>

#include <QDialog>

class QCheckBox;
class QDateEdit;
class QDoubleSpinBox;
class QLabel;
class QPushButton;
class QSpinBox;

namespace warmbench::ui {

class ProposalList;
class TroubleLabel;

/// Asks for the days to plan, runs the planner with its progress in sight, and shows the proposal as a list
/// from which batches may be left out. It closes only once what is ticked is in the book; a refusal is told
/// in it, with all ticks as they are.
class PlanDialog : public QDialog {
    Q_OBJECT
public:
    using Performer = std::function<Outcome(const Command&)>;

    /// `book` is copied each time planning starts; both must outlive the dialog. `performer` puts what is
    /// accepted into the book.
    PlanDialog(const HouseBook& book, const RecipeLibrary& library, Day from, const Wording& wording,
               Performer performer, QWidget* parent = nullptr);
    ~PlanDialog() override;

    /// What is ticked, as one command.
    [[nodiscard]] Command command() const;
    void accept() override;

Q_SIGNALS:
    /// What is ticked, each time that changes; nothing while no proposal is shown, nothing of it
    /// is ticked, or the book refuses it.
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
    void countChosen();
    /// Which target can be planned next, and for when; empty where none waits for its season.
    [[nodiscard]] QString nextWords() const;

    const HouseBook& m_book;
    const RecipeLibrary& m_library;
    Wording m_wording;
    Performer m_performer;
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
    TroubleLabel* m_refusal;
    ProposalList* m_list;
};

} // namespace warmbench::ui
