#include "ui/shell/strike_list_place.h"

#include "ui/paper/strike_list.h"

#include <QTextBrowser>
#include <QVBoxLayout>

namespace warmbench::ui {

StrikeListPlace::StrikeListPlace(QWidget* parent)
    : Place(QStringLiteral("strikeList"), tr("Strike list"), parent), m_sheet(new QTextBrowser(this)) {
    m_sheet->setObjectName(QStringLiteral("strikeSheet"));
    m_sheet->setAccessibleName(title());
    m_sheet->document()->setDocumentMargin(24);
    m_sheet->setWordWrapMode(QTextOption::WordWrap); // a narrow column is as wide as its longest word
    setFocusProxy(m_sheet);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_sheet);
}

void StrikeListPlace::showBook(const BookView& view) {
    m_sheet->setHtml(strikeListHtml(view.book, std::nullopt, view.letters, wording()));
}

} // namespace warmbench::ui
