#include "ui/round/round_place.h"

#include "core/book/progress.h"
#include "core/book/query.h"
#include "core/book/whereabouts.h"
#include "core/crop/safety.h"
#include "core/round/weaning.h"
#include "core/season/renewal.h"
#include "ui/draft/draft_watch.h"
#include "ui/form/table.h"
#include "ui/round/check_card.h"
#include "ui/round/due_card.h"
#include "ui/words/phrase_words.h"

#include <QLabel>
#include <QProgressBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace warmbench::ui {
namespace {

constexpr int cardWidth = 400;

} // namespace

RoundPlace::RoundPlace(QWidget* parent)
    : Place(QStringLiteral("round"), tr("Round"), parent), m_title(new QLabel(this)),
      m_count(new QLabel(this)), m_bar(new QProgressBar(this)), m_dueTitle(new QLabel(tr("Due"), this)),
      m_cards(new QStackedWidget(this)), m_check(new CheckCard(m_cards)), m_dueCard(new DueCard(m_cards)),
      m_checkWatch(new DraftWatch(*m_check)), m_dueWatch(new DraftWatch(*m_dueCard)),
      m_nothing(new QLabel(m_cards)) {
    m_title->setObjectName(QStringLiteral("roundTitle"));
    m_count->setObjectName(QStringLiteral("roundCount"));
    m_bar->setTextVisible(false);
    m_bar->setFixedSize(160, 8);
    m_stopList = makeTable(
        QStringLiteral("roundStops"), tr("Containers worth a look, in walking order"),
        {tr("No."), tr("Container"), tr("Taxon"), tr("Place"), tr("Pick"), tr("Found"), tr("Why")}, this);
    m_dueList = makeTable(
        QStringLiteral("roundDue"), tr("Batches that are due"),
        {tr("Batch"), tr("Do"), tr("Since"), tr("Taxon"), tr("Place"), tr("Plants"), tr("Why")}, this);
    for (QTreeWidget* list : {m_stopList, m_dueList}) wrapLastColumn(*list);
    m_nothing->setWordWrap(true);
    m_nothing->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_nothing->setMargin(16);
    for (QWidget* card : std::initializer_list<QWidget*>{m_check, m_dueCard, m_nothing})
        m_cards->addWidget(card);
    m_cards->setObjectName(QStringLiteral("sidePanel"));
    m_cards->setMinimumWidth(cardWidth);

    auto* head = new QHBoxLayout;
    head->setContentsMargins(16, 10, 16, 6);
    head->addWidget(m_title);
    head->addStretch();
    head->addWidget(m_count);
    head->addSpacing(8);
    head->addWidget(m_bar);
    auto* due = new QWidget(this);
    auto* dueColumn = new QVBoxLayout(due);
    dueColumn->setContentsMargins(0, 8, 0, 0);
    auto* dueHead = new QHBoxLayout;
    dueHead->setContentsMargins(16, 0, 16, 0);
    dueHead->addWidget(m_dueTitle);
    dueColumn->addLayout(dueHead);
    dueColumn->addWidget(m_dueList);
    auto* lists = new QSplitter(Qt::Vertical, this);
    lists->addWidget(m_stopList);
    lists->addWidget(due);
    lists->setStretchFactor(0, 3);
    lists->setStretchFactor(1, 2);
    auto* left = new QWidget(this);
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(head);
    column->addWidget(lists, 1);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(left, 1);
    row->addWidget(m_cards);

    connect(m_stopList, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
        if (item) goTo(static_cast<std::size_t>(m_stopList->indexOfTopLevelItem(item)));
    });
    offerBatchMenu(m_stopList, [this](int line) { return m_stops[static_cast<std::size_t>(line)].batch; });
    offerBatchMenu(m_dueList, [this](int line) { return m_due[static_cast<std::size_t>(line)].batch; });
    connect(m_stopList, &QTreeWidget::itemActivated, this, [this] { m_check->begin(); });
    connect(m_dueList, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
        if (!item) return;
        m_onDue = true;
        showCard();
    });
    connect(m_dueList, &QTreeWidget::itemClicked, this, [this] {
        m_onDue = true;
        showCard();
    });
    connect(m_dueList, &QTreeWidget::itemActivated, this, [this](QTreeWidgetItem* item) {
        const round::Due& one = m_due[static_cast<std::size_t>(m_dueList->indexOfTopLevelItem(item))];
        if (one.task == round::Task::Wean)
            wean(one.batch, m_day);
        else
            m_dueCard->begin();
    });
    connect(m_stopList, &QTreeWidget::itemClicked, this, [this](QTreeWidgetItem* item) {
        goTo(static_cast<std::size_t>(m_stopList->indexOfTopLevelItem(item)));
    });
    connect(m_check, &CheckCard::entered, this, &RoundPlace::record);
    connect(m_check, &CheckCard::discardWanted, this, &RoundPlace::discardContainer);
    connect(m_check, &CheckCard::leftForLater, this, &RoundPlace::goToNext);
    connect(m_check, &CheckCard::stepped, this, &RoundPlace::step);
    connect(m_dueCard, &DueCard::weanWanted, this, &RoundPlace::wean);
    connect(m_dueCard, &DueCard::potOnWanted, this, [this](const PotOn& potOn, std::optional<StockId> stock) {
        doDue(stock ? season::potOnAsStock(*m_book, potOn, m_book->get<Stock>(*stock)) : Command{potOn});
    });
    connect(m_dueCard, &DueCard::discardWanted, this, [this](const Discard& discard) { doDue({discard}); });
}

void RoundPlace::showBook(const BookView& view) {
    const forecast::BookForecast& forecast = view.forecasts.on(view.book, view.day);
    m_due = round::dueOn(view.book, forecast);
    const bool sameRound = m_book == &view.book && m_day == view.day;
    m_book = &view.book;
    m_day = view.day;
    m_today = view.today;
    m_title->setFont(type().title);
    m_dueTitle->setFont(type().strong);
    m_check->setTitleFont(type().title);
    m_dueCard->setTitleFont(type().title);
    m_title->setText(tr("Round of %1").arg(wording().longDate(m_day)));
    if (sameRound) {
        setStops(view);
    } else {
        m_stops = round::roundOn(view.book, forecast);
        m_at = firstLeft(0).value_or(0);
        m_onDue = m_stops.empty() && !m_due.empty();
    }
    listStops();
    listDue();
    showProgress();
    showCard();
}

/// Brings the stops of the round that goes on up to date: one that was taken back is shown again, the next
/// one after what was done.
void RoundPlace::setStops(const BookView& view) {
    std::optional<std::size_t> takenBack;
    for (std::size_t i = 0; i < m_stops.size(); ++i) {
        round::Stop& stop = m_stops[i];
        const bool wasFound = stop.found.has_value();
        const Batch* batch = view.book.find<Batch>(stop.batch);
        stop.standing = batch ? standing(view.book, *batch, stop.container, m_day) : 0;
        stop.found.reset();
        const RootCheck* check = latestCheck(view.book, stop.batch, stop.container, m_day);
        if (check && check->day == m_day) stop.found = check->id;
        if (wasFound && !stop.found) takenBack = i;
    }
    std::erase_if(m_stops, [&](const round::Stop& stop) { return !view.book.find<Batch>(stop.batch); });
    if (takenBack && *takenBack < m_stops.size()) {
        m_at = *takenBack;
        m_onDue = false;
    } else if (m_ahead) {
        m_at = firstLeft(m_at).value_or(m_at);
    }
    m_at = std::min(m_at, m_stops.empty() ? 0 : m_stops.size() - 1);
}

std::optional<std::size_t> RoundPlace::firstLeft(std::size_t from) const {
    for (std::size_t i = 0; i < m_stops.size(); ++i) {
        const std::size_t at = (from + i) % m_stops.size();
        if (!m_stops[at].found && m_stops[at].standing > 0) return at;
    }
    return std::nullopt;
}

QString RoundPlace::foundWords(const round::Stop& stop) const {
    if (stop.standing == 0 && !stop.found) return tr("empty");
    if (!stop.found) return {};
    const RootCheck& check = m_book->get<RootCheck>(*stop.found);
    return tr("%1 of %2 rooted").arg(check.rooted).arg(check.examined);
}

void RoundPlace::listStops() {
    const QSignalBlocker quiet(m_stopList);
    m_stopList->clear();
    int number = 0;
    for (const round::Stop& stop : m_stops) {
        const Batch& batch = m_book->get<Batch>(stop.batch);
        auto* item = new QTreeWidgetItem(
            {wording().number(++number), text(containerCode(batch.code, stop.container)),
             text(m_book->get<Taxon>(batch.taxon).name), text(zoneTitle(*m_book, stop.zone)),
             wording().number(stop.examine), foundWords(stop), told(stop.why, wording())});
        item->setToolTip(6, told(stop.why, wording()));
        if (stop.found)
            for (int column = 0; column < m_stopList->columnCount(); ++column)
                item->setForeground(column, look().quietInk);
        m_stopList->addTopLevelItem(item);
    }
    fitColumns(*m_stopList);
}

void RoundPlace::listDue() {
    const QSignalBlocker quiet(m_dueList);
    const int row = m_dueList->indexOfTopLevelItem(m_dueList->currentItem());
    m_dueList->clear();
    for (const round::Due& due : m_due) {
        const Batch& batch = m_book->get<Batch>(due.batch);
        auto* item =
            new QTreeWidgetItem({text(batch.code), due.task == round::Task::Wean ? tr("wean") : tr("pot on"),
                                 wording().shortDate(due.since), text(m_book->get<Taxon>(batch.taxon).name),
                                 told(whereOn(*m_book, due.batch, m_day), wording()),
                                 wording().number(due.plants), told(due.why, wording())});
        item->setToolTip(6, told(due.why, wording()));
        m_dueList->addTopLevelItem(item);
    }
    fitColumns(*m_dueList);
    if (m_onDue && !m_due.empty())
        m_dueList->setCurrentItem(
            m_dueList->topLevelItem(std::clamp(row, 0, m_dueList->topLevelItemCount() - 1)));
    m_dueTitle->setText(m_due.empty() ? tr("Nothing is due")
                                      : tr("Due: %1. Enter weans, or goes to the counts for potting on")
                                            .arg(wording().number(static_cast<int>(m_due.size()))));
}

void RoundPlace::showProgress() {
    const auto done = std::count_if(m_stops.begin(), m_stops.end(),
                                    [](const round::Stop& stop) { return stop.found || stop.standing == 0; });
    m_bar->setMaximum(std::max<int>(1, static_cast<int>(m_stops.size())));
    m_bar->setValue(static_cast<int>(done));
    m_count->setText(m_stops.empty() ? tr("no container is worth a look")
                                     : tr("%1 of %2").arg(done).arg(m_stops.size()));
}

void RoundPlace::showCard() {
    m_checkWatch->leave();
    m_dueWatch->leave();
    const int dueRow = m_dueList->indexOfTopLevelItem(m_dueList->currentItem());
    if (m_onDue && dueRow >= 0) {
        const QSignalBlocker quiet(m_stopList);
        m_stopList->setCurrentItem(nullptr);
        showDueCard(m_due[static_cast<std::size_t>(dueRow)]);
        m_cards->setCurrentWidget(m_dueCard);
        setFocusProxy(m_dueList);
        return;
    }
    m_onDue = false;
    {
        const QSignalBlocker quiet(m_dueList);
        m_dueList->setCurrentItem(nullptr);
    }
    if (m_stops.empty()) {
        m_nothing->setText(
            tr("No container is worth a look on this day: all were looked at lately, or are too "
               "young to be lifted.\n\nGo to another day on the house's day line to see its round."));
        m_cards->setCurrentWidget(m_nothing);
        setFocusProxy(m_dueList);
        return;
    }
    {
        const QSignalBlocker quiet(m_stopList);
        m_stopList->setCurrentItem(m_stopList->topLevelItem(static_cast<int>(m_at)));
    }
    showCheckCard(m_stops[m_at]);
    m_cards->setCurrentWidget(m_check);
    setFocusProxy(m_check);
}

void RoundPlace::goTo(std::size_t stop) {
    m_at = stop;
    m_onDue = false;
    showCard();
}

void RoundPlace::goToNext() {
    if (const auto next = firstLeft(m_at + 1)) goTo(*next);
    m_check->begin();
}

void RoundPlace::step(int stops) {
    const auto last = static_cast<int>(m_stops.size()) - 1;
    goTo(static_cast<std::size_t>(std::clamp(static_cast<int>(m_at) + stops, 0, last)));
    m_check->begin();
}

void RoundPlace::record(const RootCheck& check) {
    const std::optional<RootCheckId> before = m_stops[m_at].found;
    if (!before) {
        performAndGoOn({RecordCheck{check}});
        return;
    }
    const std::string container = containerCode(m_book->get<Batch>(check.batch).code, check.container);
    performAndGoOn({Group{phrase("Mend a root check of %1", container).text(),
                          {Command{RemoveCheck{*before}}, Command{RecordCheck{check}}}}});
}

void RoundPlace::discardContainer(const QString& reason) {
    const round::Stop& stop = m_stops[m_at];
    performAndGoOn({Discard{stop.batch, m_day, {stop.container}, reason.toStdString()}});
}

void RoundPlace::performAndGoOn(const Command& command) {
    if (m_day > m_today) return m_check->tell(tr("This day is still to come; nothing of it is done yet."));
    m_ahead = true;
    m_checkWatch->end();
    const Outcome refusal = perform(command);
    m_ahead = false;
    if (refusal) {
        m_checkWatch->again();
        m_check->tell(told(*refusal, wording()));
    } else {
        m_check->begin();
    }
}

void RoundPlace::doDue(const Command& command) {
    // As with checks: a day to come can be looked at, not done.
    if (m_day > m_today) return m_dueCard->tell(tr("This day is still to come; nothing of it is done yet."));
    m_dueWatch->end();
    if (const Outcome refusal = perform(command)) {
        m_dueWatch->again();
        m_dueCard->tell(told(*refusal, wording()));
    } else {
        m_dueList->setFocus();
    }
}

void RoundPlace::wean(BatchId batch, Day day) {
    const auto command = round::weanCommand(*m_book, batch, day);
    if (command)
        doDue(*command);
    else
        m_dueCard->tell(told(command.refusal(), wording()));
}

} // namespace warmbench::ui
