#include "ui/plan/proposal_list.h"

#include "core/book/query.h"
#include "ui/form/table.h"
#include "ui/words/kept_words.h"
#include "ui/words/phrase_words.h"
#include "ui/words/taxon_text.h"

#include <algorithm>

#include <QHeaderView>

namespace warmbench::ui {
namespace {

enum Column : int { DayColumn, TaxonColumn, CuttingsColumn, PlaceColumn, HeatColumn, NoteColumn };

/// Not so what has no place and is not in the book.
bool canBeTicked(const QTreeWidgetItem& item) {
    return item.flags().testFlag(Qt::ItemIsUserCheckable);
}

bool isTicked(const QTreeWidgetItem& item) {
    return item.checkState(DayColumn) == Qt::Checked;
}

} // namespace

ProposalList::ProposalList(const Wording& wording, QWidget* parent)
    : QTreeWidget(parent), m_wording(wording) {
    setAccessibleName(tr("Proposed batches"));
    setHeaderLabels({tr("Strike"), tr("Taxon"), tr("Cuttings"), tr("Place"), tr("Mat"), tr("For and why")});
    setRootIsDecorated(false);
    wrapLastColumn(*this);
    header()->setStretchLastSection(true);
    connect(this, &QTreeWidget::itemChanged, this, [this](const QTreeWidgetItem* item) {
        follow(*item);
        Q_EMIT ticksChanged();
    });
}

void ProposalList::showProposal(const HouseBook& book, season::Proposal proposal) {
    forget();
    m_book = &book;
    m_proposal = std::move(proposal);
    m_needs = season::PlaceNeeds(book, m_proposal);
    const QSignalBlocker quiet(this);
    for (const season::StrikeLine& line : m_proposal.lines) addLine(book, line);
    for (const season::NotPlaced& left : m_proposal.notPlaced) addNotPlaced(book, left);
    for (int column = DayColumn; column < NoteColumn; ++column) resizeColumnToContents(column);
}

void ProposalList::forget() {
    const QSignalBlocker quiet(this);
    clear();
    m_items.clear();
    m_names.clear();
    m_along.clear();
    m_book = nullptr;
    m_proposal = {};
    m_needs = {};
}

void ProposalList::addLine(const HouseBook& book, const season::StrikeLine& line) {
    QTreeWidgetItem*& item = m_items.emplace_back(nullptr);
    const Taxon& taxon = book.get<Taxon>(line.batch.taxon);
    m_names.push_back(line.change == season::LineChange::New
                          ? tr("%1 on %2", "a taxon and its strike day")
                                .arg(text(taxon.name), m_wording.shortDate(line.batch.strikeDay))
                          : text(line.batch.code));
    if (line.change == season::LineChange::Kept) return;
    item = new QTreeWidgetItem(this);
    item->setText(DayColumn, m_wording.shortDate(line.batch.strikeDay));
    item->setText(TaxonColumn, text(taxon.name));
    item->setText(CuttingsColumn, m_wording.number(line.batch.cuttings()));
    item->setText(PlaceColumn, text(zoneTitle(book, line.stays.front().zone)));
    item->setText(HeatColumn, line.setPoint ? m_wording.temperature(*line.setPoint) : tr("off"));
    item->setText(NoteColumn, noteOf(book, line));
    item->setToolTip(NoteColumn, item->text(NoteColumn));
    item->setTextAlignment(CuttingsColumn, Qt::AlignRight | Qt::AlignVCenter);
    item->setCheckState(DayColumn, Qt::Checked);
}

QString ProposalList::noteOf(const HouseBook& book, const season::StrikeLine& line) const {
    QStringList parts;
    if (line.change == season::LineChange::Moved) {
        const Batch& before = book.get<Batch>(line.batch.id);
        const std::vector<const Stay*> stays = staysInOrder(book, before.id);
        if (before.strikeDay < m_proposal.from)
            parts << tr("%1, not struck on %2").arg(text(before.code), m_wording.shortDate(before.strikeDay));
        else
            parts << (stays.empty() ? tr("%1, until now without a place").arg(text(before.code))
                                    : tr("%1, until now %2 on %3")
                                          .arg(text(before.code), text(zoneTitle(book, stays.front()->zone)),
                                               m_wording.shortDate(before.strikeDay)));
    }
    if (line.batch.target) {
        const Target& target = book.get<Target>(*line.batch.target);
        parts << tr("target %1 by %2").arg(text(target.name), m_wording.shortDate(target.due));
    }
    parts << tr("off the benches on %1").arg(m_wording.shortDate(line.stays.back().to));
    if (!line.moved.empty()) parts << tr("moved, as %1").arg(told(line.moved, m_wording));
    if (line.late && line.why.empty()) parts << tr("late");
    const Celsius ideal = line.batch.recipe.rootZoneIdeal.value;
    if (line.setPoint == ideal)
        parts << tr("at its ideal heat");
    else if (line.setPoint)
        parts << tr("its ideal heat is %1").arg(m_wording.temperature(ideal));
    for (const std::string& why : line.why)
        parts << told(withDates(readKeptWords(why), m_proposal.from), m_wording);
    return parts.join(tr(", "));
}

void ProposalList::addNotPlaced(const HouseBook& book, const season::NotPlaced& left) {
    auto* item = new QTreeWidgetItem(this);
    m_items.push_back(item);
    m_names.push_back(left.planned ? text(left.planned->code) : QString());
    const TaxonId taxon = left.planned ? left.planned->taxon : book.get<Target>(*left.target).taxon;
    item->setText(DayColumn, tr("no place"));
    item->setText(TaxonColumn, text(book.get<Taxon>(taxon).name));
    item->setText(CuttingsColumn, m_wording.locale().toString(static_cast<qlonglong>(left.cuttings)));
    item->setTextAlignment(CuttingsColumn, Qt::AlignRight | Qt::AlignVCenter);
    QString why = told(withDates(readKeptWords(left.why.text()), m_proposal.from), m_wording);
    if (!left.hint.empty()) why += QStringLiteral("; ") + told(left.hint, m_wording);
    item->setToolTip(NoteColumn, why);
    if (left.planned) {
        item->setText(NoteColumn, tr("%1 loses its place and waits: %2").arg(text(left.planned->code), why));
        item->setCheckState(DayColumn, Qt::Checked);
        return;
    }
    item->setText(NoteColumn, tr("target %1: %2").arg(text(book.get<Target>(*left.target).name), why));
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
}

void ProposalList::tickAll(Qt::CheckState state) {
    {
        const QSignalBlocker quiet(this);
        for (QTreeWidgetItem* item : m_items)
            if (item && canBeTicked(*item)) item->setCheckState(DayColumn, state);
    }
    m_along.clear();
    viewport()->update();
    if (topLevelItemCount() > 0) Q_EMIT ticksChanged();
}

void ProposalList::follow(const QTreeWidgetItem& item) {
    m_along.clear();
    const auto found = std::find(m_items.begin(), m_items.end(), &item);
    if (found == m_items.end() || !canBeTicked(item)) return;
    const auto thing = static_cast<std::size_t>(found - m_items.begin());
    const Qt::CheckState state = item.checkState(DayColumn);
    const bool on = state == Qt::Checked;
    QStringList along;
    {
        const QSignalBlocker quiet(this);
        for (const std::size_t other : on ? m_needs.neededBy(thing) : m_needs.needing(thing)) {
            QTreeWidgetItem* one = m_items[other];
            if (!one || one->checkState(DayColumn) == state) continue;
            one->setCheckState(DayColumn, state);
            along << m_names[other];
        }
    }
    if (along.empty()) return;
    viewport()->update();
    const QString others = QLocale().createSeparatedList(along);
    const bool one = along.size() == 1;
    if (on)
        m_along = (one ? tr("%1 needs the place of %2, so that is ticked too.")
                       : tr("%1 needs the places of %2, so they are ticked too."))
                      .arg(m_names[thing], others);
    else
        m_along = (one ? tr("%1 needs the place of %2, so it is not ticked any more either.")
                       : tr("%1 need the place of %2, so they are not ticked any more either."))
                      .arg(others, m_names[thing]);
}

season::Proposal ProposalList::chosen() const {
    if (!m_book) return {};
    std::vector<bool> taken;
    for (std::size_t thing = 0; thing < m_items.size(); ++thing) {
        // What is kept stays as it is planned, unless it changes its days with what is ticked.
        const std::vector<std::size_t> needed = m_needs.neededBy(thing);
        taken.push_back(std::all_of(needed.begin(), needed.end(), [&](std::size_t one) {
            return !m_items[one] || isTicked(*m_items[one]);
        }));
    }
    return m_proposal.only(*m_book, taken);
}

int ProposalList::tickable() const {
    return static_cast<int>(std::count_if(m_items.begin(), m_items.end(), [](const QTreeWidgetItem* item) {
        return item && canBeTicked(*item);
    }));
}

int ProposalList::ticked() const {
    return static_cast<int>(std::count_if(m_items.begin(), m_items.end(), [](const QTreeWidgetItem* item) {
        return item && canBeTicked(*item) && isTicked(*item);
    }));
}

int ProposalList::kept() const {
    return static_cast<int>(std::count(m_items.begin(), m_items.end(), nullptr));
}

} // namespace warmbench::ui
