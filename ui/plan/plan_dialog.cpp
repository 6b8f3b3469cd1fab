#include "ui/plan/plan_dialog.h"

#include "ui/form/labels.h"
#include "ui/plan/proposal_list.h"
#include "ui/words/local_dates.h"
#include "ui/words/phrase_words.h"
#include "ui/words/taxon_text.h"

#include <QCheckBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace warmbench::ui {
namespace {

constexpr int mostDays = 366;

/// Money in thousandths, without decimals.
QString costText(std::int64_t thousandths, const Wording& wording) {
    return wording.locale().toString(static_cast<double>(thousandths) / 1000, 'f', 0);
}

} // namespace

PlanDialog::PlanDialog(const HouseBook& book, const RecipeLibrary& library, Day from, const Wording& wording,
                       Performer performer, QWidget* parent)
    : QDialog(parent), m_book(book), m_library(library), m_wording(wording),
      m_performer(std::move(performer)), m_asked(new QWidget(this)), m_from(new QDateEdit(this)),
      m_days(new QSpinBox(this)), m_sureness(new QSpinBox(this)), m_seconds(new QDoubleSpinBox(this)),
      m_again(new QCheckBox(tr("Batches planned but not struck may &move where that pays"), this)),
      m_plan(new QPushButton(tr("&Plan"), this)), m_stop(new QPushButton(tr("&Stop here"), this)),
      m_fold(new QPushButton(tr("S&ee the map"), this)),
      m_accept(new QPushButton(tr("&Accept what is ticked"), this)), m_state(new QLabel(this)),
      m_refusal(new TroubleLabel(QStringLiteral("planRefusal"), this)),
      m_list(new ProposalList(wording, this)) {
    setWindowTitle(tr("Plan the striking"));
    setObjectName(QStringLiteral("planDialog"));
    build(from);
    setRunning(false);
    m_accept->setEnabled(false);
    m_state->setText(tr("Targets that no batch covers yet are planned round all that stands. Nothing is in "
                        "the book until you accept it."));
}

PlanDialog::~PlanDialog() = default;

void PlanDialog::build(Day from) {
    m_from->setDate(qDate(from));
    m_from->setCalendarPopup(true);
    m_days->setRange(1, mostDays);
    m_days->setObjectName(QStringLiteral("planDays"));
    m_days->setValue(28);
    const auto suffix = [this](int days) { m_days->setSuffix(days == 1 ? tr(" day") : tr(" days")); };
    suffix(m_days->value());
    connect(m_days, &QSpinBox::valueChanged, this, suffix);
    m_sureness->setRange(50, 99);
    m_sureness->setValue(m_book.nursery().surenessPermille / 10);
    m_sureness->setSuffix(tr(" % sure to meet each target"));
    m_seconds->setRange(0.5, 600);
    m_seconds->setDecimals(1);
    m_seconds->setValue(2);
    m_seconds->setSuffix(tr(" s"));
    m_seconds->setObjectName(QStringLiteral("planSeconds"));
    auto* form = new QFormLayout(m_asked);
    form->setContentsMargins(0, 0, 0, 0);
    form->addRow(tr("&First day"), m_from);
    form->addRow(tr("Days on which &cuttings may be struck"), m_days);
    form->addRow(tr("How s&ure"), m_sureness);
    form->addRow(tr("&Time to search"), m_seconds);
    form->addRow({}, m_again);
    m_again->setObjectName(QStringLiteral("planAgain"));
    m_again->setToolTip(tr("Each move has to save more than %1. Batches that should have been struck before "
                           "the first day, and those without a place, are planned anew in any case.")
                            .arg(m_wording.locale().toString(season::usualChangeCost.units(), 'f', 2)));

    m_state->setWordWrap(true);
    m_state->setObjectName(QStringLiteral("planState"));
    m_list->setObjectName(QStringLiteral("planList"));
    connect(m_list, &ProposalList::ticksChanged, this, &PlanDialog::countChosen);

    m_plan->setObjectName(QStringLiteral("planStart"));
    m_plan->setDefault(true);
    m_stop->setObjectName(QStringLiteral("planStop"));
    m_accept->setObjectName(QStringLiteral("planAccept"));
    auto* close = new QPushButton(tr("&Close"), this);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_plan);
    buttons->addWidget(m_stop);
    buttons->addStretch(1);
    const auto addTicker = [&](const char* name, const QString& words, Qt::CheckState state) {
        auto* ticker = new QPushButton(words, this);
        ticker->setObjectName(QString::fromLatin1(name));
        buttons->addWidget(ticker);
        connect(ticker, &QPushButton::clicked, this, [this, state] { m_list->tickAll(state); });
    };
    m_fold->setObjectName(QStringLiteral("planFold"));
    m_fold->setCheckable(true);
    m_fold->setEnabled(false);
    m_fold->setAutoDefault(false);
    buttons->addWidget(m_fold);
    connect(m_fold, &QPushButton::toggled, this, &PlanDialog::fold);
    addTicker("planTickAll", tr("Tick a&ll"), Qt::Checked);
    addTicker("planTickNone", tr("Tick &none"), Qt::Unchecked);
    buttons->addWidget(m_accept);
    buttons->addWidget(close);
    connect(m_plan, &QPushButton::clicked, this, &PlanDialog::start);
    connect(m_stop, &QPushButton::clicked, this, [this] {
        if (m_planning) m_planning->stop();
    });
    connect(m_accept, &QPushButton::clicked, this, &PlanDialog::accept);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);

    auto* column = new QVBoxLayout(this);
    column->addWidget(m_asked);
    column->addWidget(m_state);
    column->addWidget(m_refusal);
    column->addWidget(m_list, 1);
    column->addLayout(buttons);
    resize(980, 640);
}

/// Leaves only what it comes to and its buttons, at the window's upper edge, so that the plan on the map
/// under it is in sight; and back.
void PlanDialog::fold(bool folded) {
    m_asked->setVisible(!folded);
    m_list->setVisible(!folded);
    m_fold->setText(folded ? tr("&Back to the list") : tr("S&ee the map"));
    if (!folded) return setGeometry(m_unfolded);
    m_unfolded = geometry();
    layout()->activate();
    resize(width(), minimumSizeHint().height());
    if (const QWidget* window = parentWidget()) move(window->window()->geometry().topLeft());
}

void PlanDialog::start() {
    season::PlanRequest request;
    request.from = dayOf(m_from->date());
    request.days = m_days->value();
    request.surenessPermille = m_sureness->value() * 10;
    if (m_again->isChecked()) request.changeCost = season::usualChangeCost;
    forgetProposal();
    m_state->setText(tr("Looking at targets, recipes, stocks and benches…"));
    setRunning(true);
    m_planning = std::make_unique<Planning>(m_book, m_library, request, m_seconds->value());
    connect(m_planning.get(), &Planning::progressed, this, &PlanDialog::showProgress);
    connect(m_planning.get(), &Planning::finished, this, &PlanDialog::showProposal);
    connect(m_planning.get(), &Planning::refused, this, &PlanDialog::showRefusal);
}

void PlanDialog::forgetProposal() {
    m_list->forget();
    m_refusal->tell(QString());
    m_accept->setEnabled(false);
    m_fold->setChecked(false);
    m_fold->setEnabled(false);
    Q_EMIT chosenChanged(std::nullopt);
}

void PlanDialog::setRunning(bool running) {
    for (QWidget* widget :
         {static_cast<QWidget*>(m_from), static_cast<QWidget*>(m_days), static_cast<QWidget*>(m_sureness),
          static_cast<QWidget*>(m_seconds), static_cast<QWidget*>(m_again), static_cast<QWidget*>(m_plan)})
        widget->setEnabled(!running);
    m_stop->setEnabled(running);
}

void PlanDialog::showProgress(const planner::Progress& progress) {
    m_state->setText(tr("%1 s: the best plan so far costs %2, none can cost less than %3")
                         .arg(m_wording.locale().toString(progress.seconds, 'f', 1),
                              costText(progress.best, m_wording), costText(progress.bound, m_wording)));
}

void PlanDialog::showRefusal(const QString& why) {
    setRunning(false);
    m_state->setText(tr("No plan keeps all that stands or is fixed: %1").arg(why));
}

void PlanDialog::showProposal(const season::Proposal& proposal) {
    setRunning(false);
    m_list->showProposal(m_planning->book(), proposal);
    countChosen();
    m_fold->setEnabled(!proposal.lines.empty());
    m_list->setFocus();
}

QString PlanDialog::nextWords() const {
    for (const season::TargetNeed& need : m_list->proposal().waiting)
        if (need.state == season::NeedState::Later)
            return u' ' +
                   tr("Next comes target %1: its wood (%2) is right from %3 to %4. With %3 as the first "
                      "day it can be planned already.")
                       .arg(text(m_book.get<Target>(need.target).name),
                            m_wording.wood(need.ahead->recipe.wood),
                            dayAndMonth(qDate(need.ahead->whole.first), m_wording.locale(), true),
                            dayAndMonth(qDate(need.ahead->whole.last), m_wording.locale(), true));
    return {};
}

void PlanDialog::countChosen() {
    const int ticked = m_list->ticked();
    const int kept = m_list->kept();
    m_refusal->tell(Outcome());
    std::optional<Command> chosen;
    if (ticked > 0) {
        chosen = command();
        // The book may be another one by now than it was planned on.
        HouseBook tried = m_book;
        if (const auto change = tried.perform(*chosen); !change) {
            m_refusal->tell(change.refusal());
            chosen.reset();
        }
    }
    m_accept->setEnabled(chosen.has_value());
    Q_EMIT chosenChanged(chosen);
    if (m_list->topLevelItemCount() == 0) {
        m_state->setText(
            kept > 0 ? tr("Nothing is better than what is planned. Batches that stay as they are: %1.")
                           .arg(m_wording.number(kept))
                     : tr("No target needs striking in these days: each is covered, or its "
                          "season comes at another time.") +
                           nextWords());
        return;
    }
    const season::Proposal& proposal = m_list->proposal();
    const QString quality = told(proposal.quality(), m_wording);
    QString words = (proposal.cuttingsWanted == 1 ? tr("%1 of %2 cutting has a place")
                                                  : tr("%1 of %2 cuttings have a place"))
                        .arg(m_wording.locale().toString(static_cast<qlonglong>(proposal.cuttingsPlaced)),
                             m_wording.locale().toString(static_cast<qlonglong>(proposal.cuttingsWanted)));
    if (!quality.isEmpty()) words += tr("; the plan is %1").arg(quality);
    if (kept > 0) words += tr("; planned before and kept: %1").arg(m_wording.number(kept));
    const int tickable = m_list->tickable();
    words += (tickable == 1 ? tr(". Ticked: %1 of %2 batch.") : tr(". Ticked: %1 of %2 batches."))
                 .arg(m_wording.number(ticked), m_wording.number(tickable));
    if (!m_list->alongWords().isEmpty()) words += u' ' + m_list->alongWords();
    m_state->setText(words);
}

void PlanDialog::accept() {
    if (!m_accept->isEnabled()) return;
    const Outcome refusal = m_performer(command());
    if (!refusal) return QDialog::accept();
    m_fold->setChecked(false);
    m_refusal->tell(refusal);
}

Command PlanDialog::command() const {
    return m_list->chosen().command();
}

} // namespace warmbench::ui
