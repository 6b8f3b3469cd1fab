#include "ui/away/homecoming_dialog.h"

#include "core/book/query.h"
#include "ui/form/labels.h"
#include "ui/form/table.h"
#include "ui/words/phrase_words.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace warmbench::ui {
namespace {

enum Column { BatchColumn, ChecksColumn, LossesColumn, WeanedColumn, PottedColumn, DaysColumn, TaxonColumn };

constexpr int rowsInSight = 4;

} // namespace

HomecomingDialog::HomecomingDialog(const HouseBook& book, const QString& name, AwayContent content,
                                   const QString& copy, const Wording& wording, Performer performer,
                                   QWidget* parent)
    : QDialog(parent), m_book(book), m_content(std::move(content)), m_copy(QFileInfo(copy).fileName()),
      m_wording(wording), m_performer(std::move(performer)), m_sum(wrappedLabel(this)),
      m_batches(makeTable(QStringLiteral("homecomingBatches"), tr("What comes home, by batch"),
                          {tr("Batch"), tr("Root checks"), tr("Losses"), tr("Weaned"), tr("Potted on"),
                           tr("Days"), tr("Taxon")},
                          this)),
      m_conflictWords(wrappedLabel(this)), m_conflicts(new QListWidget(this)),
      m_refusal(new TroubleLabel(QStringLiteral("homecomingRefusal"), this)), m_bring(new QPushButton(this)),
      m_leave(new QPushButton(this)) {
    setObjectName(QStringLiteral("homecomingDialog"));
    setWindowTitle(tr("Bring a round home"));
    auto* head = wrappedLabel(this);
    head->setTextFormat(Qt::RichText);
    head->setText(tr("What <b>%1</b> holds and <b>%2</b> does not. Nothing is stored yet, and the copy stays "
                     "as it is.")
                      .arg(m_copy.toHtmlEscaped(), name.toHtmlEscaped()));
    m_sum->setObjectName(QStringLiteral("homecomingSum"));
    m_conflictWords->setObjectName(QStringLiteral("homecomingConflictWords"));
    m_conflicts->setObjectName(QStringLiteral("homecomingConflicts"));
    m_conflicts->setAccessibleName(tr("What is in conflict"));
    m_conflicts->setWordWrap(true);
    m_conflicts->setSpacing(2);
    auto* steps = wrappedLabel(this, "quiet");
    steps->setObjectName(QStringLiteral("homecomingSteps"));
    steps->setText(stepWords());
    m_bring->setObjectName(QStringLiteral("homecomingBring"));
    m_bring->setProperty("primary", true);
    m_leave->setObjectName(QStringLiteral("homecomingLeave"));
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(m_bring);
    buttons->addWidget(m_leave);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 12);
    column->setSpacing(10);
    column->addWidget(head);
    column->addWidget(m_sum);
    column->addWidget(m_batches, 2);
    column->addWidget(m_conflictWords);
    column->addWidget(m_conflicts, 1);
    column->addStretch(); // for a dialog with neither list
    column->addWidget(steps);
    column->addWidget(m_refusal);
    column->addLayout(buttons);
    m_batches->setMinimumHeight(m_batches->fontMetrics().lineSpacing() * 2 * rowsInSight);
    connect(m_bring, &QPushButton::clicked, this, &HomecomingDialog::accept);
    connect(m_leave, &QPushButton::clicked, this, &QDialog::reject);
    refresh();
    const bool lists = !m_merge.commands.empty() || !m_merge.conflicts.empty();
    resize(820, lists ? 540 : 240);
}

/// Only now it has the window's style, and rows and heads of columns their room.
void HomecomingDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    listBatches();
}

void HomecomingDialog::refresh() {
    m_merge = round::mergeRound(m_book, m_content.book);
    const bool nothing = m_merge.commands.empty();
    const bool conflicts = !m_merge.conflicts.empty();
    m_sum->setText(nothing && !conflicts
                       ? tr("There is nothing new in it: what was found with it is in the book already.")
                   : nothing ? tr("Nothing of it can be brought home, as all of it is in conflict.")
                             : sumWords());
    listBatches();
    listConflicts();
    m_bring->setVisible(!nothing || conflicts);
    m_bring->setEnabled(!nothing);
    m_bring->setText(conflicts ? tr("&Bring home all but the conflicts") : tr("&Bring it home"));
    m_leave->setText(m_bring->isEnabled() ? tr("Cancel") : tr("Close"));
    (m_bring->isEnabled() ? m_bring : m_leave)->setDefault(true);
    if (!m_bring->isEnabled()) m_leave->setFocus();
}

QString HomecomingDialog::sumWords() const {
    const auto count = [this](std::size_t number) { return m_wording.number(static_cast<int>(number)); };
    const round::RoundDeeds& all = m_merge.all;
    return tr("Root checks: %1. Losses: %2. Weanings: %3. Pottings on: %4.")
        .arg(count(all.checks), count(all.losses), count(all.weanings), count(all.pottings));
}

void HomecomingDialog::listBatches() {
    m_batches->clear();
    std::vector<std::pair<const Batch*, const round::RoundDeeds*>> lines;
    for (const auto& [id, deeds] : m_merge.byBatch) lines.emplace_back(&m_book.get<Batch>(id), &deeds);
    std::sort(lines.begin(), lines.end(),
              [](const auto& a, const auto& b) { return a.first->code < b.first->code; });
    for (const auto& [batch, deeds] : lines) {
        const auto* taxon = m_book.find<Taxon>(batch->taxon);
        const QString first = m_wording.shortDate(deeds->first);
        const QString last = m_wording.shortDate(deeds->last);
        auto* item = new QTreeWidgetItem(m_batches);
        item->setText(BatchColumn, text(batch->code));
        item->setText(DaysColumn, first == last ? first : tr("%1 to %2").arg(first, last));
        item->setText(TaxonColumn, taxon ? text(taxon->name) : QString());
        for (const auto& [column, number] :
             {std::pair{ChecksColumn, deeds->checks}, std::pair{LossesColumn, deeds->losses},
              std::pair{WeanedColumn, deeds->weanings}, std::pair{PottedColumn, deeds->pottings}}) {
            if (number > 0) item->setText(column, m_wording.number(static_cast<int>(number)));
            item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
        }
    }
    fitColumns(*m_batches);
    m_batches->setVisible(!lines.empty());
    if (!lines.empty()) m_batches->setCurrentItem(m_batches->topLevelItem(0));
}

void HomecomingDialog::listConflicts() {
    m_conflicts->clear();
    for (const Refusal& conflict : m_merge.conflicts) m_conflicts->addItem(told(conflict, m_wording));
    const bool any = !m_merge.conflicts.empty();
    m_conflictWords->setText(tr("<b>In conflict: %1.</b> These are left out. Put right in one of the books "
                                "what is wrong, then bring "
                                "the round home again: what is home already does not come twice.")
                                 .arg(m_wording.number(static_cast<int>(m_merge.conflicts.size()))));
    m_conflictWords->setVisible(any);
    m_conflicts->setVisible(any);
    if (any) m_conflicts->setCurrentRow(0);
}

/// What else may have been done in the copy.
QString HomecomingDialog::stepWords() const {
    QString rest = tr("Only root checks, losses, weanings and pottings on come home; whatever else was "
                      "done in the copy stays there.");
    if (m_content.steps.empty()) return rest;
    const JournalStep& last = m_content.steps.back();
    return tr("Steps in the copy since it was taken along: %1; the last by %2 on %3: %4")
               .arg(m_wording.number(static_cast<int>(m_content.steps.size())), last.who,
                    m_wording.longDate(dayOf(last.at.toLocalTime().date())),
                    told(last.words.toStdString(), m_wording)) +
           QStringLiteral("\n") + rest;
}

void HomecomingDialog::accept() {
    if (m_merge.commands.empty()) return;
    const Outcome refusal = m_performer(round::bringHome(m_merge, m_copy.toStdString()));
    m_refusal->tell(refusal);
    if (!refusal) QDialog::accept();
}

} // namespace warmbench::ui
