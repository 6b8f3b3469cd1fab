#include "ui/shell/day_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace warmbench::ui {

DayBar::DayBar(Day today, QWidget* parent)
    : QWidget(parent), m_line(new DayLine(today, this)),
      m_title(new QLabel(tr("Slots taken, by heat"), this)), m_taken(new QLabel(this)),
      m_fullest(new QLabel(this)), m_play(new QPushButton(tr("Play"), this)) {
    setObjectName(QStringLiteral("dayBar"));
    setAttribute(Qt::WA_StyledBackground);
    m_play->setObjectName(QStringLiteral("play"));
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    auto* buttons = new QHBoxLayout;
    auto* backToToday = new QPushButton(tr("Today"), this);
    backToToday->setObjectName(QStringLiteral("today"));
    buttons->setSpacing(4);
    buttons->addWidget(m_play);
    buttons->addWidget(backToToday);
    buttons->addStretch(1);
    words->addWidget(m_title);
    words->addWidget(m_taken);
    words->addWidget(m_fullest);
    words->addStretch(1);
    words->addLayout(buttons);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 4, 12, 4);
    row->setSpacing(8);
    row->addLayout(words);
    row->addWidget(m_line, 1);
    for (QLabel* label : {m_taken, m_fullest}) label->setProperty("rank", QStringLiteral("quiet"));
    connect(m_play, &QPushButton::clicked, this, [this] { m_line->play(!m_line->isPlaying()); });
    connect(backToToday, &QPushButton::clicked, this, [this] { m_line->setDay(m_line->today()); });
    connect(m_line, &DayLine::playingChanged, this,
            [this](bool playing) { m_play->setText(playing ? tr("Stop") : tr("Play")); });
    connect(m_line, &DayLine::dayChanged, this, &DayBar::refresh);
}

void DayBar::setLook(const Palette& palette, const TypeSizes& type, const Wording& wording) {
    m_wording = &wording;
    m_line->setLook(palette, type, wording);
    m_title->setFont(type.strong);
    m_taken->setFont(type.quiet);
    m_fullest->setFont(type.quiet);
    // Wide enough for the longest that is said there, so that nothing moves while the line plays.
    m_taken->setMinimumWidth(
        QFontMetrics(type.quiet).horizontalAdvance(QStringLiteral("30 Sept: 8888 of 8888")));
    refresh();
}

void DayBar::refresh() {
    if (!m_wording) return;
    const SlotLoad& load = m_line->load();
    m_taken->setText(tr("%1: %2 of %3")
                         .arg(m_wording->shortDate(m_line->day()),
                              m_wording->number(load.taken(m_line->day())), m_wording->number(load.usable)));
    const auto fullest = m_line->fullest();
    m_fullest->setText(fullest
                           ? tr("fullest %1: %2")
                                 .arg(m_wording->shortDate(*fullest), m_wording->number(load.taken(*fullest)))
                           : tr("no slot is taken"));
}

} // namespace warmbench::ui
