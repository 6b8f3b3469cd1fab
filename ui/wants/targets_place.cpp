#include "ui/wants/targets_place.h"

#include "core/book/query.h"
#include "core/season/target_answer.h"
#include "ui/form/labels.h"
#include "ui/wants/target_dialog.h"
#include "ui/words/local_dates.h"
#include "ui/words/phrase_words.h"

#include <QDate>
#include <QPushButton>
#include <QTreeWidget>

#include <cmath>
#include <map>

namespace warmbench::ui {
namespace {

enum TargetColumn : int {
    TargetNameColumn,
    TargetTaxonColumn,
    DueColumn,
    WantedColumn,
    StruckColumn,
    ExpectedColumn,
    PottedColumn,
    StateColumn
};

constexpr int planDays = 28;   ///< looked ahead to say whether a target can be struck soon
constexpr int usualLead = 180; ///< days from today that a new target's date is set to
constexpr int firstWanted = 100;

} // namespace

TargetsPlace::TargetsPlace(QWidget* parent)
    : TablePlace(QStringLiteral("targets"), tr("Targets"),
                 {tr("Target"), tr("Taxon"), tr("By"), tr("Wanted"), tr("Struck"), tr("Expected"),
                  tr("Potted on"), tr("How it stands, and what can be done")},
                 parent),
      m_answer(wrappedLabel(this)) {
    m_answer->setObjectName(QStringLiteral("targetsAnswer"));
    m_answer->setTextFormat(Qt::RichText);
    addUnderTable(m_answer);
    addListButton(season::ListKind::Targets);
}

QString TargetsPlace::hint() const {
    return tr(
        "Nothing is wanted yet. A target is so many plants of a taxon, potted on, by a date: put in the "
        "first with New.");
}

QString TargetsPlace::stateWords(const season::TargetCoverage& coverage) const {
    const season::TargetNeed& need = coverage.need;
    QString words;
    switch (coverage.state) {
    case season::CoverageState::Met:
        return tr("met");
    case season::CoverageState::OnCourse:
        return coverage.ready ? tr("covered, by %1").arg(wording().shortDate(*coverage.ready))
                              : tr("covered");
    case season::CoverageState::Waiting:
        return tr("%1 missing: %2")
            .arg(wording().number(need.missing), need.ahead ? strikeWords(need) : told(need.why, wording()));
    case season::CoverageState::Late:
        words = tr("▲ %1 late").arg(wording().days(coverage.lateDays));
        break;
    case season::CoverageState::Short:
        words = tr("▲ %1 missing").arg(wording().number(need.missing));
        break;
    }
    QStringList remedies;
    if (coverage.state == season::CoverageState::Short && need.way)
        remedies += strikeWords(need);
    else
        for (const Phrase& remedy : coverage.remedies) remedies += told(remedy, wording());
    return remedies.isEmpty() ? words : words + QStringLiteral(": ") + remedies.join(QStringLiteral("; "));
}

QString TargetsPlace::date(Day day) const {
    return dayAndMonth(qDate(day), wording().locale(), day.year() != today().year());
}

QString TargetsPlace::strikeWords(const season::TargetNeed& need) const {
    const season::Way& way = *need.anyWay();
    const QString words = (way.cuttings == 1 ? tr("strike %1 %2 cutting from %3 to %4%5")
                                             : tr("strike %1 %2 cuttings from %3 to %4%5"))
                              .arg(wording().locale().toString(static_cast<qlonglong>(way.cuttings)),
                                   wording().wood(way.recipe.wood), date(way.whole.first),
                                   date(way.whole.last), way.late ? tr("; late") : QString());
    const auto answer = season::answerFor(book(), need);
    if (!answer || answer->inTheWay.empty()) return words;
    return tr("%1; in the way: %2").arg(words, told(answer->inTheWay.front(), wording()));
}

void TargetsPlace::addTarget(QTreeWidget& table, const BookView& view,
                             const season::TargetCoverage& coverage) {
    const Target& target = view.book.get<Target>(coverage.target);
    auto* item = new QTreeWidgetItem(&table);
    item->setData(0, idNumber, QVariant::fromValue<qlonglong>(target.id.number));
    item->setText(TargetNameColumn, text(target.name));
    item->setText(TargetTaxonColumn, text(view.book.get<Taxon>(target.taxon).name));
    item->setText(DueColumn, wording().locale().toString(qDate(target.due), QLocale::ShortFormat));
    setNumber(*item, WantedColumn, wording().number(target.plants));
    setNumber(*item, StruckColumn,
              coverage.planned == 0
                  ? wording().number(coverage.struck)
                  : tr("%1 + %2 planned")
                        .arg(wording().number(coverage.struck), wording().number(coverage.planned)));
    const auto whole = [&](double plants) { return wording().number(static_cast<int>(std::lround(plants))); };
    const bool certain = coverage.band.high - coverage.band.low < 1;
    setNumber(*item, ExpectedColumn,
              certain
                  ? whole(coverage.expected)
                  : tr("%1 (%2 to %3)")
                        .arg(whole(coverage.expected), whole(coverage.band.low), whole(coverage.band.high)));
    item->setToolTip(ExpectedColumn, tr("%1 can be relied on, at %2 % sureness")
                                         .arg(wording().number(coverage.sure), surenessText(view.book)));
    setNumber(*item, PottedColumn, wording().number(coverage.potted));
    const QString state = stateWords(coverage);
    item->setText(StateColumn, state);
    item->setToolTip(StateColumn, state);
    if (coverage.state <= season::CoverageState::Late) item->setForeground(StateColumn, look().trouble);
}

QString TargetsPlace::surenessText(const HouseBook& book) const {
    return wording().locale().toString(book.nursery().surenessPermille / 10.0, 'g', 3);
}

void TargetsPlace::fill(QTreeWidget& table, const BookView& view) {
    const season::PlanRequest request{view.today, planDays, view.book.nursery().surenessPermille};
    const auto list =
        season::coverageOf(view.book, view.recipes, request, view.forecasts.on(view.book, view.today));
    std::map<season::CoverageState, int> counts;
    m_coverage.clear();
    for (const season::TargetCoverage& coverage : list) m_coverage.emplace(coverage.target.number, coverage);
    for (const season::TargetCoverage& coverage : list) {
        addTarget(table, view, coverage);
        ++counts[coverage.state];
    }
    if (chosen() == 0 && table.topLevelItemCount() > 0) table.setCurrentItem(table.topLevelItem(0));
    const int covered = counts[season::CoverageState::OnCourse] + counts[season::CoverageState::Met];
    m_summary = (list.size() == 1 ? tr("%1 of %2 target is covered") : tr("%1 of %2 targets are covered"))
                    .arg(wording().number(covered), wording().number(static_cast<int>(list.size())));
    if (const int late = counts[season::CoverageState::Late])
        m_summary += tr(", %1 late").arg(wording().number(late));
    if (const int missing = counts[season::CoverageState::Short])
        m_summary += tr(", %1 short").arg(wording().number(missing));
    m_summary += tr(". Covered: enough can be relied on at %1 % sureness. Expected: with the band that holds "
                    "9 times in 10.")
                     .arg(surenessText(view.book));
}

QString TargetsPlace::answerWords(const season::TargetCoverage& coverage) const {
    const auto answer = season::answerFor(book(), coverage.need);
    if (!answer) {
        QStringList words{told(coverage.need.why, wording())};
        if (coverage.state == season::CoverageState::Late)
            for (const Phrase& remedy : coverage.remedies) words += told(remedy, wording());
        return words.join(QStringLiteral("; ")).toHtmlEscaped();
    }
    const Recipe& recipe = answer->recipe;
    const auto count = [this](std::int64_t number) {
        return wording().locale().toString(static_cast<qlonglong>(number));
    };
    QStringList lines;
    if (coverage.need.state == season::NeedState::TooLate) lines += told(coverage.need.why, wording()) + u'.';
    lines += (answer->cuttings == 1 ? tr("Strike %1 %2 cutting from %3 to %4, by the recipe %5.")
                                    : tr("Strike %1 %2 cuttings from %3 to %4, by the recipe %5."))
                 .arg(count(answer->cuttings), wording().wood(recipe.wood), date(answer->window.first),
                      date(answer->window.last), told(recipeTitle(book(), recipe)));
    QStringList covers;
    for (const Cover cover : recipe.covers.value) covers += wording().cover(cover);
    const QString rooting =
        tr("%1 at %2, %3, then %4 in the open")
            .arg(wording().days(answer->rootingDays), wording().temperature(recipe.rootZoneIdeal.value),
                 covers.join(tr(" or ")), wording().days(answer->openDays));
    lines += answer->containerType
                 ? (answer->slots == 1 ? tr("They take %1 slot (%2) for %3.")
                                       : tr("They take %1 slots (%2) for %3."))
                       .arg(wording().number(answer->slots),
                            wording().containers(answer->containers,
                                                 book().get<ContainerType>(*answer->containerType)),
                            rooting)
                 : tr("They stand for %1.").arg(rooting);
    QStringList stocks;
    for (const season::StockOffer& offer : answer->stocks)
        stocks += tr("%1: %2").arg(text(book().get<Stock>(offer.stock).name), count(offer.cuttings));
    if (!stocks.isEmpty()) lines += tr("Stock gives %1.").arg(stocks.join(QStringLiteral(", ")));
    if (!answer->doubt.empty()) lines += QStringLiteral("▲ %1.").arg(told(answer->doubt, wording()));
    QString html = lines.join(QStringLiteral(" ")).toHtmlEscaped();
    QStringList against;
    for (const Phrase& words : answer->inTheWay) against += told(words, wording());
    html += against.isEmpty()
                ? u' ' + tr("Nothing is in the way.").toHtmlEscaped()
                : QStringLiteral(" <b>") +
                      tr("In the way: %1.").arg(against.join(QStringLiteral("; "))).toHtmlEscaped() +
                      QStringLiteral("</b>");
    return html;
}

void TargetsPlace::showChosen(std::int64_t number) {
    const auto found = m_coverage.find(number);
    const Target* target = found == m_coverage.end() ? nullptr : book().find<Target>({number});
    m_answer->setVisible(target);
    if (!target) return;
    m_answer->setText(QStringLiteral("<b>") + text(target->name).toHtmlEscaped() + QStringLiteral("</b> · ") +
                      answerWords(found->second));
}

void TargetsPlace::askFor(const Target& target) {
    TargetDialog dialog(
        book(), recipes(), target, wording(), [this](const Command& command) { return perform(command); },
        this);
    ask(dialog, target.id.number,
        target.id.number == 0 ? tr("a new target") : tr("target %1").arg(text(target.name)));
}

void TargetsPlace::putIn() {
    Target target;
    target.name = season::nextTargetName(book());
    target.plants = firstWanted;
    target.due = today() + usualLead;
    target.worth = season::usualWorth;
    askFor(target);
}

void TargetsPlace::change(std::int64_t number) {
    askFor(book().get<Target>({number}));
}

Command TargetsPlace::removal(std::int64_t number) const {
    return {Remove<Target>{{number}}};
}

} // namespace warmbench::ui
