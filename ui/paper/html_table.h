#pragma once

#include <QString>
#include <QStringList>

namespace warmbench::ui {

/// A table of rich text whose head is repeated on each page and whose lines are ruled, so that it is read on
/// any printer.
class HtmlTable {
public:
    explicit HtmlTable(const QStringList& head);
    /// Cells of rich text, as many as the head has.
    void add(const QStringList& cells);
    [[nodiscard]] bool isEmpty() const { return m_rows.isEmpty(); }
    [[nodiscard]] QString html() const;

private:
    QString m_head;
    QString m_rows;
};

/// A box to tick or to write a number in.
[[nodiscard]] QString tickBox();

/// A heading, a paragraph.
[[nodiscard]] QString heading(const QString& words);
[[nodiscard]] QString paragraph(const QString& words);

} // namespace warmbench::ui
