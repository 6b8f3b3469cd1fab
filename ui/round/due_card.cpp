#include "ui/round/due_card.h"

#include "core/book/query.h"
#include "core/round/weaning.h"
#include "core/season/renewal.h"
#include "ui/form/labels.h"
#include "ui/round/number_field.h"
#include "ui/words/phrase_words.h"
#include "ui/words/taxon_text.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace warmbench::ui {
namespace {

constexpr int fieldWidth = 84;

} // namespace

DueCard::DueCard(QWidget* parent)
    : QWidget(parent), m_code(new QLabel(this)), m_taxon(wrappedLabel(this)), m_why(wrappedLabel(this)),
      m_help(wrappedLabel(this, "quiet")), m_table(new QScrollArea(this)), m_sum(wrappedLabel(this)),
      m_asStock(new QCheckBox(tr("Count its plants as stock plants"), this)),
      m_words(new TroubleLabel(QStringLiteral("dueWords"), this)), m_enter(new QPushButton(this)),
      m_asPlanned(new QPushButton(this)), m_reason(new QLineEdit(this)),
      m_discard(new QPushButton(tr("Discard batch"), this)) {
    setObjectName(QStringLiteral("dueCard"));
    m_code->setObjectName(QStringLiteral("dueBatch"));
    m_sum->setObjectName(QStringLiteral("dueSum"));
    m_asStock->setObjectName(QStringLiteral("dueAsStock"));
    m_enter->setObjectName(QStringLiteral("dueEnter"));
    m_enter->setProperty("primary", true);
    m_asPlanned->setObjectName(QStringLiteral("dueAsPlanned"));
    m_reason->setObjectName(QStringLiteral("dueReason"));
    m_reason->setPlaceholderText(tr("Why it is thrown away"));
    m_reason->setAccessibleName(m_reason->placeholderText());
    m_discard->setObjectName(QStringLiteral("dueDiscard"));
    connect(m_enter, &QPushButton::clicked, this, &DueCard::enter);
    connect(m_asPlanned, &QPushButton::clicked, this,
            [this] { Q_EMIT weanWanted(m_due.batch, m_due.since); });
    connect(m_reason, &QLineEdit::returnPressed, this, &DueCard::discard);
    connect(m_discard, &QPushButton::clicked, this, &DueCard::discard);

    m_table->setWidgetResizable(true);
    auto* discarding = new QHBoxLayout;
    discarding->addWidget(m_reason, 1);
    discarding->addWidget(m_discard);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 12, 16, 12);
    column->addWidget(m_code);
    column->addWidget(m_taxon);
    column->addWidget(m_why);
    column->addWidget(m_help);
    column->addWidget(m_table, 1);
    column->addWidget(m_sum);
    column->addWidget(m_asStock);
    column->addWidget(m_words);
    auto* doing = new QHBoxLayout;
    doing->addWidget(m_enter);
    doing->addWidget(m_asPlanned);
    doing->addStretch(1);
    column->addLayout(doing);
    column->addSpacing(12);
    column->addLayout(discarding);
    column->addStretch(); // where no table takes the room
}

/// As on the card of a check, + does it from any field.
bool DueCard::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Plus) {
        enter();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void DueCard::setTitleFont(const QFont& font) {
    m_code->setFont(font);
}

void DueCard::showDue(const HouseBook& book, const round::Due& due, Day day, const Wording& wording) {
    m_due = due;
    m_day = day;
    const Batch& batch = book.get<Batch>(due.batch);
    m_code->setText(text(batch.code));
    m_taxon->setText(taxonHtml(book.get<Taxon>(batch.taxon).name));
    m_why->setText(told(due.why, wording));
    const bool weaning = due.task == round::Task::Wean;
    m_help->setText(
        weaning ? tr("Cover and heat are taken away by steps from today on; the batch goes to where "
                     "it is to be weaned.")
                : tr("Plants of each container, Enter, what is lost; +: pot on. Lost left empty: all the "
                     "rest. A container left empty stays where it is."));
    m_enter->setText(weaning ? tr("Wean now") : tr("Pot on"));
    const auto plans = weaning ? round::weanedByPlanOnly(book, due.batch, day) : std::nullopt;
    m_asPlanned->setVisible(plans && *plans < day);
    m_asPlanned->setText(tr("Was weaned on %1").arg(wording.shortDate(due.since)));
    const Stock* stock = weaning ? nullptr : season::renewedBy(book, batch);
    m_stock = stock ? std::optional(stock->id) : std::nullopt;
    m_asStock->setVisible(stock);
    m_asStock->setChecked(stock);
    if (stock) {
        const QString renews = tr("This batch renews the stock %1, which has %2 now.")
                                   .arg(text(stock->name), wording.number(stock->plants));
        m_help->setText(m_help->text() + u' ' + renews);
        m_asStock->setAccessibleDescription(renews);
    }
    m_reason->setText({}); // with nothing to take back
    m_sum->clear();
    m_table->setVisible(!weaning);
    tell({});
    if (weaning)
        layLines(book, {}, wording);
    else
        layLines(book, batch, wording);
}

void DueCard::layLines(const HouseBook& book, const Batch& batch, const Wording& wording) {
    m_lines.clear();
    auto* table = new QWidget;
    auto* grid = new QGridLayout(table);
    grid->setContentsMargins(4, 4, 4, 4);
    const std::array heads{tr("Container"), tr("Stand"), tr("Plants"), tr("Lost")};
    if (!batch.containers.empty())
        for (std::size_t i = 0; i < heads.size(); ++i) {
            auto* head = new QLabel(heads[i], table);
            head->setProperty("rank", "quiet");
            grid->addWidget(head, 0, static_cast<int>(i));
        }
    for (const BatchContainer& one : batch.containers) {
        const int there = standing(book, batch, one.number, m_day);
        if (there == 0) continue;
        const QString code = text(containerCode(batch.code, one.number));
        const QString number = QString::number(one.number);
        Line line{one.number, there, nullptr, nullptr};
        line.plants =
            numberField(QStringLiteral("potPlants") + number, tr("Plants of %1").arg(code), there, table);
        line.lost = numberField(QStringLiteral("potLost") + number, tr("Lost of %1").arg(code), there, table);
        const int row = static_cast<int>(m_lines.size()) + 1;
        grid->addWidget(new QLabel(code, table), row, 0);
        grid->addWidget(new QLabel(wording.number(there), table), row, 1);
        grid->addWidget(line.plants, row, 2);
        grid->addWidget(line.lost, row, 3);
        const std::size_t place = m_lines.size();
        for (QLineEdit* field : {line.plants, line.lost}) {
            field->setFixedWidth(fieldWidth);
            field->setMinimumHeight(field->sizeHint().height());
            field->installEventFilter(this);
            connect(field, &QLineEdit::textEdited, this, &DueCard::showSum);
            connect(field, &QLineEdit::returnPressed, this,
                    [this, place, lost = field == line.lost] { goOn(place, lost); });
        }
        m_lines.push_back(line);
    }
    grid->setRowStretch(static_cast<int>(m_lines.size()) + 1, 1);
    grid->setColumnStretch(4, 1);
    m_table->setWidget(table);
}

std::optional<PottedContainer> DueCard::pottedIn(const Line& line) const {
    const auto plants = countIn(*line.plants);
    const auto lost = countIn(*line.lost);
    if (!plants && !lost) return std::nullopt;
    const int potted = plants.value_or(0);
    return PottedContainer{line.container, potted, lost.value_or(std::max(0, line.standing - potted))};
}

void DueCard::goOn(std::size_t line, bool fromLost) {
    if (!fromLost)
        m_lines[line].lost->setFocus(Qt::TabFocusReason);
    else if (line + 1 < m_lines.size())
        m_lines[line + 1].plants->setFocus(Qt::TabFocusReason);
    else
        m_enter->setFocus(Qt::TabFocusReason);
}

void DueCard::showSum() {
    int containers = 0;
    int plants = 0;
    int lost = 0;
    for (const Line& line : m_lines)
        if (const auto potted = pottedIn(line)) {
            ++containers;
            plants += potted->plants;
            lost += potted->lost;
            const QString rest = QString::number(std::max(0, line.standing - potted->plants));
            line.lost->setPlaceholderText(rest);
        } else {
            line.lost->setPlaceholderText({});
        }
    m_sum->setText((m_lines.size() == 1 ? (plants == 1 ? tr("%1 of %2 container: %3 plant, %4 lost")
                                                       : tr("%1 of %2 container: %3 plants, %4 lost"))
                    : plants == 1       ? tr("%1 of %2 containers: %3 plant, %4 lost")
                                        : tr("%1 of %2 containers: %3 plants, %4 lost"))
                       .arg(containers)
                       .arg(m_lines.size())
                       .arg(plants)
                       .arg(lost));
    tell({});
}

void DueCard::enter() {
    if (m_due.task == round::Task::Wean)
        Q_EMIT weanWanted(m_due.batch, m_day);
    else
        potOn();
}

void DueCard::potOn() {
    PotOn wanted{m_due.batch, m_day, {}, {}};
    for (const Line& line : m_lines)
        if (const auto potted = pottedIn(line)) wanted.containers.push_back(*potted);
    if (wanted.containers.empty()) {
        tell(tr("Nothing is counted yet: give the plants of one container at least."));
        begin();
        return;
    }
    Q_EMIT potOnWanted(wanted, m_asStock->isChecked() ? m_stock : std::nullopt);
}

void DueCard::discard() {
    const QString reason = m_reason->text().trimmed();
    if (reason.isEmpty()) {
        tell(tr("To throw the batch away, give the reason first."));
        m_reason->setFocus();
        return;
    }
    Q_EMIT discardWanted({m_due.batch, m_day, {}, reason.toStdString()});
}

void DueCard::tell(const QString& words) {
    m_words->tell(words);
}

void DueCard::begin() {
    if (m_lines.empty())
        m_enter->setFocus();
    else
        m_lines.front().plants->setFocus();
}

} // namespace warmbench::ui
