#pragma once

#include "core/round/merge.h"
#include "ui/away/away_copies.h"
#include "ui/words/wording.h"

#include <QDialog>

#include <functional>

class QLabel;
class QListWidget;
class QPushButton;
class QTreeWidget;

namespace warmbench::ui {

class TroubleLabel;

/// Shows what was found on a round with a copy of the book, batch by batch, and what of it is in conflict,
/// before any of it is stored; then brings it home as one step, all but what is in conflict.
class HomecomingDialog : public QDialog {
    Q_OBJECT
public:
    using Performer = std::function<Outcome(const Command&)>;

    /// `book`, which must outlive it, is the one that is open; `name` what people call it, `copy` the copy's
    /// file.
    HomecomingDialog(const HouseBook& book, const QString& name, AwayContent content, const QString& copy,
                     const Wording& wording, Performer performer, QWidget* parent);

    /// Looks again, as the book has changed.
    void refresh();
    void accept() override;
    /// What was brought home, in words.
    [[nodiscard]] QString sumWords() const;

protected:
    void showEvent(QShowEvent* event) override;

private:
    void listBatches();
    void listConflicts();
    [[nodiscard]] QString stepWords() const;

    const HouseBook& m_book;
    AwayContent m_content;
    QString m_copy; ///< its file's name without the folder
    Wording m_wording;
    Performer m_performer;
    round::RoundMerge m_merge;
    QLabel* m_sum;
    QTreeWidget* m_batches;
    QLabel* m_conflictWords;
    QListWidget* m_conflicts;
    TroubleLabel* m_refusal;
    QPushButton* m_bring;
    QPushButton* m_leave;
};

} // namespace warmbench::ui
