#include "tests/ui/clipped.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QTreeView>

#include <algorithm>

namespace warmbench::tests {
namespace {

/// The widest word of a text, which no wrapping makes narrower.
int widestWord(const QLabel& label) {
    QString plain = label.text();
    plain.replace(QRegularExpression(QStringLiteral("<[^>]*>")), QStringLiteral(" "));
    int widest = 0;
    for (const QString& word : plain.split(QRegularExpression(QStringLiteral("[\\s-]+"))))
        widest = std::max(widest, label.fontMetrics().horizontalAdvance(word));
    return widest;
}

bool isClipped(const QLabel& label) {
    if (label.text().isEmpty()) return false;
    if (!label.wordWrap())
        return label.sizeHint().width() > label.width() || label.sizeHint().height() > label.height() + 1;
    return label.heightForWidth(label.width()) > label.height() + 1 ||
           widestWord(label) > label.contentsRect().width();
}

/// Columns whose heads have no room for their words.
QStringList clippedHeads(const QHeaderView& header) {
    QStringList clipped;
    if (header.orientation() != Qt::Horizontal || !header.isVisible()) return clipped;
    for (int section = 0; section < header.count(); ++section) {
        if (header.isSectionHidden(section)) continue;
        const QString words = header.model()->headerData(section, Qt::Horizontal).toString();
        if (header.fontMetrics().horizontalAdvance(words) > header.sectionSize(section))
            clipped += QStringLiteral("head: ") + words;
    }
    return clipped;
}

bool bearsText(const QWidget& widget) {
    return qobject_cast<const QLabel*>(&widget) || qobject_cast<const QAbstractButton*>(&widget) ||
           qobject_cast<const QLineEdit*>(&widget) || qobject_cast<const QComboBox*>(&widget) ||
           qobject_cast<const QAbstractSpinBox*>(&widget);
}

} // namespace

QStringList clippedTexts(const QWidget& window) {
    QStringList clipped;
    std::vector<const QWidget*> bearing;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->window() != &window) continue;
        const QString name = widget->objectName() + QStringLiteral(": ");
        if (const auto* label = qobject_cast<const QLabel*>(widget); label && isClipped(*label))
            clipped += name + label->text();
        if (const auto* button = qobject_cast<const QAbstractButton*>(widget);
            button && !button->text().isEmpty() && button->sizeHint().width() > button->width())
            clipped += name + button->text();
        if (const auto* choice = qobject_cast<const QComboBox*>(widget);
            choice && choice->fontMetrics().horizontalAdvance(choice->currentText()) > choice->width() - 24)
            clipped += name + choice->currentText();
        if (const auto* field = qobject_cast<const QAbstractSpinBox*>(widget);
            field && field->minimumSizeHint().width() > field->width())
            clipped += name + field->text();
        if (const auto* header = qobject_cast<const QHeaderView*>(widget)) clipped += clippedHeads(*header);
        if (bearsText(*widget)) bearing.push_back(widget);
    }
    for (const QWidget* one : bearing)
        for (const QWidget* other : bearing)
            if (one < other && one->parent() == other->parent() &&
                one->geometry().intersects(other->geometry()) &&
                !qobject_cast<const QAbstractScrollArea*>(one->parent()))
                clipped += one->objectName() + QStringLiteral(" covers ") + other->objectName();
    return clipped;
}

QString LongerWords::translate(const char*, const char* source, const char*, int) const {
    const QString words = QString::fromUtf8(source);
    // What stands for nothing to read, such as `%1` or `kWh`, stays as it is.
    const auto letters = std::count_if(words.begin(), words.end(), [](QChar c) { return c.isLetter(); });
    if (letters < 2 || words == QLatin1String("%1")) return words;
    QString longer = words;
    const auto more = (2 * words.size() + 4) / 5;
    // As words of a few letters each, as in a real text.
    QString tail;
    for (qsizetype i = 0; i < more; ++i) tail += i % 8 == 7 ? u' ' : u'ø';
    const bool dots = longer.endsWith(u'…');
    if (dots) longer.chop(1);
    return longer + (words.contains(u' ') ? QStringLiteral(" ") : QString()) + tail.trimmed() +
           (dots ? QStringLiteral("…") : QString());
}

} // namespace warmbench::tests
