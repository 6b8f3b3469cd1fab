#include "ui/forecast/forecast_card.h"

#include "ui/form/labels.h"
#include "ui/words/phrase_words.h"

#include <QLabel>
#include <QPushButton>
#include <QTextDocumentFragment>
#include <QVBoxLayout>
#include <QtCharts/QAreaSeries>
#include <QtCharts/QCategoryAxis>
#include <QtCharts/QChartView>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>
#include <QtCharts/QValueAxis>

#include <cmath>
#include <set>

namespace warmbench::ui {
namespace {

constexpr int chartHeight = 190;
constexpr int marksAlong = 2;
constexpr double hundred = 100;

/// The batches that a batch's target rests on, the batch itself with them.
std::set<BatchId> sharing(const HouseBook& book, const Batch& batch) {
    std::set<BatchId> found{batch.id};
    if (batch.target)
        for (const auto& [id, other] : book.all<Batch>())
            if (other.target == batch.target) found.insert(id);
    return found;
}

} // namespace

ForecastCard::ForecastCard(QWidget* parent)
    : QWidget(parent), m_chart(new QChartView(new QChart, this)), m_words(wrappedLabel(this, "quiet")),
      m_trouble(wrappedLabel(this, "trouble")), m_replan(new QPushButton(tr("Plan again…"), this)) {
    setObjectName(QStringLiteral("forecastCard"));
    m_chart->setObjectName(QStringLiteral("forecastChart"));
    m_chart->setFixedHeight(chartHeight);
    m_chart->setFrameShape(QFrame::NoFrame);
    m_chart->setFocusPolicy(Qt::NoFocus);
    m_chart->setRenderHint(QPainter::Antialiasing);
    m_words->setObjectName(QStringLiteral("forecastWords"));
    m_trouble->setObjectName(QStringLiteral("forecastTrouble"));
    m_replan->setObjectName(QStringLiteral("forecastReplan"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 8, 0, 0);
    column->addWidget(m_chart);
    column->addWidget(m_words);
    column->addWidget(m_trouble);
    column->addWidget(m_replan, 0, Qt::AlignLeft);
    connect(m_replan, &QPushButton::clicked, this, &ForecastCard::replanWanted);
}

void ForecastCard::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_palette = &palette;
    m_type = type;
    m_wording = wording;
    m_words->setFont(type.quiet);
    m_trouble->setFont(type.quiet);
}

void ForecastCard::showBatch(const HouseBook& book, const RecipeLibrary& recipes, BatchId id, Day day) {
    const Batch* batch = book.find<Batch>(id);
    if (!batch || !m_palette) return hide();
    const forecast::BookForecast forecast(book, day, sharing(book, *batch));
    if (!forecast.find(id)) return hide();
    const forecast::BatchCurve curve = forecast::batchCurve(book, forecast, id);
    draw(curve, day);
    say(book, recipes, forecast, curve);
    show();
}

void ForecastCard::draw(const forecast::BatchCurve& curve, Day today) {
    QChart& chart = *m_chart->chart();
    chart.removeAllSeries();
    for (QAbstractAxis* axis : chart.axes()) {
        chart.removeAxis(axis);
        delete axis;
    }
    chart.setMargins({0, 0, 6, 0});
    chart.setBackgroundVisible(false);
    chart.legend()->hide();
    auto* low = new QLineSeries(&chart);
    auto* high = new QLineSeries(&chart);
    auto* expected = new QLineSeries;
    for (const auto& one : curve.days) {
        const double x = one.day.number();
        low->append(x, hundred * one.rooted.band.low);
        high->append(x, hundred * one.rooted.band.high);
        expected->append(x, hundred * one.rooted.expected);
    }
    auto* band = new QAreaSeries(high, low);
    QColor ground = m_palette->accent;
    ground.setAlphaF(0.22F);
    band->setBrush(ground);
    band->setPen(Qt::NoPen);
    expected->setPen(QPen(m_palette->accent, 2));
    auto* checks = new QScatterSeries;
    for (const auto& one : curve.checks)
        if (one.alive > 0) checks->append(one.day.number(), hundred * one.rooted / one.alive);
    checks->setColor(m_palette->ink);
    checks->setBorderColor(m_palette->panel);
    checks->setMarkerSize(8);
    const auto upright = [&](Day day, const QPen& pen) {
        auto* line = new QLineSeries;
        line->append(day.number(), 0);
        line->append(day.number(), hundred);
        line->setPen(pen);
        return line;
    };
    auto* days = new QCategoryAxis;
    auto* share = new QValueAxis;
    const Day first = curve.days.front().day;
    const Day last = curve.days.back().day;
    days->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    days->setStartValue(first.number());
    days->setRange(first.number(), last.number());
    for (int i = 0; i < marksAlong; ++i) {
        // Not at the very ends, where the words would be cut off.
        const Day mark = first + static_cast<int>((last - first) * (2 * i + 1) / (2.0 * marksAlong));
        days->append(m_wording.shortDate(mark), mark.number());
    }
    share->setRange(0, hundred);
    share->setTickCount(5);
    share->setLabelFormat(QStringLiteral("%.0f %%"));
    for (QAbstractAxis* axis : {static_cast<QAbstractAxis*>(days), static_cast<QAbstractAxis*>(share)}) {
        axis->setLabelsFont(m_type.quiet);
        axis->setLabelsBrush(m_palette->quietInk);
        axis->setGridLineColor(m_palette->rule);
        axis->setLinePenColor(m_palette->benchEdge);
    }
    chart.addAxis(days, Qt::AlignBottom);
    chart.addAxis(share, Qt::AlignLeft);
    QList<QAbstractSeries*> all{band, upright(today, QPen(m_palette->quietInk, 1))};
    if (curve.outlook.rooting && curve.outlook.assumedReady)
        all << upright(*curve.outlook.assumedReady, QPen(m_palette->quietInk, 1, Qt::DashLine));
    if (curve.outlook.rooting && curve.outlook.sureReady && *curve.outlook.sureReady <= last)
        all << upright(*curve.outlook.sureReady, QPen(m_palette->accent, 1, Qt::DotLine));
    all << expected << checks;
    for (QAbstractSeries* series : all) {
        chart.addSeries(series);
        series->attachAxis(days);
        series->attachAxis(share);
    }
}

/// The thermal time so far, and how much of it was measured.
QString ForecastCard::warmth(const forecast::BatchCurve& curve, Celsius base) const {
    constexpr double fahrenheitPerCelsius = 1.8;
    const long sum = std::lround(curve.degreeDays * (m_wording.isFahrenheit() ? fahrenheitPerCelsius : 1));
    const QString measured =
        curve.measuredDays == 0 ? tr("by set-points")
                                : (curve.daysSoFar == 1 ? tr("measured on %1 of %2 day, else by set-points")
                                                        : tr("measured on %1 of %2 days, else by set-points"))
                                      .arg(m_wording.number(std::min(curve.measuredDays, curve.daysSoFar)),
                                           m_wording.number(curve.daysSoFar));
    return (sum == 1 ? tr("%1 degree-day above %2 so far, %3") : tr("%1 degree-days above %2 so far, %3"))
        .arg(m_wording.number(static_cast<int>(sum)), m_wording.temperature(base), measured);
}

QString ForecastCard::strikeAgain(const season::TargetNeed& need) const {
    const QString missing = m_wording.number(need.missing);
    const QString cuttings = m_wording.number(static_cast<int>(need.way->cuttings));
    if (need.way->late)
        return (need.missing == 1 ? tr("Short by %1 plant. Strike %2 cuttings at once; they will be late.")
                                  : tr("Short by %1 plants. Strike %2 cuttings at once; they will be late."))
            .arg(missing, cuttings);
    return (need.missing == 1 ? tr("Short by %1 plant. There is time to strike %2 cuttings again, while the "
                                   "wood is right, until %3.")
                              : tr("Short by %1 plants. There is time to strike %2 cuttings again, while the "
                                   "wood is right, until %3."))
        .arg(missing, cuttings, m_wording.shortDate(need.way->whole.last));
}

void ForecastCard::say(const HouseBook& book, const RecipeLibrary& recipes,
                       const forecast::BookForecast& forecast, const forecast::BatchCurve& curve) {
    const forecast::BatchOutlook& one = curve.outlook;
    const Batch& batch = book.get<Batch>(one.batch);
    const auto whole = [&](double value) { return m_wording.number(static_cast<int>(std::lround(value))); };
    const auto percent = [&](double value) { return whole(hundred * value); };
    const auto dayWords = [&](const std::optional<Day>& day) {
        return day ? m_wording.shortDate(*day) : tr("no day within two years");
    };
    QStringList said;
    QStringList troubles;
    const auto tell = [&](const QString& what, const QString& words) {
        said << QStringLiteral("<p style=\"margin:4px 0\"><b>%1</b> %2</p>")
                    .arg(what.toHtmlEscaped(), words.toHtmlEscaped());
    };
    tell(tr("Rooted"),
         tr("about %1 % of those alive, nine times in ten %2 to %3 %; dots are checks")
             .arg(percent(one.rooted.expected), percent(one.rooted.band.low), percent(one.rooted.band.high)));
    if (one.rooting)
        tell(tr("Ready to wean"),
             tr("likely on %1, surely (%2 %) by %3, dotted%4")
                 .arg(dayWords(one.likelyReady), percent(forecast.sureness()), dayWords(one.sureReady),
                      one.assumedReady
                          ? tr("; the plan has %1, dashed").arg(m_wording.shortDate(*one.assumedReady))
                          : QString()));
    tell(tr("Plants in the end"), tr("about %1, nine times in ten %2 to %3; %4 can be counted on")
                                      .arg(whole(one.expected), whole(one.plants.low), whole(one.plants.high),
                                           m_wording.number(one.surePlants)));
    if (one.rooting) tell(tr("Warmth"), warmth(curve, batch.recipe.base.value));
    bool isShort = false;
    if (batch.target) {
        const Target& target = book.get<Target>(*batch.target);
        const forecast::TargetOutlook outlook = forecast.target(book, target.id);
        tell(tr("Target %1").arg(text(target.name)),
             tr("%1 of %2 can be counted on; the chance of all is %3 %")
                 .arg(m_wording.number(outlook.surePlants), m_wording.number(outlook.wanted),
                      percent(outlook.sureness)));
        const season::PlanRequest request{forecast.day(), 28, book.nursery().surenessPermille, {}};
        const season::TargetNeed need = season::targetNeed(book, recipes, request, forecast, target.id);
        isShort = need.missing > 0;
        if (isShort && need.state == season::NeedState::Now && need.way)
            troubles << strikeAgain(need);
        else if (isShort)
            troubles << (need.missing == 1 ? tr("Short by %1 plant: %2.") : tr("Short by %1 plants: %2."))
                            .arg(m_wording.number(need.missing))
                            .arg(told(need.why, m_wording));
        if (outlook.ready && *outlook.ready > target.due)
            troubles << tr("Potted on about %1, %2 after its date.")
                            .arg(m_wording.shortDate(*outlook.ready),
                                 m_wording.days(*outlook.ready - target.due));
    }
    const bool slips = one.slip() >= forecast::slipThatMatters;
    if (slips)
        troubles << tr("Likely %1 later than planned, and its slots stay taken as long. Plan again, so that "
                       "what is to come finds room.")
                        .arg(m_wording.days(one.slip()));
    m_words->setText(said.join(QString()));
    m_trouble->setText(troubles.join(u'\n'));
    m_trouble->setVisible(!troubles.isEmpty());
    m_replan->setVisible(slips || isShort);
    m_chart->setAccessibleName(tr("Share rooted by day"));
    m_chart->setAccessibleDescription(QTextDocumentFragment::fromHtml(m_words->text()).toPlainText());
}

} // namespace warmbench::ui
