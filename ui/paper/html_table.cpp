#include "ui/paper/html_table.h"

namespace warmbench::ui {
namespace {

QString rowOf(const QStringList& cells, const QString& tag) {
    QString row = QStringLiteral("<tr>");
    for (const QString& cell : cells)
        row +=
            u'<' + tag +
            QStringLiteral(" align='left' style='border-bottom:1px solid #777777; padding:3px 8px 3px 0'>") +
            cell + QStringLiteral("</") + tag + u'>';
    return row + QStringLiteral("</tr>");
}

} // namespace

HtmlTable::HtmlTable(const QStringList& head) : m_head(rowOf(head, QStringLiteral("th"))) {}

void HtmlTable::add(const QStringList& cells) {
    m_rows += rowOf(cells, QStringLiteral("td"));
}

QString HtmlTable::html() const {
    // Of the whole width some columns come out a point wider in all, and a window needs a scroll bar.
    return QStringLiteral("<table width='99%' cellspacing='0' style='border-collapse:collapse'><thead>") +
           m_head + QStringLiteral("</thead>") + m_rows + QStringLiteral("</table>");
}

QString tickBox() {
    return QStringLiteral("&#9744;");
}

QString heading(const QString& words) {
    return QStringLiteral("<h3>") + words.toHtmlEscaped() + QStringLiteral("</h3>");
}

QString paragraph(const QString& words) {
    return QStringLiteral("<p>") + words.toHtmlEscaped() + QStringLiteral("</p>");
}

} // namespace warmbench::ui
