#include "ui/climate/heat_panel.h"

#include "core/book/query.h"
#include "core/forecast/mat_heat.h"
#include "ui/form/labels.h"
#include "ui/form/table.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <QtCharts/QChartView>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>
#include <QtCharts/QValueAxis>

#include <algorithm>

namespace warmbench::ui {
namespace {

enum HeatColumn : int { HeatSetPoint, HeatWatts, HeatReady, HeatSooner, HeatCost, HeatRange };

constexpr double dotSize = 10;

} // namespace

HeatPanel::HeatPanel(QWidget* parent)
    : QWidget(parent), m_batch(new QComboBox(this)), m_words(wrappedLabel(this)),
      m_table(makeTable(QStringLiteral("heatTable"), tr("What each set-point costs and brings"),
                        {tr("Mat"), tr("Heat lost now"), tr("Ready after"), tr("Sooner than off"),
                         tr("Cost until then"), tr("Recipe's range")},
                        this)),
      m_chart(new QChartView(new QChart, this)), m_run(new QPushButton(tr("&Run the mat at this"), this)),
      m_refusal(new TroubleLabel(QStringLiteral("heatRefusal"), this)) {
    m_batch->setObjectName(QStringLiteral("heatBatch"));
    m_batch->setAccessibleName(tr("The batch on the mat"));
    m_chart->setObjectName(QStringLiteral("heatChart"));
    m_chart->setAccessibleName(tr("Cost against days until it is ready"));
    m_chart->setMinimumSize(300, 200);
    m_run->setObjectName(QStringLiteral("heatRun"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_run);
    buttons->addStretch(1);
    auto* left = new QVBoxLayout;
    left->addWidget(m_batch);
    left->addWidget(m_words);
    left->addWidget(m_table, 1);
    left->addWidget(m_refusal);
    left->addLayout(buttons);
    auto* both = new QHBoxLayout(this);
    both->setContentsMargins(0, 8, 0, 0);
    both->addLayout(left, 3);
    both->addWidget(m_chart, 2);
    connect(m_batch, &QComboBox::currentIndexChanged, this, &HeatPanel::showBatch);
    connect(m_table, &QTreeWidget::currentItemChanged, this, [this] {
        m_refusal->tell(QString());
        drawCurve();
    });
    connect(m_table, &QTreeWidget::itemActivated, this, &HeatPanel::run);
    connect(m_run, &QPushButton::clicked, this, &HeatPanel::run);
}

void HeatPanel::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_palette = &palette;
    m_type = &type;
    m_wording = wording;
}

void HeatPanel::tell(const Outcome& refusal) {
    m_refusal->tell(refusal);
}

const Stay* HeatPanel::current() const {
    const int row = m_batch->currentIndex();
    if (!m_book || row < 0 || row >= static_cast<int>(m_stays.size())) return nullptr;
    return m_book->find<Stay>(m_stays[static_cast<std::size_t>(row)]);
}

void HeatPanel::showBook(const HouseBook& book, Day day) {
    const Stay* before = current();
    const StayId chosen = before ? before->id : StayId{};
    m_book = &book;
    m_day = day;
    const QSignalBlocker quiet(m_batch);
    m_batch->clear();
    m_stays.clear();
    for (const auto& [id, zone] : book.all<Zone>()) {
        if (!zone.matOn(day)) continue;
        for (const StayId stayId : book.staysMeeting(id, day, day + 1)) {
            const Stay& stay = book.get<Stay>(stayId);
            if (stay.stage != Stage::Rooting) continue;
            const Batch& batch = book.get<Batch>(stay.batch);
            m_stays.push_back(stayId);
            m_batch->addItem(text(zoneTitle(book, id)) + QStringLiteral(" · ") + text(batch.code) +
                             QStringLiteral(" · ") + text(book.get<Taxon>(batch.taxon).name));
        }
    }
    const auto found = std::find(m_stays.begin(), m_stays.end(), chosen);
    m_batch->setCurrentIndex(found == m_stays.end() ? 0 : static_cast<int>(found - m_stays.begin()));
    showBatch();
}

void HeatPanel::showBatch() {
    m_table->clear();
    m_choices.clear();
    const Stay* stay = current();
    m_run->setEnabled(stay != nullptr);
    if (!stay) {
        m_words->setText(tr("Nothing roots over a mat on this day."));
        return drawCurve();
    }
    const Batch& batch = m_book->get<Batch>(stay->batch);
    const Zone& zone = m_book->get<Zone>(stay->zone);
    const Celsius air = onDay(houseOf(*m_book, zone).air, m_day);
    const auto running = setPointOn(*m_book, zone.id, m_day);
    m_choices = season::heatChoices(*m_book, zone, batch, m_day);
    m_words->setText(
        tr("Struck on %1. Days and costs are those still to come, of the whole mat, until nine of ten of "
           "those "
           "that root have; the house's air is taken as %2 today. The mat is %3.")
            .arg(m_wording.shortDate(batch.strikeDay), m_wording.temperature(air),
                 running ? tr("at %1 now").arg(m_wording.temperature(*running)) : tr("off now")));
    const auto off = std::find_if(m_choices.begin(), m_choices.end(),
                                  [](const season::HeatChoice& one) { return !one.setPoint; });
    for (const season::HeatChoice& one : m_choices) {
        auto* item = new QTreeWidgetItem(m_table);
        item->setText(HeatSetPoint, one.setPoint ? m_wording.temperature(*one.setPoint) : tr("off"));
        const double watts =
            one.setPoint ? forecast::matLoadIn(*m_book, zone, *one.setPoint, air).wattsNeeded : 0;
        item->setText(HeatWatts, tr("%1 W").arg(m_wording.locale().toString(watts, 'f', 0)));
        item->setText(HeatReady, one.days ? m_wording.days(*one.days) : tr("not in a year"));
        if (one.setPoint && one.days && off != m_choices.end())
            item->setText(HeatSooner,
                          off->days ? m_wording.days(*off->days - *one.days) : tr("more than a year"));
        item->setText(HeatCost, m_wording.money(one.cost, m_book->nursery().currency));
        item->setText(HeatRange, one.suits ? tr("within") : tr("outside"));
        for (const int column : {HeatWatts, HeatReady, HeatSooner, HeatCost})
            item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
        if (one.setPoint == running) m_table->setCurrentItem(item);
    }
    fitColumns(*m_table);
    drawCurve();
}

void HeatPanel::drawCurve() {
    QChart& chart = *m_chart->chart();
    chart.removeAllSeries();
    for (QAbstractAxis* axis : chart.axes()) {
        chart.removeAxis(axis);
        delete axis;
    }
    if (!m_palette) return;
    chart.setBackgroundBrush(m_palette->panel);
    chart.setBackgroundRoundness(0);
    chart.legend()->hide();
    auto* line = new QLineSeries;
    auto* dots = new QScatterSeries;
    auto* chosen = new QScatterSeries;
    const int row = m_table->indexOfTopLevelItem(m_table->currentItem());
    double mostDays = 0;
    double mostCost = 0;
    for (std::size_t i = 0; i < m_choices.size(); ++i) {
        const season::HeatChoice& one = m_choices[i];
        if (!one.days) continue;
        const QPointF point(*one.days, one.cost.units());
        line->append(point);
        (static_cast<int>(i) == row ? chosen : dots)->append(point);
        mostDays = std::max(mostDays, point.x());
        mostCost = std::max(mostCost, point.y());
    }
    line->setPen(QPen(m_palette->accent, 2));
    dots->setColor(m_palette->accent);
    dots->setBorderColor(m_palette->panel);
    dots->setMarkerSize(dotSize);
    chosen->setMarkerShape(QScatterSeries::MarkerShapeRectangle);
    chosen->setColor(m_palette->ink);
    chosen->setBorderColor(m_palette->panel);
    chosen->setMarkerSize(dotSize + 4);
    auto* days = new QValueAxis;
    auto* cost = new QValueAxis;
    days->setTitleText(tr("days until it is ready"));
    cost->setTitleText(tr("cost, %1").arg(text(m_book ? m_book->nursery().currency : std::string())));
    days->setRange(0, std::max(10.0, mostDays * 1.1));
    cost->setRange(0, std::max(1.0, mostCost * 1.15));
    days->setLabelFormat(QStringLiteral("%.0f"));
    cost->setLabelFormat(QStringLiteral("%.0f"));
    for (QValueAxis* axis : {days, cost}) {
        axis->setLabelsFont(m_type->quiet);
        axis->setTitleFont(m_type->quiet);
        axis->setLabelsBrush(m_palette->quietInk);
        axis->setTitleBrush(m_palette->quietInk);
        axis->setGridLineColor(m_palette->rule);
        axis->setLinePenColor(m_palette->benchEdge);
        axis->setTickCount(5);
        axis->applyNiceNumbers();
    }
    chart.addAxis(days, Qt::AlignBottom);
    chart.addAxis(cost, Qt::AlignLeft);
    for (QXYSeries* series :
         {static_cast<QXYSeries*>(line), static_cast<QXYSeries*>(dots), static_cast<QXYSeries*>(chosen)}) {
        chart.addSeries(series);
        series->attachAxis(days);
        series->attachAxis(cost);
    }
}

void HeatPanel::run() {
    const Stay* stay = current();
    const int row = m_table->indexOfTopLevelItem(m_table->currentItem());
    if (!stay || row < 0 || row >= static_cast<int>(m_choices.size())) return;
    SetMatRuns runs{stay->zone, m_day, std::max(stay->to, m_day + 1), {}};
    if (const auto setPoint = m_choices[static_cast<std::size_t>(row)].setPoint)
        runs.runs.push_back({{}, stay->zone, runs.from, runs.to, *setPoint});
    Q_EMIT runWanted(runs);
}

} // namespace warmbench::ui
