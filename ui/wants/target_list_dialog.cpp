#include "ui/wants/target_list_dialog.h"

#include "core/exchange/file/file.h"
#include "ui/form/labels.h"
#include "ui/form/table.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace warmbench::ui {
namespace {

enum LineColumn : int { LineNumber, LineTaxon, LinePlants, LineDue, LineWorth, LineName, LineTrouble };

constexpr std::size_t mostListBytes = 16 << 20;
constexpr int textRows = 7;

} // namespace

TargetListDialog::TargetListDialog(const HouseBook& book, const RecipeLibrary& library,
                                   const Wording& wording, Performer performer, QWidget* parent)
    : QDialog(parent), m_book(book), m_library(library), m_wording(wording),
      m_performer(std::move(performer)), m_text(new QPlainTextEdit(this)),
      m_head(new QCheckBox(tr("The first line names the &columns"), this)), m_order(new QComboBox(this)),
      m_ownTaxa(new QCheckBox(tr("Names that nobody knows are taxa of my &own"), this)),
      m_lines(makeTable(
          QStringLiteral("listLines"), tr("The list as it is understood"),
          {tr("Line"), tr("Taxon"), tr("Plants"), tr("By"), tr("Worth"), tr("Target"), tr("What is wrong")},
          this)),
      m_columnRow(new QWidget(this)), m_words(wrappedLabel(this)), m_putIn(new QPushButton(this)),
      m_refusal(new TroubleLabel(QStringLiteral("listRefusal"), this)) {
    setWindowTitle(tr("A list of targets"));
    setObjectName(QStringLiteral("targetListDialog"));
    build();
    guess();
}

void TargetListDialog::build() {
    m_text->setObjectName(QStringLiteral("listText"));
    m_text->setAccessibleName(tr("The list"));
    m_text->setPlaceholderText(
        tr("Paste a list here, such as lines copied from a spreadsheet: a taxon by any of its "
           "names, how many plants, by which date; worth, wood, a name and a note where you have them."));
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
    options->addWidget(open);
    options->addWidget(m_head);
    options->addWidget(new QLabel(tr("Dates"), this));
    options->addWidget(m_order);
    options->addWidget(m_ownTaxa);
    options->addStretch(1);
    (new QHBoxLayout(m_columnRow))->setContentsMargins(0, 0, 0, 0);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(m_putIn);
    buttons->addWidget(cancel);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_text);
    column->addLayout(options);
    column->addWidget(m_columnRow);
    column->addWidget(m_lines, 1);
    column->addWidget(m_words);
    column->addWidget(m_refusal);
    column->addLayout(buttons);
    resize(960, 600);

    connect(m_text, &QPlainTextEdit::textChanged, this, &TargetListDialog::guess);
    connect(open, &QPushButton::clicked, this, &TargetListDialog::openFile);
    connect(m_head, &QCheckBox::toggled, this, &TargetListDialog::readColumns);
    connect(m_order, &QComboBox::currentIndexChanged, this, &TargetListDialog::readColumns);
    connect(m_ownTaxa, &QCheckBox::toggled, this, &TargetListDialog::showLines);
    connect(m_putIn, &QPushButton::clicked, this, &TargetListDialog::accept);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
}

void TargetListDialog::openFile() {
    const QString name = QFileDialog::getOpenFileName(this, tr("Open a list"), {},
                                                      tr("Lists (*.csv *.txt *.tsv);;All files (*)"));
    if (name.isEmpty()) return;
    const auto read = exchange::readFile(name.toStdString(), mostListBytes);
    if (!read) return m_refusal->tell(Outcome(read.refusal()));
    m_text->setPlainText(text(*read));
}

void TargetListDialog::guess() {
    m_refusal->tell(QString());
    m_shape = season::targetListShape(m_text->toPlainText().toStdString(), m_book, m_library);
    const QSignalBlocker quietHead(m_head);
    const QSignalBlocker quietOrder(m_order);
    m_head->setChecked(m_shape.head);
    m_order->setCurrentIndex(static_cast<int>(m_shape.order));
    showColumns();
    showLines();
}

void TargetListDialog::showColumns() {
    for (QComboBox* column : m_columns) column->deleteLater();
    m_columns.clear();
    for (std::size_t i = 0; i < m_shape.columns.size(); ++i) {
        auto* column = new QComboBox(m_columnRow);
        column->setAccessibleName(tr("What column %1 means").arg(i + 1));
        column->setObjectName(QStringLiteral("listColumn%1").arg(i + 1));
        for (const char* name : season::targetColumnNames) column->addItem(QString::fromUtf8(name));
        column->setCurrentIndex(static_cast<int>(m_shape.columns[i]));
        connect(column, &QComboBox::currentIndexChanged, this, &TargetListDialog::readColumns);
        m_columnRow->layout()->addWidget(column);
        m_columns.push_back(column);
    }
}

void TargetListDialog::readColumns() {
    m_shape.head = m_head->isChecked();
    m_shape.order = static_cast<exchange::DateOrder>(m_order->currentIndex());
    for (std::size_t i = 0; i < m_columns.size(); ++i)
        m_shape.columns[i] = static_cast<season::TargetColumn>(m_columns[i]->currentIndex());
    showLines();
}

void TargetListDialog::showLines() {
    const auto unknown =
        m_ownTaxa->isChecked() ? season::UnknownTaxa::TakeAsOwn : season::UnknownTaxa::Refuse;
    m_list = season::readTargetList(m_text->toPlainText().toStdString(), m_shape, m_book, m_library, unknown);
    m_lines->clear();
    int right = 0;
    for (const season::ListedTarget& one : m_list) {
        auto* item = new QTreeWidgetItem(m_lines);
        item->setText(LineNumber, QString::number(one.line));
        if (!one.trouble.empty()) {
            QStringList cells;
            for (const std::string& cell : one.cells) cells << text(cell);
            item->setText(LineTaxon, cells.join(QStringLiteral(" | ")));
            item->setText(LineTrouble, text(one.trouble));
            item->setToolTip(LineTrouble, text(one.trouble));
            continue;
        }
        ++right;
        item->setText(LineTaxon, text(one.taxon.taxon.name));
        item->setText(LinePlants, m_wording.number(one.target.plants));
        item->setText(LineDue, m_wording.locale().toString(qDate(one.target.due), QLocale::ShortFormat));
        item->setText(LineWorth, m_wording.money(one.target.worth, m_book.nursery().currency));
        item->setText(LineName, text(one.target.name));
    }
    fitColumns(*m_lines);
    const int wrong = static_cast<int>(m_list.size()) - right;
    m_words->setText(
        wrong == 0 ? QString()
                   : tr("Wrong and left out: %1 of %2 lines.")
                         .arg(m_wording.number(wrong), m_wording.number(static_cast<int>(m_list.size()))));
    m_putIn->setText(tr("&Put these targets in (%1)").arg(m_wording.number(right)));
    m_putIn->setEnabled(right > 0);
}

void TargetListDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    // Only now the heads have the type that they are shown in.
    fitColumns(*m_lines);
}

void TargetListDialog::accept() {
    if (auto refusal = m_performer(season::putTargets(m_book, m_list))) return m_refusal->tell(refusal);
    QDialog::accept();
}

} // namespace warmbench::ui
