#include "ui/climate/climate_place.h"

#include "core/book/query.h"
#include "core/book/readings.h"
#include "ui/climate/climate_chart.h"
#include "ui/climate/heat_panel.h"
#include "ui/climate/import_dialog.h"
#include "ui/climate/time_ticks.h"
#include "ui/form/labels.h"
#include "ui/form/table.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QTime>
#include <QTimer>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace warmbench::ui {
namespace {

enum WarningColumn : int {
    WarningWhere,
    WarningWhat,
    WarningFrom,
    WarningHours,
    WarningExtreme,
    WarningWhose
};

constexpr int restMs = 150;
constexpr int month = 30;

QString hourText(double hour, const Wording& wording) {
    const Day day = Day::fromNumber(static_cast<int>(std::floor(hour / 24)));
    const int minutes = static_cast<int>(std::lround((hour - 24.0 * day.number()) * 60));
    return wording.shortDate(day) + u' ' +
           QTime(minutes / 60 % 24, minutes % 60).toString(QStringLiteral("HH:mm"));
}

} // namespace

ClimatePlace::ClimatePlace(QWidget* parent)
    : Place(QStringLiteral("climate"), tr("Climate"), parent), m_tabs(new QTabWidget(this)),
      m_places(new QComboBox(this)), m_deficit(new QCheckBox(tr("Vapour pressure &deficit"), this)),
      m_chart(new ClimateChart(this)), m_words(wrappedLabel(this, "quiet")),
      m_warningTitle(wrappedLabel(this)),
      m_warningList(makeTable(QStringLiteral("climateWarnings"), tr("Where the root zone left the range"),
                              {tr("Where"), tr("Root zone"), tr("From"), tr("For", "how long"),
                               tr("As far as"), tr("Whose cuttings")},
                              this)),
      m_remove(new QPushButton(tr("Remo&ve the readings of the days shown"), this)),
      m_refusal(new TroubleLabel(QStringLiteral("climateRefusal"), this)), m_heat(new HeatPanel(this)),
      m_soon(new QTimer(this)) {
    m_places->setObjectName(QStringLiteral("climatePlaceChoice"));
    m_places->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_places->setAccessibleName(tr("Zone or house"));
    m_deficit->setObjectName(QStringLiteral("climateDeficit"));
    m_remove->setObjectName(QStringLiteral("climateRemove"));
    m_words->setObjectName(QStringLiteral("climateWords"));
    m_tabs->setObjectName(QStringLiteral("climateTabs"));
    m_tabs->setDocumentMode(true); // with no frame for its pages to stand against
    m_tabs->addTab(makeMeasured(), tr("&Measured"));
    m_tabs->addTab(m_heat, tr("&Heat and its cost"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 12);
    column->addWidget(m_tabs);
    setFocusProxy(m_places);
    m_soon->setSingleShot(true);
    m_soon->setInterval(restMs);
    connect(m_soon, &QTimer::timeout, this, &ClimatePlace::listWarnings);
    connect(m_chart, &ClimateChart::windowChanged, m_soon, qOverload<>(&QTimer::start));
    connect(m_places, &QComboBox::currentIndexChanged, this, [this] {
        m_shown.reset();
        showPlace();
    });
    connect(m_deficit, &QCheckBox::toggled, m_chart, &ClimateChart::setDeficitShown);
    connect(m_warningList, &QTreeWidget::itemActivated, this, &ClimatePlace::goToWarning);
    connect(m_remove, &QPushButton::clicked, this, &ClimatePlace::removeShown);
    connect(m_heat, &HeatPanel::runWanted, this,
            [this](const SetMatRuns& runs) { m_heat->tell(perform(Command{runs})); });
}

QWidget* ClimatePlace::makeMeasured() {
    auto* page = new QWidget(m_tabs);
    auto* import = new QPushButton(tr("&Read a logger's file…"), page);
    import->setObjectName(QStringLiteral("climateImport"));
    import->setProperty("primary", true);
    connect(import, &QPushButton::clicked, this, &ClimatePlace::importFile);
    auto* top = new QHBoxLayout;
    top->addWidget(m_places);
    const std::pair<QString, int> spans[] = {
        {tr("A week"), 7}, {tr("A month"), month}, {tr("A year"), 365}, {tr("All"), 0}};
    for (const auto& [words, days] : spans) {
        auto* button = new QPushButton(words, page);
        button->setObjectName(QStringLiteral("climateDays%1").arg(days));
        connect(button, &QPushButton::clicked, this, [this, count = days] { showDays(count); });
        top->addWidget(button);
    }
    top->addWidget(m_deficit);
    top->addStretch(1);
    top->addWidget(import);
    auto* bottom = new QHBoxLayout;
    bottom->addWidget(m_words, 1);
    bottom->addWidget(m_remove);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 8, 0, 0);
    column->addLayout(top);
    column->addWidget(m_chart, 3);
    column->addLayout(bottom);
    column->addWidget(m_refusal);
    column->addWidget(m_warningTitle);
    column->addWidget(m_warningList, 2);
    return page;
}

void ClimatePlace::showBook(const BookView& view) {
    m_book = &view.book;
    m_day = view.day;
    m_chart->setLook(look(), type(), wording());
    m_heat->setLook(look(), type(), wording());
    m_heat->showBook(view.book, view.day);
    m_refusal->tell(QString());
    offerPlaces();
    showPlace();
}

void ClimatePlace::offerPlaces() {
    const auto chosen = current();
    const std::vector<ReadingPlace> withReadings = placesWithReadings(*m_book);
    m_offered = withReadings;
    for (const auto& [id, zone] : m_book->all<Zone>())
        if (const ReadingPlace place{id, std::nullopt};
            std::find(withReadings.begin(), withReadings.end(), place) == withReadings.end())
            m_offered.push_back(place);
    const QSignalBlocker quiet(m_places);
    m_places->clear();
    for (std::size_t i = 0; i < m_offered.size(); ++i) {
        const ReadingPlace& place = m_offered[i];
        const QString name =
            place.zone ? text(zoneTitle(*m_book, *place.zone)) : text(m_book->get<House>(*place.house).name);
        m_places->addItem(i < withReadings.size() ? name : tr("%1 (no readings)").arg(name));
    }
    const auto found = chosen ? std::find(m_offered.begin(), m_offered.end(), *chosen) : m_offered.end();
    m_places->setCurrentIndex(m_offered.empty()          ? -1
                              : found == m_offered.end() ? 0
                                                         : static_cast<int>(found - m_offered.begin()));
}

std::optional<ReadingPlace> ClimatePlace::current() const {
    const int row = m_places->currentIndex();
    if (row < 0 || row >= static_cast<int>(m_offered.size())) return std::nullopt;
    return m_offered[static_cast<std::size_t>(row)];
}

void ClimatePlace::showPlace() {
    const auto place = current();
    const auto days = place ? forecast::readingDays(*m_book, *place) : std::nullopt;
    const bool another = m_shown != place;
    m_shown = place;
    const Day first = days ? days->first : m_day - month;
    const Day end = days ? days->last + 1 : m_day + 1;
    m_remove->setEnabled(days.has_value());
    if (place) m_chart->setClimate(forecast::climateOf(*m_book, *place, first, end), first, end);
    if (another)
        m_chart->setWindow(std::max(first, end - month).number() * minutesADay, end.number() * minutesADay);
    m_words->setText(
        days ? tr("Readings from %1 to %2. Wheel or + and − zoom, dragging or the arrows move, 0 shows all.")
                   .arg(wording().longDate(days->first), wording().longDate(days->last))
             : tr("No readings are kept here yet. What is expected of the mat is drawn."));
    listWarnings();
}

void ClimatePlace::showDays(int days) {
    const auto place = current();
    const auto kept = place ? forecast::readingDays(*m_book, *place) : std::nullopt;
    const double end = kept ? (kept->last + 1).number() * minutesADay : (m_day + 1).number() * minutesADay;
    const double begins = days > 0 ? end - days * minutesADay
                          : kept   ? kept->first.number() * minutesADay
                                   : end - month * minutesADay;
    m_chart->setWindow(begins, end);
}

std::pair<Day, Day> ClimatePlace::daysShown() const {
    return {Day::fromNumber(static_cast<int>(std::floor(m_chart->windowFrom() / minutesADay))),
            Day::fromNumber(static_cast<int>(std::ceil(m_chart->windowTo() / minutesADay)))};
}

void ClimatePlace::listWarnings() {
    m_soon->stop();
    m_warningList->clear();
    if (!m_book) return;
    const auto [from, to] = daysShown();
    m_warnings = forecast::rangeWarnings(*m_book, from, to);
    for (const forecast::RangeWarning& one : m_warnings) {
        auto* item = new QTreeWidgetItem(m_warningList);
        item->setText(WarningWhere, text(zoneTitle(*m_book, one.zone)));
        item->setText(WarningWhat, one.below ? tr("too cold") : tr("too warm"));
        item->setText(WarningFrom, hourText(one.from, wording()));
        const double hours = std::round(one.hours * 10) / 10;
        item->setText(WarningHours,
                      tr("%1 h").arg(wording().locale().toString(hours, 'f', hours < 10 ? 1 : 0)));
        item->setText(WarningExtreme, wording().temperature(Celsius::fromUnits(one.extreme)));
        QStringList whose;
        for (const BatchId id : one.batches) {
            const Batch& batch = m_book->get<Batch>(id);
            whose << text(batch.code) + u' ' + text(m_book->get<Taxon>(batch.taxon).name);
        }
        item->setText(WarningWhose, whose.join(QStringLiteral(", ")));
        item->setToolTip(WarningWhose, item->text(WarningWhose));
        for (const int column : {WarningHours, WarningExtreme})
            item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
    fitColumns(*m_warningList);
    m_warningTitle->setText(m_warnings.empty()
                                ? tr("No root zone left the range of what roots in it, on the days shown.")
                                : tr("<b>Outside the range of what roots there</b>, on the days shown, in "
                                     "all zones: %1. Enter shows one.")
                                      .arg(wording().number(static_cast<int>(m_warnings.size()))));
}

void ClimatePlace::goToWarning() {
    const int row = m_warningList->indexOfTopLevelItem(m_warningList->currentItem());
    if (row < 0 || row >= static_cast<int>(m_warnings.size())) return;
    const forecast::RangeWarning one = m_warnings[static_cast<std::size_t>(row)];
    const auto found = std::find(m_offered.begin(), m_offered.end(), ReadingPlace{one.zone, std::nullopt});
    if (found == m_offered.end()) return;
    m_places->setCurrentIndex(static_cast<int>(found - m_offered.begin()));
    constexpr double hoursRound = 24;
    m_chart->setWindow((one.from - hoursRound) * 60, (one.to + hoursRound) * 60);
}

void ClimatePlace::importFile() {
    ImportDialog(
        *m_book, current().value_or(ReadingPlace{}), wording(),
        [this](const Command& command) { return perform(command); }, this)
        .exec();
}

void ClimatePlace::removeShown() {
    const auto place = current();
    if (!place) return;
    const auto [from, to] = daysShown();
    m_refusal->tell(perform(Command{RemoveReadings{*place, std::nullopt, from, to}}));
}

} // namespace warmbench::ui
