#include "ui/month/month_place.h"

#include "core/book/query.h"
#include "ui/form/labels.h"
#include "ui/month/hands_dialog.h"
#include "ui/month/month_chart.h"
#include "ui/paper/html_table.h"
#include "ui/paper/strike_list.h"
#include "ui/plan/plan_dialog.h"
#include "ui/whatif/what_if_dialog.h"
#include "ui/words/phrase_words.h"

#include <QDateEdit>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace warmbench::ui {
namespace {

constexpr int leastWeeks = 4;
constexpr int mostWeeks = 12;
constexpr int daysOfWeek = 7;

Day mondayOf(Day day) {
    return day - day.weekday();
}

} // namespace

MonthPlace::MonthPlace(QWidget* parent)
    : Place(QStringLiteral("month"), tr("Month"), parent), m_from(new QDateEdit(this)),
      m_weeks(new QSpinBox(this)), m_hands(new QPushButton(tr("Hands of a &day…"), this)),
      m_whatIf(new QPushButton(tr("What &if…"), this)),
      m_planAll(new QPushButton(tr("Plan these &weeks…"), this)), m_chart(new MonthChart(this)),
      m_words(wrappedLabel(this)), m_refusal(new TroubleLabel(QStringLiteral("monthRefusal"), this)),
      m_sums(new QTextBrowser(this)) {
    build();
}

void MonthPlace::build() {
    m_from->setObjectName(QStringLiteral("monthFrom"));
    m_from->setCalendarPopup(true);
    m_from->setAccessibleName(tr("First day"));
    m_weeks->setObjectName(QStringLiteral("monthWeeks"));
    m_weeks->setRange(leastWeeks, mostWeeks);
    m_weeks->setSuffix(tr(" weeks"));
    m_weeks->setAccessibleName(tr("How many weeks"));
    m_hands->setObjectName(QStringLiteral("monthHands"));
    m_whatIf->setObjectName(QStringLiteral("monthWhatIf"));
    m_whatIf->setToolTip(tr("Try fewer hands, a cooler house, more sureness or another mat on a copy"));
    m_planAll->setObjectName(QStringLiteral("monthPlan"));
    m_planAll->setProperty("primary", true);
    m_words->setObjectName(QStringLiteral("monthWords"));
    m_words->setMinimumHeight(2 * m_words->sizeHint().height());
    m_words->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_chart->setAccessibleName(tr("Batches by the days on which they are struck"));
    m_sums->setObjectName(QStringLiteral("monthSums"));
    m_sums->setWordWrapMode(QTextOption::WordWrap);
    m_sums->setAccessibleName(tr("What these weeks take"));
    setFocusProxy(m_chart);
    auto* top = new QHBoxLayout;
    for (QWidget* widget :
         {static_cast<QWidget*>(m_from), static_cast<QWidget*>(m_weeks), static_cast<QWidget*>(m_hands)})
        top->addWidget(widget);
    top->addStretch(1);
    top->addWidget(m_whatIf);
    top->addWidget(m_planAll);
    auto* left = new QVBoxLayout;
    left->addWidget(m_chart, 1);
    left->addWidget(m_words);
    left->addWidget(m_refusal);
    auto* both = new QHBoxLayout;
    both->setSpacing(16);
    both->addLayout(left, 4);
    both->addWidget(m_sums, 1);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(20, 16, 20, 12);
    all->setSpacing(10);
    all->addLayout(top);
    all->addLayout(both, 1);
    connect(m_from, &QDateEdit::dateChanged, this, &MonthPlace::refresh);
    connect(m_weeks, &QSpinBox::valueChanged, this, &MonthPlace::refresh);
    connect(m_hands, &QPushButton::clicked, this, [this] {
        const int line = m_chart->current();
        const auto batch = batchOf(line);
        askHands(batch ? m_book->get<Batch>(*batch).strikeDay : m_plan.from);
    });
    connect(m_planAll, &QPushButton::clicked, this, &MonthPlace::planWeeks);
    connect(m_whatIf, &QPushButton::clicked, this, &MonthPlace::tryThings);
    connect(m_chart, &MonthChart::currentChanged, this, &MonthPlace::sayLine);
    connect(m_chart, &MonthChart::moveTried, this, &MonthPlace::sayMove);
    connect(m_chart, &MonthChart::moveWanted, this, &MonthPlace::move);
    connect(m_chart, &MonthChart::handsWanted, this, &MonthPlace::askHands);
    connect(m_chart, &MonthChart::activated, this, &MonthPlace::showOnMap);
}

void MonthPlace::showBook(const BookView& view) {
    const bool otherDay = !m_book || mondayOf(view.day) != mondayOf(m_shown);
    m_book = &view.book;
    m_recipes = &view.recipes;
    m_forecasts = &view.forecasts;
    m_shown = view.day;
    m_today = view.today;
    m_chart->setLook(look(), type(), wording());
    if (otherDay) {
        const QSignalBlocker quiet(m_from);
        m_from->setDate(qDate(mondayOf(view.day)));
    }
    refresh();
}

void MonthPlace::refresh() {
    if (!m_book) return;
    season::PlanRequest request;
    request.from = dayOf(m_from->date());
    request.days = m_weeks->value() * daysOfWeek;
    request.surenessPermille = m_book->nursery().surenessPermille;
    m_plan = season::monthPlan(
        *m_book, season::targetNeeds(*m_book, *m_recipes, request, m_forecasts->on(*m_book, m_shown)),
        request.from, request.days);
    m_refusal->tell(QString());
    m_chart->showMonth(m_plan, monthLines(*m_book, m_plan, wording()));
    showSums();
}

std::optional<BatchId> MonthPlace::batchOf(int line) const {
    if (line < 0 || line >= static_cast<int>(m_plan.batches.size())) return std::nullopt;
    return m_plan.batches[static_cast<std::size_t>(line)].batch;
}

void MonthPlace::sayLine(int line) {
    QString words;
    if (const auto id = batchOf(line)) {
        const Batch& batch = m_book->get<Batch>(*id);
        const season::MonthBatch& one = m_plan.batches[static_cast<std::size_t>(line)];
        const bool planned = batch.state == BatchState::Planned;
        words = (planned ? tr("%1, %2: to be struck on %3") : tr("%1, %2: struck on %3"))
                    .arg(text(batch.code), text(m_book->get<Taxon>(batch.taxon).name),
                         wording().longDate(batch.strikeDay));
        if (one.ready) words += tr("; its slots are free on %1").arg(wording().shortDate(*one.ready));
        if (one.due && batch.target)
            words += tr("; %1 is due on %2")
                         .arg(text(m_book->get<Target>(*batch.target).name), wording().shortDate(*one.due));
        if (planned) words += tr(". Left and Right try another day.");
    } else if (line >= 0) {
        const season::MonthWant& want = m_plan.wants[static_cast<std::size_t>(line) - m_plan.batches.size()];
        const Target& target = m_book->get<Target>(want.target);
        words =
            (want.cuttings == 1 ? tr("%1 still wants %2 cutting of %3, from %4 to %5. Plan these weeks gives "
                                     "it a day and a place.")
                                : tr("%1 still wants %2 cuttings of %3, from %4 to %5. Plan these weeks "
                                     "gives them a day and a place."))
                .arg(text(target.name), wording().locale().toString(static_cast<qlonglong>(want.cuttings)),
                     text(m_book->get<Taxon>(target.taxon).name), wording().shortDate(want.window.first),
                     wording().shortDate(want.window.last));
    } else {
        words = tr("Nothing is planned or wanted in these weeks.");
    }
    m_words->setText(words);
    m_chart->setAccessibleDescription(words);
}

void MonthPlace::sayMove(int line, Day day) {
    const auto id = batchOf(line);
    if (!id) return;
    const Batch& batch = m_book->get<Batch>(*id);
    m_refusal->tell(QString());
    if (day == batch.strikeDay) return sayLine(line);
    const season::BatchMove move = season::moveBatch(*m_book, *id, day);
    QString words = tr("To %1").arg(wording().longDate(day));
    if (move.ready) words += tr("; its slots are free on %1").arg(wording().shortDate(*move.ready));
    words += tr(". Enter moves it, Escape leaves it.");
    m_words->setText(words);
    m_chart->setAccessibleDescription(words);
    QStringList against;
    if (move.refusal) against += tr("it can't: %1").arg(told(*move.refusal, wording()));
    for (const Phrase& warning : move.warnings) against += told(warning, wording());
    m_refusal->tell(against.join(QStringLiteral("; ")));
}

void MonthPlace::move(int line, Day day) {
    const auto id = batchOf(line);
    if (!id) return;
    const season::BatchMove move = season::moveBatch(*m_book, *id, day);
    const Outcome refusal = move.refusal ? move.refusal : perform(move.command);
    if (refusal) {
        m_chart->dropTried();
        m_refusal->tell(refusal);
        return;
    }
    for (std::size_t i = 0; i < m_plan.batches.size(); ++i)
        if (m_plan.batches[i].batch == *id) m_chart->setCurrent(static_cast<int>(i));
    // What spoke against it still does.
    QStringList against;
    for (const Phrase& warning : move.warnings) against += told(warning, wording());
    m_refusal->tell(against.join(QStringLiteral("; ")));
}

void MonthPlace::askHands(Day day) {
    HandsDialog dialog(
        *m_book, day, wording(), [this](const Command& command) { return perform(command); }, this);
    dialog.exec();
}

std::optional<Day> MonthPlace::planFrom() {
    if (m_plan.from + m_plan.days <= m_shown) {
        m_refusal->tell(tr("These weeks have gone; choose a later first day."));
        return std::nullopt;
    }
    return std::max(m_plan.from, m_shown);
}

void MonthPlace::planWeeks() {
    const auto from = planFrom();
    if (!from) return;
    PlanDialog dialog(
        *m_book, *m_recipes, *from, wording(), [this](const Command& command) { return perform(command); },
        this);
    if (auto* days = dialog.findChild<QSpinBox*>(QStringLiteral("planDays")))
        days->setValue(m_plan.from + m_plan.days - *from);
    dialog.exec();
}

void MonthPlace::tryThings() {
    const auto from = planFrom();
    if (!from) return;
    WhatIfDialog dialog(*m_book, *m_recipes, *from, m_plan.from + m_plan.days - *from, wording(), this);
    if (dialog.exec() == QDialog::Accepted) m_refusal->tell(perform(dialog.command()));
}

void MonthPlace::showOnMap(int line) {
    if (const auto batch = batchOf(line)) Q_EMIT shownOnMap(*batch);
}

void MonthPlace::showSums() {
    int hands = 0;
    int planned = 0;
    QStringList over;
    for (const season::DayHands& day : m_plan.hands) {
        hands += day.hands;
        planned += day.cuttings;
        if (day.over()) over += wording().shortDate(day.day);
    }
    QString words = paragraph((hands == 1 ? tr("%1 of %2 cutting that hands can strike is taken.")
                                          : tr("%1 of %2 cuttings that hands can strike are taken."))
                                  .arg(wording().number(planned), wording().number(hands)));
    if (!over.isEmpty())
        words += paragraph(tr("More than there are hands for: %1.").arg(over.join(QStringLiteral(", "))));
    if (!m_plan.wants.empty())
        words += paragraph(m_plan.wants.size() == 1
                               ? tr("1 target still wants striking.")
                               : tr("%1 targets still want striking.")
                                     .arg(wording().number(static_cast<int>(m_plan.wants.size()))));
    if (m_plan.cuttings > 0) words += materialsHtml(m_plan.materials, wording());
    m_sums->setHtml(words);
}

} // namespace warmbench::ui
