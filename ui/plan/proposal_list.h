#pragma once

#include "core/season/place_needs.h"
#include "core/season/proposal.h"
#include "ui/words/wording.h"

#include <QTreeWidget>

namespace warmbench::ui {

/// What the planner proposes, a line a batch, of which some may be left out. What is ticked can always be
/// accepted without the rest: a batch is ticked and unticked together with those whose place it needs.
class ProposalList : public QTreeWidget {
    Q_OBJECT
public:
    ProposalList(const Wording& wording, QWidget* parent);

    /// Lists a proposal with all of it ticked. `book` is the one that it was planned on, and has to
    /// be there as long as it is shown.
    void showProposal(const HouseBook& book, season::Proposal proposal);
    void forget();
    void tickAll(Qt::CheckState state);

    [[nodiscard]] const season::Proposal& proposal() const { return m_proposal; }
    /// The proposal without what is not ticked.
    [[nodiscard]] season::Proposal chosen() const;
    [[nodiscard]] int tickable() const;
    [[nodiscard]] int ticked() const;
    /// Batches that stay as they were planned; they are not listed.
    [[nodiscard]] int kept() const;
    /// What was ticked or unticked together with the last one that was, and why; empty where nothing was.
    [[nodiscard]] const QString& alongWords() const { return m_along; }

Q_SIGNALS:
    void ticksChanged();

private:
    void addLine(const HouseBook& book, const season::StrikeLine& line);
    void addNotPlaced(const HouseBook& book, const season::NotPlaced& left);
    [[nodiscard]] QString noteOf(const HouseBook& book, const season::StrikeLine& line) const;
    /// Ticks or unticks what goes together with an item.
    void follow(const QTreeWidgetItem& item);

    Wording m_wording;
    const HouseBook* m_book = nullptr; ///< null while nothing is shown
    season::Proposal m_proposal;
    season::PlaceNeeds m_needs;
    std::vector<QTreeWidgetItem*> m_items; ///< by thing, as PlaceNeeds counts them; null for lines kept
    std::vector<QString> m_names;          ///< what each of them is called, by thing
    QString m_along;
};

} // namespace warmbench::ui
