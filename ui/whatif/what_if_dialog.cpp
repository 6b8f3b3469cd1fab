#include "ui/whatif/what_if_dialog.h"

#include "core/book/query.h"
#include "ui/form/labels.h"
#include "ui/form/table.h"
#include "ui/plan/planning.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <cmath>

namespace warmbench::ui {
namespace {

constexpr int mostHandsPercent = 400;
constexpr double mostWarmer = 15;
constexpr double usualSeconds = 3;
constexpr double leastSureness = 50;
constexpr double mostSureness = 99.9;

} // namespace

WhatIfDialog::WhatIfDialog(const HouseBook& book, const RecipeLibrary& library, Day from, int days,
                           const Wording& wording, QWidget* parent)
    : QDialog(parent), m_book(book), m_library(library), m_wording(wording), m_hands(new QSpinBox(this)),
      m_warmer(new QDoubleSpinBox(this)), m_sureness(new QDoubleSpinBox(this)), m_zone(new QComboBox(this)),
      m_setPoint(new QDoubleSpinBox(this)), m_watts(new QSpinBox(this)), m_seconds(new QDoubleSpinBox(this)),
      m_try(new QPushButton(tr("&Try it"), this)), m_stop(new QPushButton(tr("&Stop here"), this)),
      m_keep(new QPushButton(tr("&Keep what was tried"), this)), m_which(new QComboBox(this)),
      m_state(wrappedLabel(this)), m_refusal(new TroubleLabel(QStringLiteral("whatIfRefusal"), this)),
      m_table(makeTable(QStringLiteral("whatIfTable"), tr("What comes of each season"), {QString()}, this)) {
    setWindowTitle(tr("What if"));
    setObjectName(QStringLiteral("whatIfDialog"));
    m_request.from = from;
    m_request.days = days;
    // Batches that are planned and not struck are planned again with the rest, or trials would differ only in
    // what is new.
    m_request.changeCost = Money{0};
    build();
    tryOut({});
}

WhatIfDialog::~WhatIfDialog() = default;

QWidget* WhatIfDialog::variationFields() {
    auto* fields = new QWidget(this);
    auto* form = new QFormLayout(fields);
    form->setContentsMargins(0, 0, 0, 0);
    m_hands->setObjectName(QStringLiteral("whatIfHands"));
    m_hands->setRange(0, mostHandsPercent);
    m_hands->setValue(100);
    m_hands->setSuffix(tr(" % of every weekday's hands"));
    m_warmer->setObjectName(QStringLiteral("whatIfWarmer"));
    m_warmer->setRange(-mostWarmer, mostWarmer);
    m_warmer->setDecimals(1);
    m_warmer->setPrefix(QString());
    m_warmer->setSuffix(tr(" K warmer than now"));
    m_sureness->setObjectName(QStringLiteral("whatIfSureness"));
    m_sureness->setRange(leastSureness, mostSureness);
    m_sureness->setDecimals(1);
    m_sureness->setValue(m_book.nursery().surenessPermille / 10.0);
    m_sureness->setSuffix(tr(" % sure to meet each target"));
    m_zone->setObjectName(QStringLiteral("whatIfZone"));
    m_zone->addItem(tr("none"), QVariant::fromValue<qlonglong>(0));
    for (const auto& [id, zone] : m_book.all<Zone>())
        m_zone->addItem(text(houseOf(m_book, zone).name) + QStringLiteral(" · ") +
                            text(zoneTitle(m_book, id)),
                        QVariant::fromValue<qlonglong>(id.number));
    m_setPoint->setObjectName(QStringLiteral("whatIfSetPoint"));
    m_setPoint->setRange(5, 35);
    m_setPoint->setDecimals(1);
    m_setPoint->setValue(20);
    m_setPoint->setSuffix(tr(" °C"));
    m_watts->setObjectName(QStringLiteral("whatIfWatts"));
    m_watts->setRange(1, 100000);
    m_watts->setValue(500);
    m_watts->setSuffix(tr(" W"));
    m_seconds->setObjectName(QStringLiteral("whatIfSeconds"));
    m_seconds->setRange(0.2, 600);
    m_seconds->setDecimals(1);
    m_seconds->setValue(usualSeconds);
    m_seconds->setSuffix(tr(" s"));
    form->addRow(tr("&Hands"), m_hands);
    form->addRow(tr("H&ouses"), m_warmer);
    form->addRow(tr("S&ureness"), m_sureness);
    form->addRow(tr("Another &mat under"), m_zone);
    form->addRow(tr("   that holds"), m_setPoint);
    form->addRow(tr("   with"), m_watts);
    form->addRow(tr("T&ime to search"), m_seconds);
    return fields;
}

void WhatIfDialog::build() {
    auto* fields = variationFields();
    m_try->setObjectName(QStringLiteral("whatIfTry"));
    m_try->setDefault(true);
    m_stop->setObjectName(QStringLiteral("whatIfStop"));
    m_keep->setObjectName(QStringLiteral("whatIfKeep"));
    m_which->setObjectName(QStringLiteral("whatIfWhich"));
    m_which->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_table->header()->setStretchLastSection(false);
    m_which->setAccessibleName(tr("Which trial to keep"));
    m_state->setObjectName(QStringLiteral("whatIfState"));
    auto* away = new QPushButton(tr("Throw all &away"), this);
    away->setObjectName(QStringLiteral("whatIfAway"));
    auto* trying = new QHBoxLayout;
    trying->addWidget(m_try);
    trying->addWidget(m_stop);
    trying->addStretch(1);
    auto* side = new QVBoxLayout;
    side->addWidget(fields);
    side->addLayout(trying);
    side->addWidget(m_state);
    side->addWidget(m_refusal);
    side->addStretch(1);
    auto* both = new QHBoxLayout;
    both->addLayout(side, 2);
    both->addWidget(m_table, 3);
    auto* ending = new QHBoxLayout;
    ending->addStretch(1);
    ending->addWidget(m_which);
    ending->addWidget(m_keep);
    ending->addWidget(away);
    auto* all = new QVBoxLayout(this);
    all->addLayout(both, 1);
    all->addLayout(ending);
    resize(1080, 560);
    connect(m_try, &QPushButton::clicked, this, [this] { tryOut(chosen()); });
    connect(m_stop, &QPushButton::clicked, this, [this] {
        if (m_planning) m_planning->stop();
    });
    connect(m_keep, &QPushButton::clicked, this, &QDialog::accept);
    connect(away, &QPushButton::clicked, this, &QDialog::reject);
}

season::Variation WhatIfDialog::chosen() const {
    season::Variation variation;
    variation.handsPercent = m_hands->value();
    variation.warmer = Celsius::fromUnits(m_warmer->value());
    const int sureness = static_cast<int>(std::lround(10 * m_sureness->value()));
    if (sureness != m_book.nursery().surenessPermille) variation.surenessPermille = sureness;
    if (const qlonglong zone = m_zone->currentData().toLongLong(); zone != 0)
        variation.mat = season::OtherMat{
            {zone}, Celsius::fromUnits(m_setPoint->value()), Watts::fromUnits(m_watts->value())};
    return variation;
}

QString WhatIfDialog::nameOf(const season::Variation& variation) const {
    QStringList parts;
    if (variation.handsPercent != 100)
        parts += tr("%1 % hands").arg(m_wording.number(variation.handsPercent));
    if (variation.warmer != Celsius{})
        parts += tr("houses %1 K").arg(m_wording.locale().toString(variation.warmer.units(), 'f', 1));
    if (variation.surenessPermille)
        parts += tr("%1 % sure").arg(m_wording.locale().toString(*variation.surenessPermille / 10.0, 'g', 3));
    if (variation.mat)
        parts += tr("mat under %1 at %2")
                     .arg(text(zoneTitle(m_book, variation.mat->zone)),
                          m_wording.temperature(variation.mat->setPoint));
    return parts.isEmpty() ? tr("As it is") : parts.join(QStringLiteral(", "));
}

void WhatIfDialog::tryOut(const season::Variation& variation) {
    m_refusal->tell(QString());
    if (variation.changesNothing() && !m_trials.empty())
        return m_refusal->tell(tr("Nothing is changed yet: set other hands, houses, sureness or a mat."));
    auto copy = season::varied(m_book, variation);
    if (!copy) return m_refusal->tell(copy.refusal());
    season::PlanRequest request = m_request;
    request.surenessPermille = copy->nursery().surenessPermille;
    m_running = Trial{nameOf(variation), variation, {}, {}};
    m_state->setText(tr("Planning: %1").arg(m_running->name));
    setRunning(true);
    m_planning = std::make_unique<Planning>(std::move(*copy), m_library, request, m_seconds->value());
    connect(m_planning.get(), &Planning::finished, this, &WhatIfDialog::take);
    connect(m_planning.get(), &Planning::refused, this, [this](const QString& why) {
        setRunning(false);
        m_state->clear();
        m_refusal->tell(tr("No plan keeps all that stands or is fixed: %1").arg(why));
    });
}

void WhatIfDialog::take(const season::Proposal& proposal) {
    setRunning(false);
    m_state->clear();
    HouseBook planned = m_planning->book();
    if (auto change = planned.perform(proposal.command()); !change) return m_refusal->tell(change.refusal());
    season::PlanRequest request = m_request;
    request.surenessPermille = planned.nursery().surenessPermille;
    m_running->plan = proposal;
    m_running->figures = season::figuresOf(planned, m_library, request, proposal);
    m_trials.push_back(std::move(*m_running));
    m_running.reset();
    showTrials();
}

void WhatIfDialog::setRunning(bool running) {
    m_try->setEnabled(!running);
    m_stop->setEnabled(running);
    m_keep->setEnabled(!running && m_trials.size() > 1);
    m_which->setEnabled(!running && m_trials.size() > 1);
}

void WhatIfDialog::showTrials() {
    m_table->clear();
    QStringList heads{QString()};
    for (const Trial& trial : m_trials) heads += trial.name;
    m_table->setColumnCount(static_cast<int>(heads.size()));
    m_table->setHeaderLabels(heads);
    const auto count = [this](double number) { return m_wording.locale().toString(number, 'f', 0); };
    const auto tenths = [this](double number) { return m_wording.locale().toString(number, 'f', 1); };
    const auto row = [&](const QString& name, auto valueOf, auto wordsOf) {
        auto* item = new QTreeWidgetItem(m_table, {name});
        for (std::size_t i = 0; i < m_trials.size(); ++i) {
            const double value = valueOf(m_trials[i].figures);
            const double by = value - valueOf(m_trials.front().figures);
            QString words = wordsOf(value);
            // A difference that no figure shows is none.
            if (i > 0 && wordsOf(value) != wordsOf(valueOf(m_trials.front().figures)))
                words += QStringLiteral("  (") + (by > 0 ? QStringLiteral("+") : QStringLiteral("−")) +
                         wordsOf(std::abs(by)) + u')';
            const int column = static_cast<int>(i) + 1;
            item->setText(column, words);
            item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
        }
    };
    using Figures = season::SeasonFigures;
    row(
        tr("Plants expected, all targets"), [](const Figures& f) { return f.plants; }, count);
    row(
        tr("Targets that can be relied on"), [](const Figures& f) { return double(f.covered); }, count);
    row(
        tr("Days late, all targets"), [](const Figures& f) { return double(f.lateDays); }, count);
    row(
        tr("Batches"), [](const Figures& f) { return double(f.batches); }, count);
    row(
        tr("Cuttings to strike"), [](const Figures& f) { return double(f.cuttings); }, count);
    row(
        tr("Cuttings without a place"), [](const Figures& f) { return double(f.left); }, count);
    row(
        tr("Heat of the mats, kWh"), [](const Figures& f) { return f.kilowattHours; }, tenths);
    row(
        tr("Cost of the heat"), [](const Figures& f) { return f.heat.units(); },
        [this](double cost) { return m_wording.money(Money::fromUnits(cost), m_book.nursery().currency); });
    row(
        tr("Slot-days taken"), [](const Figures& f) { return double(f.slotDays); }, count);
    row(
        tr("Slots taken on the fullest day"), [](const Figures& f) { return double(f.fullestDay); }, count);
    for (int column = 0; column < m_table->columnCount(); ++column) m_table->resizeColumnToContents(column);
    for (int column = 1; column < m_table->columnCount(); ++column)
        m_table->headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    m_which->clear();
    for (std::size_t i = 1; i < m_trials.size(); ++i) m_which->addItem(m_trials[i].name);
    m_which->setCurrentIndex(m_which->count() - 1);
    m_state->setText(tr("Heat and slots are those of the days planned and %1 after them. Each trial is the "
                        "best plan found in its time, so small differences may be chance.")
                         .arg(m_wording.number(season::daysAfter)));
    setRunning(false);
}

Command WhatIfDialog::command() const {
    const Trial& trial = m_trials[static_cast<std::size_t>(m_which->currentIndex() + 1)];
    return season::keepCommand(m_book, trial.variation, trial.plan);
}

} // namespace warmbench::ui
