#include "ui/setup/zone_form.h"

#include "core/crop/safety.h"
#include "ui/form/fields.h"
#include "ui/words/phrase_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>

#include <algorithm>

namespace warmbench::ui {
namespace {

QString setPointWords(const Mat& mat, const Wording& wording) {
    QStringList words;
    for (const Celsius setPoint : mat.setPoints) words += wording.degrees(setPoint);
    return words.join(QStringLiteral("; "));
}

/// Set-points such as `15; 18; 20`, in the unit and with the decimal sign of the wording.
Result<std::vector<Celsius>> setPointsIn(const QString& words, const Wording& wording) {
    std::vector<Celsius> found;
    for (const QString& word : words.split(u';', Qt::SkipEmptyParts)) {
        bool isNumber = false;
        const double value = wording.locale().toDouble(word.trimmed(), &isNumber);
        if (!isNumber)
            return Refusal{"set-points",
                           phrase("found '%1', expected temperatures with semicolons between them",
                                  word.trimmed().toStdString())};
        found.push_back(Celsius::fromUnits(wording.isFahrenheit() ? (value - 32) * 5 / 9 : value));
    }
    std::sort(found.begin(), found.end());
    return found;
}

QString blockedWords(const Zone& zone) {
    QStringList words;
    for (const Slot slot : zone.blocked) words += QStringLiteral("%1/%2").arg(slot.row + 1).arg(slot.col + 1);
    return words.join(QStringLiteral("; "));
}

/// Slots such as `1/3; 4/12`, row and column counted from 1.
Result<std::vector<Slot>> slotsIn(const QString& words) {
    std::vector<Slot> found;
    for (const QString& word : words.split(u';', Qt::SkipEmptyParts)) {
        const QStringList parts = word.split(u'/');
        bool rowGiven = false;
        bool colGiven = false;
        const int row = parts.front().trimmed().toInt(&rowGiven);
        const int col = parts.back().trimmed().toInt(&colGiven);
        if (parts.size() != 2 || !rowGiven || !colGiven || row < 1 || col < 1)
            return Refusal{
                "blocked slots",
                phrase("found '%1', expected row/column such as 1/3, with semicolons between several",
                       word.trimmed().toStdString())};
        found.push_back({row - 1, col - 1});
    }
    std::sort(found.begin(), found.end());
    return found;
}

} // namespace

ZoneForm::ZoneForm(const Zone& zone, const Mat& mat, Day today, const Wording& wording, QWidget* parent)
    : ThingForm(parent), m_zone(zone), m_wording(wording),
      m_name(addText(fields(), "zoneName", tr("&Name"), zone.name)) {
    // First what no drawing tells, so that it is in sight in a small window too.
    QStringList covers;
    for (std::size_t cover = 0; cover < coverNames.size(); ++cover)
        covers += wording.coverName(static_cast<Cover>(cover));
    m_cover = addChoice(fields(), "zoneCover", tr("Co&ver"), covers, static_cast<int>(zone.cover));
    m_hasMat = addTick(fields(), "zoneHasMat", tr("It lies on a heated &mat"), zone.mat.has_value());
    m_matName = addText(fields(), "matName", tr("Mat's name"), mat.name);
    m_rated = addNumber(fields(), "matRated", tr("Rated power"), mat.rated.units(), 0, 100'000, 1,
                        QStringLiteral("W"));
    m_loss = addNumber(fields(), "matLoss", tr("Loss of heat"), mat.loss.units(), 0, 100, 2,
                       QStringLiteral("W/(m² K)"));
    m_setPoints = addText(fields(), "matSetPoints", tr("Set-points, %1").arg(wording.degreeUnit()),
                          setPointWords(mat, wording).toStdString());
    m_setPoints->setMinimumWidth(220);
    m_isOut = addTick(fields(), "matIsOut", tr("The mat is &out of order"), mat.outOfOrderFrom.has_value());
    m_isOut->setToolTip(
        tr("What it heated before stays as it was. From that day on it is not planned with, and "
           "what stands there is reckoned without it."));
    m_outFrom = addDay(fields(), "matOutFrom", tr("Out of order from"), mat.outOfOrderFrom.value_or(today));
    m_row = addCount(fields(), "zoneRow", tr("First &row, counted from the back"), zone.row + 1, 1, 1000);
    m_col = addCount(fields(), "zoneCol", tr("First &column, from the left"), zone.col + 1, 1, 1000);
    m_rows = addCount(fields(), "zoneRows", tr("Ro&ws"), zone.rows, 1, 1000);
    m_cols = addCount(fields(), "zoneCols", tr("Col&umns"), zone.cols, 1, 1000);
    m_blocked =
        addText(fields(), "zoneBlocked", tr("Blocked slots, row/column"), blockedWords(zone).toStdString());
    m_blocked->setMinimumWidth(220);
    m_blocked->setPlaceholderText(tr("none; such as 1/3; 4/12"));
    QString cautions;
    for (const SafetyNote& note : safetyNotes(Hazard::ElectricHeat))
        cautions += QStringLiteral("<p>") + told(note.text).toHtmlEscaped() + QStringLiteral("</p>");
    auto* care = new QLabel(cautions + QStringLiteral("<p>") + told(safetyDeference).toHtmlEscaped() +
                                QStringLiteral("</p>"),
                            this);
    care->setWordWrap(true);
    care->setProperty("rank", QStringLiteral("quiet"));
    fields().addRow(care);
    for (const QCheckBox* tick : {m_hasMat, m_isOut})
        connect(tick, &QCheckBox::toggled, this, &ZoneForm::enableMat);
    enableMat();
}

void ZoneForm::enableMat() {
    for (QWidget* field :
         {static_cast<QWidget*>(m_matName), static_cast<QWidget*>(m_rated), static_cast<QWidget*>(m_loss),
          static_cast<QWidget*>(m_setPoints), static_cast<QWidget*>(m_isOut)})
        field->setEnabled(m_hasMat->isChecked());
    m_outFrom->setEnabled(m_hasMat->isChecked() && m_isOut->isChecked());
}

Result<Command> ZoneForm::command() const {
    Zone zone = m_zone;
    zone.name = said(*m_name);
    zone.row = m_row->value() - 1;
    zone.col = m_col->value() - 1;
    zone.rows = m_rows->value();
    zone.cols = m_cols->value();
    auto blocked = slotsIn(m_blocked->text());
    if (!blocked) return blocked.refusal();
    zone.blocked = std::move(*blocked);
    zone.cover = static_cast<Cover>(m_cover->currentIndex());
    zone.mat.reset();
    if (m_hasMat->isChecked()) {
        auto setPoints = setPointsIn(m_setPoints->text(), m_wording);
        if (!setPoints) return setPoints.refusal();
        zone.mat = Mat{said(*m_matName), Watts::fromUnits(m_rated->value()),
                       HeatLoss::fromUnits(m_loss->value()), std::move(*setPoints), std::nullopt};
        if (m_isOut->isChecked()) zone.mat->outOfOrderFrom = dayOf(m_outFrom->date());
    }
    return Command{Put<Zone>{zone}};
}

} // namespace warmbench::ui
