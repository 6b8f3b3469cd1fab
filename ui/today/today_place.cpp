#include "ui/today/today_place.h"

#include "core/book/query.h"
#include "core/book/whereabouts.h"
#include "core/round/weaning.h"
#include "ui/form/labels.h"
#include "ui/form/table.h"
#include "ui/paper/day_sheet.h"
#include "ui/paper/plot_view.h"
#include "ui/paper/slot_map.h"
#include "ui/paper/strike_list.h"
#include "ui/words/phrase_words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTextBrowser>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace warmbench::ui {
namespace {

enum TaskColumn : int { TaskWhat, TaskBatch, TaskTaxon, TaskHowMany, TaskWhere };

} // namespace

TodayPlace::TodayPlace(QWidget* parent)
    : Place(QStringLiteral("dayWork"), tr("Today"), parent), m_title(wrappedLabel(this)),
      m_list(makeTable(QStringLiteral("todayList"), tr("What there is to do"),
                       {tr("Do"), tr("Batch"), tr("Taxon"), tr("How many"), tr("Where and why")}, this)),
      m_slots(new PlotView(this)), m_notes(new QTextBrowser(this)), m_do(new QPushButton(tr("&Done"), this)),
      m_asPlanned(new QPushButton(this)), m_map(new QPushButton(tr("Show on the &map"), this)),
      m_refusal(new TroubleLabel(QStringLiteral("todayRefusal"), this)) {
    m_title->setObjectName(QStringLiteral("todayTitle"));
    m_slots->setObjectName(QStringLiteral("todaySlots"));
    m_slots->setAccessibleName(tr("Where it stands"));
    m_notes->setObjectName(QStringLiteral("todayNotes"));
    m_notes->setAccessibleName(tr("What to take, prepare and mind"));
    m_do->setObjectName(QStringLiteral("todayDone"));
    m_do->setProperty("primary", true);
    m_asPlanned->setObjectName(QStringLiteral("todayAsPlanned"));
    m_map->setObjectName(QStringLiteral("todayMap"));
    wrapLastColumn(*m_list);
    m_notes->setWordWrapMode(QTextOption::WordWrap); // a narrow column is as wide as its longest word
    setFocusProxy(m_list);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_do);
    buttons->addWidget(m_asPlanned);
    buttons->addWidget(m_map);
    buttons->addStretch(1);
    auto* left = new QVBoxLayout;
    left->addWidget(m_title);
    left->addWidget(m_list, 1);
    left->addWidget(m_refusal);
    left->addLayout(buttons);
    auto* both = new QHBoxLayout(this);
    both->setContentsMargins(20, 16, 20, 12);
    both->setSpacing(16);
    both->addLayout(left, 3);
    auto* right = new QVBoxLayout;
    right->addWidget(m_slots);
    right->addWidget(m_notes, 1);
    both->addLayout(right, 2);
    connect(m_do, &QPushButton::clicked, this, &TodayPlace::doCurrent);
    connect(m_asPlanned, &QPushButton::clicked, this, [this] {
        if (const auto planned = plannedWeaning()) doCurrentOn(*planned);
    });
    connect(m_map, &QPushButton::clicked, this, &TodayPlace::showCurrentOnMap);
    offerBatchMenu(m_list, [this](int line) -> std::optional<BatchId> {
        const Task& task = m_tasks[static_cast<std::size_t>(line)];
        if (task.kind == Kind::Round) return std::nullopt;
        return task.batch;
    });
    connect(m_list, &QTreeWidget::itemActivated, this, &TodayPlace::doCurrent);
    connect(m_list, &QTreeWidget::currentItemChanged, this, &TodayPlace::enableButtons);
}

void TodayPlace::showBook(const BookView& view) {
    m_book = &view.book;
    m_letters = view.letters;
    m_day = view.day;
    m_today = view.today;
    m_refusal->tell(QString());
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    const season::DayWork work = season::dayWork(view.book, view.forecasts.on(view.book, view.day));
    m_tasks.clear();
    m_list->clear();
    for (const BatchId id : work.strikes) {
        const Batch& batch = view.book.get<Batch>(id);
        const std::vector<const Stay*> stays = staysInOrder(view.book, id);
        const QString place =
            stays.empty() ? tr("no place yet") : placeText(view.book, *stays.front(), wording());
        addTask({Kind::Strike, id},
                {batch.strikeDay < m_day
                     ? tr("strike, left from %1").arg(wording().shortDate(batch.strikeDay))
                     : tr("strike"),
                 text(batch.code), text(view.book.get<Taxon>(batch.taxon).name),
                 wording().cuttings(batch.cuttings()), place});
    }
    for (const round::Due& due : work.due) {
        const Batch& batch = view.book.get<Batch>(due.batch);
        const bool weaning = due.task == round::Task::Wean;
        addTask({weaning ? Kind::Wean : Kind::PotOn, due.batch},
                {weaning ? tr("wean") : tr("pot on"), text(batch.code),
                 text(view.book.get<Taxon>(batch.taxon).name),
                 tr("about %1").arg(wording().number(due.plants)),
                 told(whereOn(view.book, due.batch, m_day), wording()) + QStringLiteral(": ") +
                     told(due.why, wording())});
    }
    if (!work.stops.empty())
        addTask({Kind::Round, work.stops.front().batch},
                {tr("check"),
                 {},
                 {},
                 wording().number(static_cast<int>(work.stops.size())),
                 tr("containers worth a look, in the order of the walk")});
    m_title->setText(QStringLiteral("<b>") + wording().longDate(m_day).toHtmlEscaped() +
                     QStringLiteral("</b> · ") +
                     (!m_tasks.empty()    ? tr("Enter does what is chosen")
                      : work.mats.empty() ? tr("nothing is to be done")
                                          : tr("nothing is to be done but to set mats")));
    fitColumns(*m_list);
    if (!m_tasks.empty())
        m_list->setCurrentItem(
            m_list->topLevelItem(std::clamp(row, 0, static_cast<int>(m_tasks.size()) - 1)));
    m_notes->setHtml(dayNotesHtml(view.book, work, wording()));
    enableButtons();
}

void TodayPlace::addTask(const Task& task, const QStringList& cells) {
    m_tasks.push_back(task);
    auto* item = new QTreeWidgetItem(m_list, cells);
    item->setTextAlignment(TaskHowMany, Qt::AlignRight | Qt::AlignVCenter);
    item->setToolTip(TaskWhere, cells[TaskWhere]);
}

const TodayPlace::Task* TodayPlace::current() const {
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    return row >= 0 && row < static_cast<int>(m_tasks.size()) ? &m_tasks[static_cast<std::size_t>(row)]
                                                              : nullptr;
}

void TodayPlace::doCurrent() {
    doCurrentOn(m_day);
}

void TodayPlace::doCurrentOn(Day day) {
    const Task* task = current();
    if (!task) return;
    // A day to come can be looked at, not done.
    if (m_day > m_today) return m_refusal->tell(tr("This day is still to come; nothing of it is done yet."));
    const BatchId batch = task->batch;
    switch (task->kind) {
    case Kind::Strike:
        return m_refusal->tell(perform(Command{StrikeBatch{batch, day}}));
    case Kind::Wean: {
        const auto command = round::weanCommand(*m_book, batch, day);
        m_refusal->tell(command ? perform(*command) : Outcome(command.refusal()));
        return m_list->setFocus(); // the button that was pressed may be gone with its task
    }
    case Kind::PotOn:
    case Kind::Round:
        Q_EMIT placeWanted(QStringLiteral("round"));
    }
}

std::optional<Day> TodayPlace::plannedWeaning() const {
    const Task* task = current();
    if (!task || task->kind != Kind::Wean) return std::nullopt;
    const auto planned = round::weanedByPlanOnly(*m_book, task->batch, m_day);
    return planned && *planned < m_day ? planned : std::nullopt;
}

void TodayPlace::showCurrentOnMap() {
    if (const Task* task = current(); task && task->kind != Kind::Round) Q_EMIT shownOnMap(task->batch);
}

void TodayPlace::showSlots() {
    const Task* task = current();
    if (!task || !m_book || task->kind == Kind::Round) return m_slots->showPlot({});
    // What is to be struck has no place before its day, and what is overdue none after its stay.
    const std::vector<ZoneId> zones = zonesLastOn(*m_book, task->batch, m_day);
    const auto zone = zones.empty() ? firstZoneOf(*m_book, task->batch) : zones.front();
    if (!zone) return m_slots->showPlot({});
    const SlotMapLook colours{look().ink, look().panel, look().quietInk, look().accent,
                              look().textOn(look().accent)};
    m_slots->showPlot(slotMap(*m_book, *zone, m_day, {task->batch}, m_letters, wording(), colours));
    m_slots->setAccessibleDescription(m_list->currentItem()->text(TaskWhere));
}

void TodayPlace::enableButtons() {
    showSlots();
    const Task* task = current();
    m_do->setEnabled(task != nullptr);
    const auto planned = plannedWeaning();
    m_asPlanned->setVisible(planned.has_value());
    if (planned) m_asPlanned->setText(tr("Was &weaned on %1").arg(wording().shortDate(*planned)));
    m_map->setEnabled(task && task->kind != Kind::Round);
    m_do->setText(task && (task->kind == Kind::PotOn || task->kind == Kind::Round) ? tr("Go to the &round")
                                                                                   : tr("&Done"));
}

} // namespace warmbench::ui
