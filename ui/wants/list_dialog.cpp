#include "ui/wants/list_dialog.h"

#include "core/exchange/file/file.h"
#include "ui/form/labels.h"
#include "ui/form/table.h"
#include "ui/words/phrase_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace warmbench::ui {
namespace {

constexpr int firstField = 1; ///< the column after the line's number
constexpr std::size_t mostListBytes = 16 << 20;
constexpr int textRows = 7;

} // namespace

ListDialog::ListDialog(const HouseBook& book, const RecipeLibrary& library, season::ListKind kind,
                       const Wording& wording, Performer performer, QWidget* parent)
    : DraftDialog(parent), m_book(book), m_library(library), m_wording(wording),
      m_performer(std::move(performer)), m_kind(new QComboBox(this)), m_text(new QPlainTextEdit(this)),
      m_head(new QCheckBox(tr("The first line names the &columns"), this)), m_order(new QComboBox(this)),
      m_ownTaxa(new QCheckBox(tr("Names that nobody knows are taxa of my &own"), this)),
      m_lines(makeTable(QStringLiteral("listLines"), tr("The list as it is understood"), {}, this)),
      m_columnRow(new QWidget(this)), m_words(wrappedLabel(this)), m_putIn(new QPushButton(this)),
      m_refusal(new TroubleLabel(QStringLiteral("listRefusal"), this)) {
    setWindowTitle(tr("Put in a list"));
    setObjectName(QStringLiteral("listDialog"));
    m_kind->addItems({tr("Targets"), tr("Stocks"), tr("Recipes"), tr("Results of earlier batches")});
    m_kind->setObjectName(QStringLiteral("listKind"));
    m_kind->setAccessibleName(tr("What the list holds"));
    m_kind->setCurrentIndex(static_cast<int>(kind));
    build();
    showKind();
}

void ListDialog::build() {
    m_text->setObjectName(QStringLiteral("listText"));
    m_text->setAccessibleName(tr("The list"));
    m_lines->setWordWrap(true);
    m_text->setTabChangesFocus(true);
    m_text->setFixedHeight(m_text->fontMetrics().lineSpacing() * textRows);
    m_order->addItems({tr("2027-03-01"), tr("day first: 1.3.2027"), tr("month first: 3/1/2027")});
    m_order->setObjectName(QStringLiteral("listOrder"));
    m_head->setObjectName(QStringLiteral("listHead"));
    m_ownTaxa->setObjectName(QStringLiteral("listOwnTaxa"));
    m_putIn->setObjectName(QStringLiteral("listPutIn"));
    m_putIn->setProperty("primary", true);
    auto* open = new QPushButton(tr("&Open a file…"), this);
    auto* cancel = new QPushButton(tr("Cancel"), this);

    auto* options = new QHBoxLayout;
    options->addWidget(m_kind);
    options->addWidget(open);
    options->addWidget(new QLabel(tr("Dates"), this));
    options->addWidget(m_order);
    options->addStretch(1);
    auto* ticks = new QHBoxLayout; // in a line of their own: their words are long in some languages
    ticks->addWidget(m_head);
    ticks->addWidget(m_ownTaxa);
    ticks->addStretch(1);
    (new QHBoxLayout(m_columnRow))->setContentsMargins(0, 0, 0, 0);
    // Recipes have more columns than a window is wide.
    auto* columns = new QScrollArea(this);
    columns->setFrameShape(QFrame::NoFrame);
    columns->setWidgetResizable(true);
    columns->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    columns->setFocusPolicy(Qt::NoFocus);
    columns->setWidget(m_columnRow);
    columns->setFixedHeight(m_order->sizeHint().height() +
                            columns->horizontalScrollBar()->sizeHint().height());
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(m_putIn);
    buttons->addWidget(cancel);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_text);
    column->addLayout(options);
    column->addLayout(ticks);
    column->addWidget(columns);
    column->addWidget(m_lines, 1);
    column->addWidget(m_words);
    column->addWidget(m_refusal);
    column->addLayout(buttons);
    resize(960, 600);

    connect(m_kind, &QComboBox::currentIndexChanged, this, &ListDialog::showKind);
    connect(m_text, &QPlainTextEdit::textChanged, this, &ListDialog::guess);
    connect(open, &QPushButton::clicked, this, &ListDialog::openFile);
    connect(m_head, &QCheckBox::toggled, this, &ListDialog::readColumns);
    connect(m_order, &QComboBox::currentIndexChanged, this, &ListDialog::readColumns);
    connect(m_ownTaxa, &QCheckBox::toggled, this, &ListDialog::showLines);
    connect(m_putIn, &QPushButton::clicked, this, &ListDialog::accept);
    connect(cancel, &QPushButton::clicked, this, &ListDialog::reject);
    m_text->setFocus(); // a list is pasted there
}

void ListDialog::openFile() {
    const QString name = QFileDialog::getOpenFileName(this, tr("Open a list"), {},
                                                      tr("Lists (*.csv *.txt *.tsv);;All files (*)"));
    if (name.isEmpty()) return;
    const auto read = exchange::readFile(name.toStdString(), mostListBytes);
    if (!read) return m_refusal->tell(Outcome(read.refusal()));
    m_text->setPlainText(text(*read));
}

season::ListKind ListDialog::kind() const {
    return static_cast<season::ListKind>(m_kind->currentIndex());
}

void ListDialog::showKind() {
    const QString paste = tr("Paste a list here, such as lines copied from a spreadsheet: ");
    switch (kind()) {
    case season::ListKind::Targets:
        m_text->setPlaceholderText(
            paste + tr("a taxon by any of its names, how many plants, by which date; worth, wood, a name and "
                       "a note where you have them."));
        break;
    case season::ListKind::Stocks:
        m_text->setPlaceholderText(
            paste + tr("a taxon, the stock's name, how many plants; for each flush its wood, the days from "
                       "and to which it is cut (05-10), cuttings a plant and days to regrow."));
        break;
    case season::ListKind::Recipes:
        m_text->setPlaceholderText(
            paste + tr("a taxon, its wood, and figures of your own under their names, such as "
                       "root_zone_ideal_c or take_percent; the rest stays as the built-in recipe has it."));
        break;
    case season::ListKind::Results:
        m_text->setPlaceholderText(
            paste + tr("a taxon, its wood, the day of striking, how many cuttings, how many plants came of "
                       "them, the day of potting on; the stock and the hormone where you have them."));
        break;
    }
    QStringList heads{tr("Line")};
    for (const std::string& name : season::fieldNames(kind())) {
        QString head = told(name);
        heads << head.replace(0, 1, head.at(0).toUpper());
    }
    heads << tr("What is wrong");
    m_lines->setColumnCount(static_cast<int>(heads.size()));
    m_lines->setHeaderLabels(heads);
    for (int column = 0; column < m_lines->columnCount(); ++column)
        m_lines->setItemDelegateForColumn(column, nullptr);
    wrapLastColumn(*m_lines);
    guess();
}

QString ListDialog::fieldText(const season::ListField& field) const {
    if (const auto* words = std::get_if<std::string>(&field)) return text(*words);
    if (const auto* day = std::get_if<Day>(&field))
        return m_wording.locale().toString(qDate(*day), QLocale::ShortFormat);
    if (const auto* money = std::get_if<Money>(&field))
        return m_wording.money(*money, m_book.nursery().currency);
    return m_wording.number(std::get<int>(field));
}

void ListDialog::guess() {
    m_refusal->tell(QString());
    m_shape = season::listShape(m_text->toPlainText().toStdString(), kind(), m_book, m_library);
    const QSignalBlocker quietHead(m_head);
    const QSignalBlocker quietOrder(m_order);
    m_head->setChecked(m_shape.head);
    m_order->setCurrentIndex(static_cast<int>(m_shape.order));
    showColumns();
    showLines();
}

void ListDialog::showColumns() {
    qDeleteAll(m_columns);
    m_columns.clear();
    const std::vector<std::string> names = season::columnNames(kind());
    for (std::size_t i = 0; i < m_shape.columns.size(); ++i) {
        auto* column = new QComboBox(m_columnRow);
        column->setAccessibleName(tr("What column %1 means").arg(i + 1));
        column->setObjectName(QStringLiteral("listColumn%1").arg(i + 1));
        for (const std::string& name : names) column->addItem(told(name));
        column->setCurrentIndex(static_cast<int>(m_shape.columns[i]));
        connect(column, &QComboBox::currentIndexChanged, this, &ListDialog::readColumns);
        m_columnRow->layout()->addWidget(column);
        m_columns.push_back(column);
    }
}

void ListDialog::readColumns() {
    m_shape.head = m_head->isChecked();
    m_shape.order = static_cast<exchange::DateOrder>(m_order->currentIndex());
    for (std::size_t i = 0; i < m_columns.size(); ++i)
        m_shape.columns[i] = static_cast<std::size_t>(m_columns[i]->currentIndex());
    showLines();
}

void ListDialog::showLines() {
    const auto unknown =
        m_ownTaxa->isChecked() ? season::UnknownTaxa::TakeAsOwn : season::UnknownTaxa::Refuse;
    m_list = season::readThingList(m_text->toPlainText().toStdString(), kind(), m_shape, m_book, m_library,
                                   unknown);
    m_lines->clear();
    const int troubleColumn = m_lines->columnCount() - 1;
    for (const season::ListedThing& one : m_list.lines) {
        auto* item = new QTreeWidgetItem(m_lines);
        item->setText(0, QString::number(one.line));
        for (std::size_t i = 0; i < one.fields.size(); ++i)
            item->setText(firstField + static_cast<int>(i), fieldText(one.fields[i]));
        if (one.trouble.empty()) continue;
        QStringList cells;
        for (const std::string& cell : one.cells) cells << text(cell);
        item->setText(firstField, cells.join(QStringLiteral(" | ")));
        item->setText(troubleColumn, told(one.trouble, m_wording));
        item->setToolTip(troubleColumn, told(one.trouble, m_wording));
    }
    const int right = static_cast<int>(m_list.right);
    const int lines = static_cast<int>(m_list.lines.size());
    fitColumns(*m_lines);
    const int wrong = lines - right;
    m_words->setText(wrong == 0 ? QString()
                                : tr("Wrong and left out: %1 of %2 lines.")
                                      .arg(m_wording.number(wrong), m_wording.number(lines)));
    m_putIn->setText(tr("&Put these lines in (%1)").arg(m_wording.number(right)));
    m_putIn->setEnabled(right > 0);
}

void ListDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    // Only now the heads have the type that they are shown in.
    fitColumns(*m_lines);
}

void ListDialog::accept() {
    if (auto refusal = m_performer(m_list.command)) return m_refusal->tell(refusal);
    QDialog::accept();
}

} // namespace warmbench::ui
