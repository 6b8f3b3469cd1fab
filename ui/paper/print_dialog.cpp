#include "ui/paper/print_dialog.h"

#include "ui/paper/day_sheet.h"
#include "ui/paper/label_paper.h"
#include "ui/paper/month_sheet.h"
#include "ui/paper/round_sheet.h"
#include "ui/paper/season_sheet.h"
#include "ui/paper/strike_list.h"
#include "ui/words/phrase_words.h"

#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QLabel>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>
#include <QVBoxLayout>

namespace warmbench::ui {
namespace {

enum PaperKind : int { StrikeListPaper, LabelsPaper, RoundPaper, DayPaper, SeasonPaper, MonthPaper };

constexpr int mostDaysPrinted = 366;
constexpr int labelsAlong = 100;
constexpr int daysOfLists = 28;
constexpr int daysOfSeason = 365;
constexpr int mostDaysOfMonth = 84;

/// Two fields on one line of a form, such as a width and a height.
QWidget* pairOf(QWidget* first, QWidget* second) {
    auto* both = new QWidget;
    auto* row = new QHBoxLayout(both);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(first);
    row->addWidget(new QLabel(QStringLiteral("×")));
    row->addWidget(second);
    row->addStretch(1);
    return both;
}

} // namespace

PrintDialog::PrintDialog(const HouseBook& book, const forecast::BookForecast& forecast, Day day,
                         const Wording& wording, QWidget* parent)
    : QDialog(parent), m_book(book), m_forecast(forecast), m_wording(wording), m_kind(new QComboBox(this)),
      m_from(new QDateEdit(this)), m_days(new QSpinBox(this)), m_labelFields(new QWidget(this)),
      m_pageWidth(lengthField(QStringLiteral("pageWidth"), 210)),
      m_pageHeight(lengthField(QStringLiteral("pageHeight"), 297)),
      m_labelWidth(lengthField(QStringLiteral("labelWidth"), 70)),
      m_labelHeight(lengthField(QStringLiteral("labelHeight"), 36)), m_columns(new QSpinBox(this)),
      m_rows(new QSpinBox(this)), m_left(lengthField(QStringLiteral("labelLeft"), 0)),
      m_top(lengthField(QStringLiteral("labelTop"), 4.5)),
      m_gapAcross(lengthField(QStringLiteral("gapAcross"), 0)),
      m_gapDown(lengthField(QStringLiteral("gapDown"), 0)), m_used(new QSpinBox(this)),
      m_trouble(new QLabel(this)), m_print(new QPushButton(tr("&Print…"), this)),
      m_save(new QPushButton(tr("&Save as PDF…"), this)),
      m_printer(std::make_unique<QPrinter>(QPrinter::HighResolution)),
      m_preview(new QPrintPreviewWidget(m_printer.get(), this)) {
    setWindowTitle(tr("Print"));
    setObjectName(QStringLiteral("printDialog"));
    build(day);
    readKept();
    refresh();
}

PrintDialog::~PrintDialog() = default;

void PrintDialog::choosePaperOf(const QString& place) {
    for (const auto& [name, kind] : {std::pair{"round", RoundPaper}, std::pair{"dayWork", DayPaper},
                                     std::pair{"month", MonthPaper}, std::pair{"results", SeasonPaper}})
        if (place == QLatin1String(name)) m_kind->setCurrentIndex(kind);
}

void PrintDialog::chooseLabelsOf(BatchId batch) {
    m_only = batch;
    setWindowTitle(tr("Labels of batch %1").arg(text(m_book.get<Batch>(batch).code)));
    m_kind->setCurrentIndex(LabelsPaper);
    m_kind->setEnabled(false);
    refresh();
}

QDoubleSpinBox* PrintDialog::lengthField(const QString& name, double millimetres) {
    auto* field = new QDoubleSpinBox(this);
    field->setObjectName(name);
    field->setRange(0, 2000);
    field->setDecimals(1);
    field->setSuffix(tr(" mm"));
    field->setValue(millimetres);
    return field;
}

void PrintDialog::build(Day day) {
    m_kind->setObjectName(QStringLiteral("printKind"));
    m_kind->addItems({tr("Strike list"), tr("Labels, one a container"), tr("Round sheet"),
                      tr("The day's page"), tr("Season's report"), tr("Month plan")});
    m_from->setObjectName(QStringLiteral("printFrom"));
    m_from->setDate(qDate(day));
    m_from->setCalendarPopup(true);
    m_days->setRange(1, mostDaysPrinted);
    m_days->setValue(daysOfLists);
    const auto suffix = [this](int days) { m_days->setSuffix(days == 1 ? tr(" day") : tr(" days")); };
    suffix(m_days->value());
    connect(m_days, &QSpinBox::valueChanged, this, suffix);
    m_days->setObjectName(QStringLiteral("printDays"));
    m_columns->setRange(1, labelsAlong);
    m_columns->setValue(3);
    m_columns->setObjectName(QStringLiteral("labelColumns"));
    m_rows->setRange(1, labelsAlong);
    m_rows->setValue(8);
    m_rows->setObjectName(QStringLiteral("labelRows"));
    m_used->setRange(0, labelsAlong * labelsAlong);
    m_used->setObjectName(QStringLiteral("labelsUsed"));

    auto* what = new QFormLayout;
    what->addRow(tr("&What"), m_kind);
    what->addRow(tr("&From"), m_from);
    what->addRow(tr("F&or"), m_days);
    auto* labels = new QFormLayout(m_labelFields);
    labels->setContentsMargins(0, 0, 0, 0);
    labels->addRow(tr("Sheet or roll"), pairOf(m_pageWidth, m_pageHeight));
    labels->addRow(tr("One label"), pairOf(m_labelWidth, m_labelHeight));
    labels->addRow(tr("Across × down"), pairOf(m_columns, m_rows));
    labels->addRow(tr("Left × top margin"), pairOf(m_left, m_top));
    labels->addRow(tr("Gaps"), pairOf(m_gapAcross, m_gapDown));
    labels->addRow(tr("Used on the first sheet"), m_used);
    m_trouble->setWordWrap(true);
    m_trouble->setObjectName(QStringLiteral("printTrouble"));
    m_print->setObjectName(QStringLiteral("printOnPaper"));
    m_save->setObjectName(QStringLiteral("printToPdf"));
    m_save->setDefault(true);
    m_preview->setAccessibleName(tr("The pages as they will be"));

    auto* close = new QPushButton(tr("&Close"), this);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    for (QPushButton* button : {m_print, m_save, close}) buttons->addWidget(button);
    auto* side = new QVBoxLayout;
    side->addLayout(what);
    side->addWidget(m_labelFields);
    side->addWidget(m_trouble);
    side->addStretch(1);
    auto* columns = new QHBoxLayout;
    columns->addLayout(side);
    columns->addWidget(m_preview, 1);
    auto* all = new QVBoxLayout(this);
    all->addLayout(columns, 1);
    all->addLayout(buttons);
    resize(1100, 640);

    connect(m_kind, &QComboBox::currentIndexChanged, this, [this, day](int kind) {
        const QSignalBlocker quietFrom(m_from);
        const QSignalBlocker quietDays(m_days);
        // Lists look ahead, a season's report back.
        m_days->setValue(kind == SeasonPaper ? daysOfSeason : daysOfLists);
        m_from->setDate(qDate(kind == SeasonPaper ? day - (daysOfSeason - 1) : day));
        refresh();
    });
    connect(m_from, &QDateEdit::dateChanged, this, &PrintDialog::refresh);
    for (QSpinBox* field : {m_days, m_columns, m_rows, m_used})
        connect(field, &QSpinBox::valueChanged, this, &PrintDialog::refresh);
    for (QDoubleSpinBox* field :
         {m_pageWidth, m_pageHeight, m_labelWidth, m_labelHeight, m_left, m_top, m_gapAcross, m_gapDown})
        connect(field, &QDoubleSpinBox::valueChanged, this, &PrintDialog::refresh);
    connect(m_preview, &QPrintPreviewWidget::paintRequested, this, &PrintDialog::paintPreview);
    connect(m_print, &QPushButton::clicked, this, &PrintDialog::print);
    connect(m_save, &QPushButton::clicked, this, &PrintDialog::save);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
}

void PrintDialog::readKept() {
    const QSettings kept;
    for (QDoubleSpinBox* field :
         {m_pageWidth, m_pageHeight, m_labelWidth, m_labelHeight, m_left, m_top, m_gapAcross, m_gapDown}) {
        const QSignalBlocker quiet(field);
        field->setValue(
            kept.value(QStringLiteral("labels/") + field->objectName(), field->value()).toDouble());
    }
    for (QSpinBox* field : {m_columns, m_rows}) {
        const QSignalBlocker quiet(field);
        field->setValue(kept.value(QStringLiteral("labels/") + field->objectName(), field->value()).toInt());
    }
}

void PrintDialog::keep() const {
    QSettings kept;
    for (const QDoubleSpinBox* field :
         {m_pageWidth, m_pageHeight, m_labelWidth, m_labelHeight, m_left, m_top, m_gapAcross, m_gapDown})
        kept.setValue(QStringLiteral("labels/") + field->objectName(), field->value());
    for (const QSpinBox* field : {m_columns, m_rows})
        kept.setValue(QStringLiteral("labels/") + field->objectName(), field->value());
}

LabelLayout PrintDialog::layoutChosen() const {
    LabelLayout layout;
    layout.page = {m_pageWidth->value(), m_pageHeight->value()};
    layout.label = {m_labelWidth->value(), m_labelHeight->value()};
    layout.columns = m_columns->value();
    layout.rows = m_rows->value();
    layout.left = m_left->value();
    layout.top = m_top->value();
    layout.gap = {m_gapAcross->value(), m_gapDown->value()};
    layout.used = m_used->value();
    return layout;
}

Result<Paper> PrintDialog::paper() const {
    const Day from = dayOf(m_from->date());
    const DaySpan span{from, from + m_days->value()};
    const QString nursery = text(m_book.nursery().name);
    const auto titled = [&](const QString& what) {
        return nursery.isEmpty() ? what : what + QStringLiteral(" · ") + nursery;
    };
    switch (m_kind->currentIndex()) {
    case LabelsPaper:
        return labelPaper(labelsOf(m_book,
                                   m_only ? std::vector{*m_only} : batchesToLabel(m_book, span.from, span.to),
                                   m_wording),
                          layoutChosen());
    case RoundPaper:
        return documentPaper(titled(tr("Round of %1").arg(m_wording.longDate(m_forecast.day()))),
                             roundSheetHtml(m_book, m_forecast, m_wording), QPageLayout::Landscape);
    case DayPaper: {
        DaySheet sheet = daySheet(m_book, season::dayWork(m_book, m_forecast), m_wording);
        return documentPaper(titled(m_wording.longDate(m_forecast.day())), sheet.html, QPageLayout::Portrait,
                             std::move(sheet.plots));
    }
    case SeasonPaper: {
        SeasonSheet sheet =
            seasonSheet(m_book, {span.from, span.to, std::max(span.from, m_forecast.day())}, m_wording);
        return documentPaper(titled(tr("Season's report")), sheet.html, QPageLayout::Landscape,
                             std::move(sheet.plots));
    }
    case MonthPaper: {
        const int days = std::min(m_days->value(), mostDaysOfMonth);
        MonthSheet sheet = monthSheet(m_book, season::monthPlan(m_book, {}, from, days), m_wording);
        return documentPaper(titled(tr("Month plan")), sheet.html, QPageLayout::Landscape,
                             std::move(sheet.plots));
    }
    default:
        return documentPaper(titled(tr("Strike list")),
                             strikeListHtml(m_book, span, Letters(m_book), m_wording),
                             QPageLayout::Landscape);
    }
}

void PrintDialog::refresh() {
    m_labelFields->setVisible(m_kind->currentIndex() == LabelsPaper);
    // The round and the day's page are those of the day that the window shows.
    const bool ofOneDay = m_kind->currentIndex() == RoundPaper || m_kind->currentIndex() == DayPaper;
    m_from->setEnabled(!ofOneDay && !m_only);
    m_days->setEnabled(!ofOneDay && !m_only);
    const auto chosen = paper();
    m_trouble->setText(chosen ? QString() : told(chosen.refusal()));
    m_print->setEnabled(static_cast<bool>(chosen));
    m_save->setEnabled(static_cast<bool>(chosen));
    if (chosen) m_printer->setPageLayout(chosen->layout);
    m_preview->updatePreview();
}

void PrintDialog::paintPreview(QPrinter* printer) {
    if (const auto chosen = paper()) (void)paintOn(*printer, *chosen);
}

void PrintDialog::print() {
    const auto chosen = paper();
    if (!chosen) return;
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(chosen->title);
    printer.setPageLayout(chosen->layout);
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    keep();
    if (!paintOn(printer, *chosen)) m_trouble->setText(tr("The printer took no page."));
}

void PrintDialog::save() {
    const auto chosen = paper();
    if (!chosen) return;
    QString name = QFileDialog::getSaveFileName(this, tr("Save as PDF"), QStringLiteral("warmbench.pdf"),
                                                tr("PDF (*.pdf)"));
    if (name.isEmpty()) return;
    if (QFileInfo(name).suffix().isEmpty()) name += QStringLiteral(".pdf");
    keep();
    const auto refusal = writePdf(*chosen, name);
    m_trouble->setText(refusal ? told(*refusal) : tr("Saved: %1").arg(name));
}

} // namespace warmbench::ui
