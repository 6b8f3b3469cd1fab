#include "ui/climate/import_dialog.h"

#include "core/book/query.h"
#include "core/book/readings.h"
#include "core/exchange/table/table_text.h"
#include "ui/form/labels.h"
#include "ui/form/table.h"
#include "ui/words/phrase_words.h"

#include <QApplication>
#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTime>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace warmbench::ui {
namespace {

enum PreviewColumn : int { PreviewTime, PreviewCelsius, PreviewHumidity };

constexpr std::size_t linesShown = 200;
constexpr int halfHours = 30;
constexpr int furthestOffset = 14 * 60;

QComboBox* makeChoice(const char* name, QWidget* parent, const QStringList& words = {}) {
    auto* box = new QComboBox(parent);
    box->setObjectName(QLatin1String(name));
    box->addItems(words);
    return box;
}

QString momentText(std::int32_t minute, const Wording& wording) {
    const Day day = Day::fromNumber(minute / climate::minutesPerDay);
    const QTime time(minute % climate::minutesPerDay / 60, minute % 60);
    return wording.locale().toString(qDate(day), QLocale::ShortFormat) + u' ' +
           time.toString(QStringLiteral("HH:mm"));
}

std::size_t columnsOf(const exchange::LoggerShape& shape) {
    return std::max({shape.names.size(), shape.celsiusColumn + 1, shape.humidityColumn.value_or(0) + 1});
}

} // namespace

ImportDialog::ImportDialog(const HouseBook& book, const ReadingPlace& place, const Wording& wording,
                           Performer performer, QWidget* parent)
    : QDialog(parent), m_book(book), m_wording(wording), m_performer(std::move(performer)),
      m_fileName(wrappedLabel(this)), m_place(makeChoice("importPlace", this)),
      m_what(makeChoice("importWhat", this, {tr("root zone"), tr("air")})),
      m_offset(makeChoice("importOffset", this)),
      m_summer(makeChoice("importSummer", this,
                          {tr("never, as most loggers"), tr("with European summer time"),
                           tr("with American daylight saving time")})),
      m_order(makeChoice("importOrder", this,
                         {tr("as it fits"), tr("day first: 1.3.2027"), tr("month first: 3/1/2027")})),
      m_unit(makeChoice("importUnit", this, {tr("as it fits"), tr("°C"), tr("°F")})),
      m_delimiter(makeChoice("importDelimiter", this,
                             {tr("as it fits"), tr("comma"), tr("semicolon"), tr("tab"), tr("upright bar")})),
      m_decimals(
          makeChoice("importDecimals", this, {tr("as it fits"), tr("point: 21.5"), tr("comma: 21,5")})),
      m_column(makeChoice("importColumn", this)), m_humidity(makeChoice("importHumidity", this)),
      m_lines(makeTable(QStringLiteral("importLines"), tr("The first readings as they are understood"),
                        {tr("Time"), tr("Temperature"), tr("Humidity")}, this)),
      m_words(wrappedLabel(this)), m_keep(new QPushButton(this)),
      m_refusal(new TroubleLabel(QStringLiteral("importRefusal"), this)) {
    setWindowTitle(tr("Readings of a logger"));
    setObjectName(QStringLiteral("importDialog"));
    m_words->setObjectName(QStringLiteral("importWords"));
    for (const auto& [id, zone] : book.all<Zone>()) {
        m_placesOffered.push_back({id, std::nullopt});
        m_place->addItem(text(zoneTitle(book, id)));
    }
    for (const auto& [id, house] : book.all<House>()) {
        m_placesOffered.push_back({std::nullopt, id});
        m_place->addItem(text(house.name));
    }
    const auto found = std::find(m_placesOffered.begin(), m_placesOffered.end(), place);
    m_place->setCurrentIndex(
        found == m_placesOffered.end() ? 0 : static_cast<int>(found - m_placesOffered.begin()));
    for (int minutes = -furthestOffset; minutes <= furthestOffset; minutes += halfHours)
        m_offset->addItem(tr("UTC %1%2:%3")
                              .arg(minutes < 0 ? QStringLiteral("−") : QStringLiteral("+"))
                              .arg(std::abs(minutes) / 60)
                              .arg(std::abs(minutes) % 60, 2, 10, QLatin1Char('0')),
                          minutes);
    m_offset->setCurrentIndex(furthestOffset / halfHours);
    build();
    readAnew();
}

void ImportDialog::build() {
    m_keep->setObjectName(QStringLiteral("importKeep"));
    m_keep->setProperty("primary", true);
    auto* open = new QPushButton(tr("&Open a file…"), this);
    auto* cancel = new QPushButton(tr("Cancel"), this);
    auto* file = new QHBoxLayout;
    file->addWidget(open);
    file->addWidget(m_fileName, 1);

    auto* where = new QFormLayout;
    where->addRow(tr("&Where it was"), m_place);
    where->addRow(tr("W&hat it measured"), m_what);
    where->addRow(tr("&Temperature in"), m_column);
    where->addRow(tr("H&umidity in"), m_humidity);
    auto* how = new QFormLayout;
    how->addRow(tr("Its clock in w&inter"), m_offset);
    how->addRow(tr("Clock put &forward"), m_summer);
    how->addRow(tr("&Dates"), m_order);
    how->addRow(tr("U&nit"), m_unit);
    how->addRow(tr("&Cells apart by"), m_delimiter);
    how->addRow(tr("Deci&mals"), m_decimals);
    auto* forms = new QHBoxLayout;
    forms->addLayout(where, 1);
    forms->addSpacing(16);
    forms->addLayout(how, 1);

    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(m_keep);
    buttons->addWidget(cancel);
    auto* column = new QVBoxLayout(this);
    column->addLayout(file);
    column->addLayout(forms);
    column->addWidget(m_lines, 1);
    column->addWidget(m_words);
    column->addWidget(m_refusal);
    column->addLayout(buttons);
    resize(820, 620);

    connect(open, &QPushButton::clicked, this, &ImportDialog::chooseFile);
    for (QComboBox* box : {m_place, m_what, m_offset, m_summer, m_order, m_unit, m_column, m_humidity})
        connect(box, &QComboBox::currentIndexChanged, this, [this] {
            if (!m_quiet) readAnew();
        });
    for (QComboBox* box : {m_delimiter, m_decimals})
        connect(box, &QComboBox::currentIndexChanged, this, [this] {
            // Columns chosen of a file cut otherwise mean nothing any more.
            m_quiet = true;
            m_column->setCurrentIndex(0);
            m_humidity->setCurrentIndex(0);
            m_quiet = false;
            readAnew();
        });
    connect(m_keep, &QPushButton::clicked, this, &ImportDialog::accept);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
}

void ImportDialog::chooseFile() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Open a logger's file"), {},
                                                      tr("Readings (*.csv *.txt *.tsv);;All files (*)"));
    if (!path.isEmpty()) openFile(path);
}

void ImportDialog::openFile(const QString& path) {
    auto read = exchange::readTableText(path.toStdString());
    if (!read) return m_refusal->tell(Outcome(read.refusal()));
    m_name = QFileInfo(path).fileName().toStdString();
    m_text = std::move(*read);
    m_fileName->setText(text(m_name));
    m_file.reset();
    m_quiet = true;
    m_column->clear();
    m_humidity->clear();
    m_quiet = false;
    readAnew();
}

ReadingPlace ImportDialog::place() const {
    const int row = m_place->currentIndex();
    return row < 0 ? ReadingPlace{} : m_placesOffered[static_cast<std::size_t>(row)];
}

exchange::Clock ImportDialog::clock() const {
    return {m_offset->currentData().toInt(), static_cast<exchange::SummerTime>(m_summer->currentIndex())};
}

exchange::LoggerHints ImportDialog::hints() const {
    exchange::LoggerHints hints;
    if (m_column->currentIndex() > 0) hints.celsius = std::to_string(m_column->currentIndex());
    if (m_humidity->currentIndex() > 0) hints.humidity = std::to_string(m_humidity->currentIndex());
    if (m_unit->currentIndex() > 0) hints.fahrenheit = m_unit->currentIndex() == 2;
    if (m_order->currentIndex() > 0)
        hints.order =
            m_order->currentIndex() == 1 ? exchange::DateOrder::DayFirst : exchange::DateOrder::MonthFirst;
    constexpr std::string_view delimiters = ",;\t|";
    if (const int chosen = m_delimiter->currentIndex(); chosen > 0)
        hints.delimiter = delimiters[static_cast<std::size_t>(chosen - 1)];
    if (m_decimals->currentIndex() > 0) hints.decimalComma = m_decimals->currentIndex() == 2;
    return hints;
}

void ImportDialog::readAnew() {
    m_refusal->tell(QString());
    m_kept = {};
    m_file.reset();
    m_what->setEnabled(place().zone.has_value());
    if (!m_name.empty()) {
        QApplication::setOverrideCursor(Qt::WaitCursor);
        auto read = exchange::readLogger(m_name, m_text, clock(), hints());
        QApplication::restoreOverrideCursor();
        if (read)
            m_file = std::move(*read);
        else
            m_refusal->tell(Outcome(read.refusal()));
    }
    if (m_file) {
        const bool air = m_what->currentIndex() == 1 || !place().zone;
        m_kept =
            exchange::keptReadings(*m_file, clock().offsetMinutes, air ? Channel::Air : Channel::RootZone);
        showColumns();
    }
    showLines();
    showWords();
}

void ImportDialog::showColumns() {
    const std::size_t columns = columnsOf(m_file->shape);
    if (m_column->count() == static_cast<int>(columns) + 1 && m_offered == m_file->shape.names) return;
    m_quiet = true;
    m_offered = m_file->shape.names;
    m_column->clear();
    m_humidity->clear();
    m_column->addItem(tr("as it fits"));
    m_humidity->addItem(tr("as it fits"));
    for (std::size_t i = 0; i < columns; ++i) {
        const QString name = i < m_file->shape.names.size() && !m_file->shape.names[i].empty()
                                 ? text(m_file->shape.names[i])
                                 : tr("column %1").arg(i + 1);
        m_column->addItem(name);
        m_humidity->addItem(name);
    }
    m_quiet = false;
}

void ImportDialog::showLines() {
    m_lines->clear();
    if (m_kept.channels.empty()) return;
    const auto& warmth = m_kept.channels.front().readings;
    std::size_t damp = 0;
    for (std::size_t i = 0; i < std::min(warmth.size(), linesShown); ++i) {
        auto* item = new QTreeWidgetItem(m_lines);
        item->setText(PreviewTime, momentText(warmth[i].minute, m_wording));
        item->setText(PreviewCelsius, m_wording.temperature(Celsius::fromUnits(warmth[i].units())));
        if (m_kept.channels.size() < 2) continue;
        const auto& humidity = m_kept.channels[1].readings;
        while (damp < humidity.size() && humidity[damp].minute < warmth[i].minute) ++damp;
        if (damp < humidity.size() && humidity[damp].minute == warmth[i].minute)
            item->setText(PreviewHumidity,
                          tr("%1 %").arg(m_wording.locale().toString(humidity[damp].units(), 'f', 1)));
    }
    fitColumns(*m_lines);
}

void ImportDialog::showWords() {
    const auto count = [&](std::size_t number) { return m_wording.number(static_cast<int>(number)); };
    std::size_t fresh = 0;
    if (m_file) {
        const auto& readings = m_kept.channels.front().readings;
        QStringList said;
        said << tr("Read as: %1.").arg(told(m_file->shape.words(), m_wording));
        said << (readings.size() == 1 ? tr("%1 reading from %2 to %3, in the place's winter time.")
                                      : tr("%1 readings from %2 to %3, in the place's winter time."))
                    .arg(count(readings.size()), momentText(readings.front().minute, m_wording),
                         momentText(readings.back().minute, m_wording));
        said << tr("Doubles left out: %1, of which %2 have another temperature. Put in order: %3. Lines "
                   "without "
                   "a temperature: %4. Lines that can't be read: %5.")
                    .arg(count(m_file->duplicates), count(m_file->contradictions), count(m_file->outOfOrder),
                         count(m_file->missing), count(m_file->wrongLines));
        if (m_file->gaps > 0)
            said << tr("Gaps of more than 3 hours: %1, in all %2 h; set-points are taken there.")
                        .arg(count(m_file->gaps), count(static_cast<std::size_t>(m_file->gapHours)));
        ReadingsToKeep sum;
        for (const ChannelReadings& one : m_kept.channels) {
            const ReadingsToKeep found = toKeep(m_book, place(), one);
            fresh += found.fresh;
            sum.same += found.same;
            sum.another += found.another;
        }
        if (sum.same + sum.another + m_kept.sameMinute > 0)
            said << (sum.another == 1
                         ? tr("The book has %1 of them already, and for %2 minute another value, "
                              "which stays. A minute has one reading, the first; %3 more are "
                              "left out for that.")
                         : tr("The book has %1 of them already, and for %2 minutes another "
                              "value, which stays. A minute has one reading, the first; %3 more "
                              "are left out for that."))
                        .arg(count(sum.same), count(sum.another), count(m_kept.sameMinute));
        for (const std::string& wrong : m_file->wrong) said << told(wrong, m_wording);
        m_words->setText(said.join(u'\n'));
    } else {
        m_words->setText(m_name.empty() ? tr("Open a file that a logger has written. Nothing is in the book "
                                             "until you say so.")
                                        : QString());
    }
    m_keep->setText(fresh > 0 ? tr("&Keep these readings (%1)").arg(count(fresh))
                              : tr("&Keep these readings"));
    m_keep->setEnabled(fresh > 0);
}

void ImportDialog::accept() {
    if (auto refusal = m_performer(Command{KeepReadings{place(), m_kept.channels}}))
        return m_refusal->tell(refusal);
    QDialog::accept();
}

} // namespace warmbench::ui
