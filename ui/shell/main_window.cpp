#include "ui/shell/main_window.h"

#include "core/book/load.h"
#include "core/book/query.h"
#include "core/placing/other_days.h"
#include "ui/away/homecoming_dialog.h"
#include "ui/backups/backups_dialog.h"
#include "ui/climate/climate_place.h"
#include "ui/dayline/stay_bars.h"
#include "ui/draft/draft_bar.h"
#include "ui/form/labels.h"
#include "ui/form/undo_through.h"
#include "ui/journal/journal_place.h"
#include "ui/journal/past_bar.h"
#include "ui/month/month_place.h"
#include "ui/plan/plan_dialog.h"
#include "ui/results/results_place.h"
#include "ui/round/round_place.h"
#include "ui/setup/setup_place.h"
#include "ui/shell/day_bar.h"
#include "ui/shell/find_box.h"
#include "ui/shell/house_page.h"
#include "ui/shell/place_row.h"
#include "ui/shell/start_page.h"
#include "ui/shell/strike_list_place.h"
#include "ui/today/today_place.h"
#include "ui/wants/stocks_place.h"
#include "ui/wants/targets_place.h"

#include <QApplication>
#include <QLabel>
#include <QMenu>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace warmbench::ui {
MainWindow::MainWindow(BookOpener& opener, Day today)
    : m_opener(opener), m_today(today), m_palette(&lightPalette()), m_type(typeSizes(QApplication::font())),
      m_menus(*this), m_pages(new QStackedWidget(this)), m_start(new StartPage(m_pages)),
      m_placeRow(new PlaceRow(this)),
      m_backupTrouble(new TroubleLabel(QStringLiteral("backupTrouble"), this)),
      m_onlyRead(new TroubleLabel(QStringLiteral("onlyRead"), this)), m_places(new QStackedWidget(this)),
      m_house(new HousePage(m_menus, m_places)), m_round(new RoundPlace(m_places)),
      m_dayBar(new DayBar(today, this)), m_pastBar(new PastBar(*m_menus.now, this)),
      m_draftBar(new DraftBar(this)), m_proposedWords(new QLabel(this)) {
    setObjectName(QStringLiteral("mainWindow"));
    setWindowTitle(tr("Warmbench"));
    addPlace(QStringLiteral("house"), tr("House"), m_house);
    addPlace(new TodayPlace(m_places));
    addPlace(new StrikeListPlace(m_places));
    addPlace(m_round);
    addPlace(new ClimatePlace(m_places));
    addPlace(new ResultsPlace(m_places));
    addPlace(new TargetsPlace(m_places));
    addPlace(new MonthPlace(m_places));
    addPlace(new StocksPlace(m_places));
    addPlace(new SetupPlace(m_places));
    auto* journal = new JournalPlace([this] { return m_session->journal(); }, m_places);
    addPlace(journal);
    m_placeRow->setCurrent(housePlace);
    auto* open = new QWidget(m_pages);
    auto* column = new QVBoxLayout(open);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_placeRow);
    column->addWidget(m_onlyRead);
    column->addWidget(m_backupTrouble);
    m_proposedWords->setObjectName(QStringLiteral("proposedWords"));
    m_proposedWords->setText(
        tr("<b>As it is planned</b>, with what is ticked. Nothing of it is in the book yet."));
    m_proposedWords->setWordWrap(true);
    m_proposedWords->hide();
    column->addWidget(m_draftBar);
    column->addWidget(m_pastBar);
    column->addWidget(m_proposedWords);
    column->addWidget(m_places, 1);
    column->addWidget(m_dayBar);
    m_pages->addWidget(m_start);
    m_pages->addWidget(open);
    setCentralWidget(m_pages);
    statusBar(); // from the start: what is told in it must not move what is under the pointer
    connectMenus();
    new UndoThrough(*this);
    connect(m_house, &HousePage::chosen, this, &MainWindow::choose);
    connect(journal, &JournalPlace::pastWanted, this, &MainWindow::showPast);
    connect(m_pastBar, &PastBar::earlierWanted, this, [this] { stepPast(-1); });
    connect(m_pastBar, &PastBar::laterWanted, this, [this] { stepPast(1); });
    connect(m_draftBar, &DraftBar::goOnWanted, this, &MainWindow::goOnWith);
    connect(m_house, &HousePage::menuWanted, this, &MainWindow::showBatchMenu);
    connect(m_house, &HousePage::strikeWanted, this, &MainWindow::strikeSelected);
    connect(m_house, &HousePage::planWanted, this, [this] {
        if (!m_past) planDays();
    });
    connect(m_house, &HousePage::placed, this, &MainWindow::performOnMap);
    connect(&m_dayBar->line(), &DayLine::dayChanged, this, &MainWindow::showDay);
    connect(&m_dayBar->line(), &DayLine::stayDaysWanted, this, [this](StayId stay, Day from, Day to) {
        const auto command = placing::otherDays(shown(), stay, from, to);
        if (command)
            performOnMap(*command);
        else
            m_house->tell(command.refusal());
    });
    connect(m_start, &StartPage::newWanted, this, &MainWindow::chooseFileToCreate);
    connect(m_start, &StartPage::openWanted, this, &MainWindow::chooseFileToOpen);
    restoreState();
    applyLook();
    setSession(nullptr);
}

MainWindow::~MainWindow() = default;

void MainWindow::addPlace(const QString& name, const QString& title, QWidget* widget) {
    const int place = m_places->addWidget(widget);
    m_placeRow->addPlace(name, title);
    QAction* action = m_menus.places->addAction(title);
    action->setObjectName(name);
    if (place < 9) action->setShortcut(QKeySequence(QStringLiteral("Ctrl+%1").arg(place + 1)));
    connect(action, &QAction::triggered, this, [this, place] { showPlace(place); });
}

void MainWindow::addPlace(Place* place) {
    addPlace(place->name(), place->title(), place);
    place->setPerformer([this](const Command& command) { return perform(command); });
    connect(place, &Place::batchMenuWanted, this, &MainWindow::showBatchMenu);
    connect(place, &Place::shownOnMap, this, &MainWindow::showOnMap);
    connect(place, &Place::placeWanted, this,
            [this](const QString& name) { findChild<QAction*>(name)->trigger(); });
    m_listed.push_back(place);
}

void MainWindow::setSession(std::unique_ptr<BookSession> session) {
    m_dayBar->line().setSource({});
    delete m_plan;
    if (m_backups) m_backups->close();
    delete m_homecoming;
    m_past.reset();
    m_proposed.reset();
    m_proposedWords->hide();
    m_pastBar->hide();
    if (m_drafts) m_drafts->flush(); // while the forms still show the book that is left
    m_session = std::move(session);
    openDrafts();
    m_forecasts.forget();
    m_selection = {};
    m_pages->setCurrentIndex(m_session ? 1 : 0);
    if (m_session) {
        connect(m_session.get(), &BookSession::changed, this, [this](const Change& change) {
            if (m_past || m_proposed) return; // what others change is shown with the way back to now
            // An empty change says that all may be different.
            if (change.edits.empty())
                m_forecasts.forget();
            else
                m_forecasts.update(m_session->book(), change);
            showBook();
        });
        connect(m_session.get(), &BookSession::standingChanged, this,
                [this] { m_onlyRead->tell(m_session->onlyReadWhy()); });
        m_dayBar->line().setSource([this](Day from, Day to) { return slotLoad(shown(), from, to); });
        setWindowTitle(tr("%1 - Warmbench").arg(m_session->name()));
        m_onlyRead->tell(m_session->onlyReadWhy());
        showBook();
        if (m_places->currentWidget() == m_house)
            m_house->map().setFocus();
        else
            m_places->currentWidget()->setFocus();
    }
    updateActions();
}

std::unique_ptr<BookSession> MainWindow::takeSession() {
    auto session = std::move(m_session);
    if (session) session->disconnect(this);
    setSession(nullptr);
    return session;
}

void MainWindow::showBook() {
    const HouseBook& book = shown();
    m_letters = Letters(book);
    const std::string& given = book.nursery().name;
    m_placeRow->setBookName(given.empty() ? m_session->name() : text(given));
    const auto* batch = std::get_if<BatchId>(&m_selection);
    const auto* zone = std::get_if<ZoneId>(&m_selection);
    if ((batch && !book.find<Batch>(*batch)) || (zone && !book.find<Zone>(*zone))) m_selection = {};
    m_house->showBook(book, m_letters);
    m_dayBar->line().refresh();
    showStays();
    showDay();
}

void MainWindow::refreshPlace() {
    if (!m_session) return;
    for (Place* place : m_listed)
        if (place == m_places->currentWidget())
            place->showBook({shown(), day(), m_today, m_letters, m_opener.recipes(), m_forecasts});
}

void MainWindow::showDay() {
    if (!m_session) return;
    m_house->showDay(shown(), day(), m_letters, m_today);
    m_dayBar->refresh();
    if (std::holds_alternative<ZoneId>(m_selection)) showStays();
    showFacts();
    refreshPlace();
}

void MainWindow::showFacts() {
    const HouseBook& book = shown();
    const auto* batch = std::get_if<BatchId>(&m_selection);
    const auto* zone = std::get_if<ZoneId>(&m_selection);
    m_house->select(m_selection, batch  ? batchFacts(book, *batch, day(), m_wording, m_today)
                                 : zone ? zoneFacts(book, *zone, day(), m_letters, m_wording, m_today)
                                        : bookFacts(book, day(), m_wording));
    if (batch) m_house->foresee(book, m_opener.recipes(), *batch, day());
    updateActions();
}

/// The bars of what is selected, under the day line.
void MainWindow::showStays() {
    DayLine& line = m_dayBar->line();
    const auto* batch = std::get_if<BatchId>(&m_selection);
    const auto* zone = std::get_if<ZoneId>(&m_selection);
    line.setStays(batch  ? stayBars(shown(), *batch, m_today, m_wording)
                  : zone ? stayBars(shown(), *zone, line.firstDay(), line.endDay(), m_today, m_wording)
                         : std::vector<StayBar>{});
}

void MainWindow::choose(const Selection& selection) {
    m_selection = selection;
    m_house->tell(std::nullopt);
    const auto* batch = std::get_if<BatchId>(&selection);
    if (batch && !stayOn(shown(), *batch, day())) {
        const std::vector<const Stay*> stays = staysInOrder(shown(), *batch);
        if (!stays.empty()) setDay(stays.front()->from);
    }
    showStays();
    showFacts();
}

Day MainWindow::day() const {
    return m_dayBar->line().day();
}

void MainWindow::setDay(Day day) {
    m_dayBar->line().setDay(day);
}

void MainWindow::showPlace(int place) {
    m_places->setCurrentIndex(place);
    m_placeRow->setCurrent(place);
    const auto* listed = qobject_cast<Place*>(m_places->currentWidget());
    m_dayBar->setVisible(!listed || listed->hasDayLine());
    refreshPlace();
    m_places->currentWidget()->setFocus();
}

void MainWindow::showOnMap(const Selection& selection) {
    showPlace(housePlace);
    choose(selection);
    m_house->map().setFocus();
}

const Batch* MainWindow::selectedBatch() const {
    const auto* batch = std::get_if<BatchId>(&m_selection);
    return batch && m_session ? shown().find<Batch>(*batch) : nullptr;
}

} // namespace warmbench::ui
