#include "ui/shell/fact_panel.h"

#include "ui/forecast/forecast_card.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace warmbench::ui {
namespace {

/// As wide as the column of labels is in this type, or as the widest word of one that does not fit into it.
int labelWidth(const QString& words, const QFont& font) {
    const QFontMetrics letters(font);
    int width = letters.horizontalAdvance(QStringLiteral("Root zone now"));
    for (const QString& word : words.split(u' '))
        width = std::max(width, letters.horizontalAdvance(word) + 2);
    return width;
}

} // namespace

FactPanel::FactPanel(QWidget* parent) : QScrollArea(parent), m_forecast(new ForecastCard(this)) {
    setObjectName(QStringLiteral("factPanel"));
    setAccessibleName(tr("About what is selected"));
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setMinimumWidth(236);
    m_forecast->hide();
    connect(m_forecast, &ForecastCard::replanWanted, this, &FactPanel::planWanted);
}

void FactPanel::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_type = type;
    m_forecast->setLook(palette, type, wording);
}

void FactPanel::foresee(const HouseBook& book, const RecipeLibrary& recipes, BatchId batch, Day day) {
    m_forecast->showBatch(book, recipes, batch, day);
}

QLabel* FactPanel::addText(const QString& text, const QFont& font, const char* rank) {
    auto* label = new QLabel(text, m_page);
    label->setFont(font);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    label->setProperty("rank", QString::fromLatin1(rank));
    m_column->addWidget(label);
    return label;
}

void FactPanel::addFact(const Fact& fact) {
    auto* line = new QFrame(m_page);
    line->setObjectName(QStringLiteral("factRule"));
    line->setFixedHeight(1);
    m_column->addWidget(line);
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    auto* label = new QLabel(fact.label, m_page);
    label->setFont(m_type.quiet);
    label->setProperty("rank", QStringLiteral("quiet"));
    label->setWordWrap(true);
    label->setFixedWidth(labelWidth(fact.label, m_type.quiet));
    auto* value = new QLabel(fact.html, m_page);
    value->setTextFormat(Qt::RichText);
    value->setFont(m_type.quiet);
    value->setWordWrap(true);
    value->setTextInteractionFlags(Qt::TextSelectableByMouse);
    row->addWidget(label, 0, Qt::AlignTop);
    row->addWidget(value, 1, Qt::AlignTop);
    m_column->addLayout(row);
}

void FactPanel::show(const Facts& facts) {
    m_page = new QWidget;
    m_page->setObjectName(QStringLiteral("sidePanel"));
    m_column = new QVBoxLayout(m_page);
    m_column->setContentsMargins(16, 16, 16, 16);
    m_column->setSpacing(6);
    if (!facts.above.isEmpty()) addText(facts.above, m_type.quiet, "quiet");
    addText(facts.titleHtml, m_type.title, "title")->setTextFormat(Qt::RichText);
    if (!facts.subtitle.isEmpty()) addText(facts.subtitle, m_type.quiet, "quiet");
    for (const QString& trouble : facts.troubles) addText(trouble, m_type.quiet, "trouble");
    if (facts.strikes) {
        auto* strike = new QPushButton(tr("Strike today"), m_page);
        strike->setObjectName(QStringLiteral("strikeToday"));
        strike->setProperty("primary", true);
        const BatchId batch = *facts.strikes;
        connect(strike, &QPushButton::clicked, this, [this, batch] { Q_EMIT strikeWanted(batch); });
        m_column->addWidget(strike, 0, Qt::AlignLeft);
    }
    m_forecast->hide();
    m_column->addWidget(m_forecast);
    for (const Fact& fact : facts.facts) addFact(fact);
    if (!facts.care.isEmpty()) {
        m_column->addSpacing(8);
        addText(tr("Care"), m_type.strong, "body");
        for (const QString& care : facts.care) addText(care, m_type.quiet, "quiet");
    }
    m_column->addStretch(1);
    setWidget(m_page);
}

} // namespace warmbench::ui
