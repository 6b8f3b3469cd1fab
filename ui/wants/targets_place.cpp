#include "ui/wants/targets_place.h"

#include "core/book/query.h"
#include "core/season/need.h"
#include "ui/wants/target_dialog.h"

#include <QDate>
#include <QPushButton>
#include <QTreeWidget>

#include <map>

namespace warmbench::ui {
namespace {

enum TargetColumn : int {
    TargetNameColumn,
    TargetTaxonColumn,
    WantedColumn,
    DueColumn,
    PottedColumn,
    ExpectedColumn,
    StateColumn
};

constexpr int planDays = 28;   ///< looked ahead to say whether a target can be struck soon
constexpr int usualLead = 180; ///< days from today that a new target's date is set to
constexpr int firstWanted = 100;

/// Plants potted on so far, of the targets that have any.
std::map<TargetId, int> pottedOnByTarget(const HouseBook& book) {
    std::map<TargetId, int> potted;
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.target) potted[*batch.target] += pottedOn(book, id);
    return potted;
}

} // namespace

TargetsPlace::TargetsPlace(QWidget* parent)
    : TablePlace(QStringLiteral("targets"), tr("Targets"),
                 {tr("Target"), tr("Taxon"), tr("Wanted"), tr("By"), tr("Potted on"), tr("Expected"),
                  tr("How it stands")},
                 parent) {
    addListButton(season::ListKind::Targets);
}

QString TargetsPlace::hint() const {
    return tr(
        "Nothing is wanted yet. A target is so many plants of a taxon, potted on, by a date: put in the "
        "first with New.");
}

void TargetsPlace::fill(QTreeWidget& table, const BookView& view) {
    const season::PlanRequest request{view.today, planDays, view.book.nursery().surenessPermille};
    int covered = 0;
    const auto needs =
        season::targetNeeds(view.book, view.recipes, request, view.forecasts.on(view.book, view.today));
    const std::map<TargetId, int> potted = pottedOnByTarget(view.book);
    for (const season::TargetNeed& need : needs) {
        const Target& target = view.book.get<Target>(need.target);
        const auto found = potted.find(target.id);
        auto* item = new QTreeWidgetItem(&table);
        item->setData(0, idNumber, QVariant::fromValue<qlonglong>(target.id.number));
        item->setText(TargetNameColumn, text(target.name));
        item->setText(TargetTaxonColumn, text(view.book.get<Taxon>(target.taxon).name));
        setNumber(*item, WantedColumn, wording().number(target.plants));
        item->setText(DueColumn, wording().locale().toString(qDate(target.due), QLocale::ShortFormat));
        setNumber(*item, PottedColumn, wording().number(found == potted.end() ? 0 : found->second));
        setNumber(*item, ExpectedColumn, wording().number(need.expected));
        QString state;
        if (need.state == season::NeedState::Covered)
            state = tr("covered");
        else if (need.state == season::NeedState::Now && need.way)
            state =
                tr("%1 missing: strike %2 %3 cuttings from %4 to %5%6")
                    .arg(wording().number(need.missing),
                         wording().locale().toString(static_cast<qlonglong>(need.way->cuttings)),
                         wording().wood(need.way->recipe.wood), wording().shortDate(need.way->window.first),
                         wording().shortDate(need.way->window.last),
                         need.way->late ? tr("; late") : QString());
        else
            state = tr("%1 missing: %2").arg(wording().number(need.missing), text(need.why));
        item->setText(StateColumn, state);
        item->setToolTip(StateColumn, state);
        covered += need.state == season::NeedState::Covered ? 1 : 0;
    }
    m_summary = tr("%1 of %2 targets are covered. Expected counts what can be relied on, at %3 % sureness.")
                    .arg(wording().number(covered), wording().number(static_cast<int>(needs.size())),
                         wording().locale().toString(view.book.nursery().surenessPermille / 10.0, 'g', 3));
}

void TargetsPlace::ask(const Target& target) {
    TargetDialog dialog(
        book(), recipes(), target, wording(), [this](const Command& command) { return perform(command); },
        this);
    dialog.exec();
}

void TargetsPlace::putIn() {
    Target target;
    target.name = season::nextTargetName(book());
    target.plants = firstWanted;
    target.due = today() + usualLead;
    target.worth = season::usualWorth;
    ask(target);
}

void TargetsPlace::change(std::int64_t number) {
    ask(book().get<Target>({number}));
}

Command TargetsPlace::removal(std::int64_t number) const {
    return {Remove<Target>{{number}}};
}

} // namespace warmbench::ui
