#include "ui/shell/main_window.h"

#include "core/book/load.h"
#include "core/book/query.h"
#include "ui/form/labels.h"
#include "ui/map/map_sheet.h"
#include "ui/paper/print_dialog.h"
#include "ui/plan/plan_dialog.h"
#include "ui/round/round_place.h"
#include "ui/setup/setup_place.h"
#include "ui/shell/day_bar.h"
#include "ui/shell/find_box.h"
#include "ui/shell/house_page.h"
#include "ui/shell/place_row.h"
#include "ui/shell/shared_book_dialog.h"
#include "ui/shell/start_page.h"
#include "ui/shell/strike_list_place.h"
#include "ui/shell/style.h"
#include "ui/today/today_place.h"
#include "ui/wants/stocks_place.h"
#include "ui/wants/targets_place.h"

#include <QActionGroup>
#include <QApplication>
#include <QCloseEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMessageBox>
#include <QSettings>
#include <QStackedWidget>
#include <QStatusBar>
#include <QVBoxLayout>

namespace warmbench::ui {
namespace {

constexpr int housePlace = 0;

bool desktopIsDark() {
    const QPalette palette = QApplication::palette();
    return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

QSettings settings() {
    return QSettings(QStringLiteral("Warmbench"), QStringLiteral("Warmbench"));
}

} // namespace

MainWindow::MainWindow(BookOpener& opener, Day today)
    : m_opener(opener), m_today(today), m_palette(&lightPalette()), m_type(typeSizes(QApplication::font())),
      m_menus(*this), m_pages(new QStackedWidget(this)), m_start(new StartPage(m_pages)),
      m_placeRow(new PlaceRow(this)), m_onlyRead(new TroubleLabel(QStringLiteral("onlyRead"), this)),
      m_places(new QStackedWidget(this)), m_house(new HousePage(m_menus, m_places)),
      m_dayBar(new DayBar(today, this)) {
    setObjectName(QStringLiteral("mainWindow"));
    setWindowTitle(tr("Warmbench"));
    addPlace(QStringLiteral("house"), tr("House"), m_house);
    addPlace(new TodayPlace(m_places));
    addPlace(new StrikeListPlace(m_places));
    addPlace(new RoundPlace(m_places));
    addPlace(new TargetsPlace(m_places));
    addPlace(new StocksPlace(m_places));
    addPlace(new SetupPlace(m_places));
    m_placeRow->setCurrent(housePlace);
    auto* open = new QWidget(m_pages);
    auto* column = new QVBoxLayout(open);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_placeRow);
    column->addWidget(m_onlyRead);
    column->addWidget(m_places, 1);
    column->addWidget(m_dayBar);
    m_pages->addWidget(m_start);
    m_pages->addWidget(open);
    setCentralWidget(m_pages);
    connectMenus();
    connect(m_house, &HousePage::chosen, this, &MainWindow::choose);
    connect(m_house, &HousePage::strikeWanted, this, &MainWindow::strikeSelected);
    connect(&m_dayBar->line(), &DayLine::dayChanged, this, &MainWindow::showDay);
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
    connect(place, &Place::shownOnMap, this, &MainWindow::showOnMap);
    connect(place, &Place::placeWanted, this,
            [this](const QString& name) { findChild<QAction*>(name)->trigger(); });
    m_listed.push_back(place);
}

void MainWindow::connectMenus() {
    DayLine& line = m_dayBar->line();
    connect(m_menus.create, &QAction::triggered, this, &MainWindow::chooseFileToCreate);
    connect(m_menus.open, &QAction::triggered, this, &MainWindow::chooseFileToOpen);
    connect(m_menus.openShared, &QAction::triggered, this, &MainWindow::askForSharedBook);
    connect(m_menus.saveMap, &QAction::triggered, this, &MainWindow::chooseFileForMap);
    connect(m_menus.print, &QAction::triggered, this, &MainWindow::printOnPaper);
    connect(m_menus.quit, &QAction::triggered, this, &QWidget::close);
    connect(m_menus.undo, &QAction::triggered, this, [this] {
        const QString words = m_session->undoWords();
        tell(m_session->undo(), tr("Taken back: %1").arg(words));
    });
    connect(m_menus.redo, &QAction::triggered, this, [this] {
        const QString words = m_session->redoWords();
        tell(m_session->redo(), tr("Done again: %1").arg(words));
    });
    FindBox& find = m_placeRow->find();
    connect(m_menus.find, &QAction::triggered, &find, [&find] {
        find.setFocus();
        find.selectAll();
    });
    connect(&find, &FindBox::found, this, &MainWindow::showOnMap);
    connect(m_placeRow, &PlaceRow::placeChosen, this, &MainWindow::showPlace);
    connect(m_menus.systemTheme, &QAction::triggered, this, [this] { setTheme(Theme::System); });
    connect(m_menus.lightTheme, &QAction::triggered, this, [this] { setTheme(Theme::Light); });
    connect(m_menus.darkTheme, &QAction::triggered, this, [this] { setTheme(Theme::Dark); });
    connect(m_menus.fahrenheit, &QAction::toggled, this, &MainWindow::setFahrenheit);
    connect(m_menus.zoomIn, &QAction::triggered, &m_house->map(), &BenchMap::zoomIn);
    connect(m_menus.zoomOut, &QAction::triggered, &m_house->map(), &BenchMap::zoomOut);
    connect(m_menus.fit, &QAction::triggered, &m_house->map(), &BenchMap::fit);
    connect(m_menus.dayBack, &QAction::triggered, &line, [&line] { line.setDay(line.day() - 1); });
    connect(m_menus.dayOn, &QAction::triggered, &line, [&line] { line.setDay(line.day() + 1); });
    connect(m_menus.today, &QAction::triggered, &line, [&line] { line.setDay(line.today()); });
    connect(m_menus.play, &QAction::triggered, &line, [&line] { line.play(!line.isPlaying()); });
    connect(m_menus.showBatch, &QAction::triggered, this, [this] { showOnMap(m_selection); });
    connect(m_menus.strike, &QAction::triggered, this, &MainWindow::strikeSelected);
    connect(m_menus.removeBatch, &QAction::triggered, this, [this] {
        if (const Batch* batch = selectedBatch()) performOnMap({RemoveBatch{batch->id}});
    });
    connect(m_menus.planDays, &QAction::triggered, this, &MainWindow::planDays);
    connect(m_menus.keys, &QAction::triggered, this, &MainWindow::showKeys);
    connect(m_menus.about, &QAction::triggered, this, &MainWindow::showAbout);
}

void MainWindow::restoreState() {
    const QSettings kept = settings();
    m_theme = static_cast<Theme>(std::clamp(kept.value(QStringLiteral("theme"), 0).toInt(), 0, 2));
    m_fahrenheit = kept.value(QStringLiteral("fahrenheit"), false).toBool();
    resize(1360, 860);
    restoreGeometry(kept.value(QStringLiteral("geometry")).toByteArray());
    m_house->restoreState(kept.value(QStringLiteral("columns")).toByteArray());
}

void MainWindow::closeEvent(QCloseEvent* event) {
    QSettings kept = settings();
    kept.setValue(QStringLiteral("theme"), static_cast<int>(m_theme));
    kept.setValue(QStringLiteral("fahrenheit"), m_fahrenheit);
    kept.setValue(QStringLiteral("geometry"), saveGeometry());
    kept.setValue(QStringLiteral("columns"), m_house->saveState());
    event->accept();
}

void MainWindow::setTheme(Theme theme) {
    m_theme = theme;
    applyLook();
}

void MainWindow::setFahrenheit(bool on) {
    m_fahrenheit = on;
    applyLook();
    if (m_session) showBook();
}

void MainWindow::applyLook() {
    const bool dark = m_theme == Theme::Dark || (m_theme == Theme::System && desktopIsDark());
    m_palette = dark ? &darkPalette() : &lightPalette();
    m_wording = Wording(QLocale(), m_fahrenheit);
    QAction* const themes[] = {m_menus.systemTheme, m_menus.lightTheme, m_menus.darkTheme};
    themes[static_cast<std::size_t>(m_theme)]->setChecked(true);
    const QSignalBlocker quiet(m_menus.fahrenheit);
    m_menus.fahrenheit->setChecked(m_fahrenheit);
    setPalette(qtPalette(*m_palette));
    setStyleSheet(windowStyleSheet(*m_palette));
    setFont(m_type.body);
    m_house->setLook(*m_palette, m_type, m_wording);
    m_dayBar->setLook(*m_palette, m_type, m_wording);
    m_start->setType(m_type);
    for (Place* place : m_listed) place->setLook(*m_palette, m_type, m_wording);
    refreshPlace();
}

Outcome MainWindow::openBook(const QString& name) {
    return showOpened(m_opener.open(name));
}

Outcome MainWindow::createBook(const QString& name) {
    return showOpened(m_opener.create(name));
}

Outcome MainWindow::showOpened(Result<std::unique_ptr<BookSession>> opened) {
    if (!opened) {
        QMessageBox box(QMessageBox::Warning, tr("Warmbench"),
                        QString::fromStdString(opened.refusal().text()), QMessageBox::Ok, this);
        box.exec();
        return opened.refusal();
    }
    setSession(std::move(*opened));
    return std::nullopt;
}

void MainWindow::setSession(std::unique_ptr<BookSession> session) {
    m_dayBar->line().setSource({});
    m_session = std::move(session);
    m_forecasts.forget();
    m_selection = {};
    m_pages->setCurrentIndex(m_session ? 1 : 0);
    if (m_session) {
        connect(m_session.get(), &BookSession::changed, this, [this](const Change& change) {
            // An empty change says that all may be different.
            if (change.edits.empty())
                m_forecasts.forget();
            else
                m_forecasts.update(m_session->book(), change);
            showBook();
        });
        connect(m_session.get(), &BookSession::standingChanged, this,
                [this] { m_onlyRead->tell(m_session->onlyReadWhy()); });
        m_dayBar->line().setSource(
            [this](Day from, Day to) { return slotLoad(m_session->book(), from, to); });
        setWindowTitle(tr("%1 - Warmbench").arg(m_session->name()));
        m_placeRow->setBookName(m_session->name());
        m_onlyRead->tell(m_session->onlyReadWhy());
        showBook();
        m_house->map().setFocus();
    }
    updateActions();
}

void MainWindow::showBook() {
    const HouseBook& book = m_session->book();
    m_letters = Letters(book);
    const auto* batch = std::get_if<BatchId>(&m_selection);
    const auto* zone = std::get_if<ZoneId>(&m_selection);
    if ((batch && !book.find<Batch>(*batch)) || (zone && !book.find<Zone>(*zone))) m_selection = {};
    m_house->showBook(book, m_letters);
    m_dayBar->line().refresh();
    m_placeRow->find().offer(book);
    showDay();
}

void MainWindow::refreshPlace() {
    if (!m_session) return;
    for (Place* place : m_listed)
        if (place == m_places->currentWidget())
            place->showBook({m_session->book(), day(), m_today, m_letters, m_opener.recipes(), m_forecasts});
}

void MainWindow::showDay() {
    if (!m_session) return;
    m_house->showDay(m_session->book(), day(), m_letters);
    m_dayBar->refresh();
    showFacts();
    refreshPlace();
}

void MainWindow::showFacts() {
    const HouseBook& book = m_session->book();
    const auto* batch = std::get_if<BatchId>(&m_selection);
    const auto* zone = std::get_if<ZoneId>(&m_selection);
    m_house->select(m_selection, batch  ? batchFacts(book, *batch, day(), m_wording)
                                 : zone ? zoneFacts(book, *zone, day(), m_letters, m_wording)
                                        : bookFacts(book, day(), m_wording));
    updateActions();
}

void MainWindow::choose(const Selection& selection) {
    m_selection = selection;
    m_house->tell(std::nullopt);
    const auto* batch = std::get_if<BatchId>(&selection);
    if (batch && !stayOn(m_session->book(), *batch, day())) {
        const std::vector<const Stay*> stays = staysInOrder(m_session->book(), *batch);
        if (!stays.empty()) setDay(stays.front()->from);
    }
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
    return batch && m_session ? m_session->book().find<Batch>(*batch) : nullptr;
}

void MainWindow::updateActions() {
    const bool open = m_session != nullptr;
    const Batch* batch = selectedBatch();
    const bool planned = batch && batch->state == BatchState::Planned;
    for (QAction* action :
         {m_menus.saveMap, m_menus.print, m_menus.find, m_menus.zoomIn, m_menus.zoomOut, m_menus.fit,
          m_menus.dayBack, m_menus.dayOn, m_menus.today, m_menus.play, m_menus.planDays})
        action->setEnabled(open);
    m_menus.places->setEnabled(open);
    m_menus.showBatch->setEnabled(batch);
    m_menus.strike->setEnabled(planned);
    m_menus.removeBatch->setEnabled(planned);
    const QString undo = open ? m_session->undoWords() : QString();
    const QString redo = open ? m_session->redoWords() : QString();
    m_menus.undo->setEnabled(!undo.isEmpty());
    m_menus.redo->setEnabled(!redo.isEmpty());
    m_menus.undo->setText(undo.isEmpty() ? tr("&Undo") : tr("&Undo: %1").arg(undo));
    m_menus.redo->setText(redo.isEmpty() ? tr("&Redo") : tr("&Redo: %1").arg(redo));
}

Outcome MainWindow::perform(const Command& command) {
    const QString said = QString::fromStdString(words(m_session->book(), command));
    Outcome outcome = m_session->perform(command);
    if (!outcome) statusBar()->showMessage(tr("Done: %1").arg(said));
    updateActions();
    return outcome;
}

void MainWindow::performOnMap(const Command& command) {
    m_house->tell(perform(command));
}

void MainWindow::tell(const Outcome& refusal, const QString& done) {
    m_house->tell(refusal);
    if (!refusal) statusBar()->showMessage(done);
    updateActions();
}

void MainWindow::strikeSelected() {
    if (const Batch* batch = selectedBatch()) performOnMap({StrikeBatch{batch->id, m_today}});
}

void MainWindow::planDays() {
    PlanDialog dialog(m_session->book(), m_opener.recipes(), day(), m_wording, this);
    if (dialog.exec() == QDialog::Accepted) performOnMap(dialog.command());
}

void MainWindow::printOnPaper() {
    PrintDialog(m_session->book(), m_forecasts.on(m_session->book(), day()), day(), m_wording, this).exec();
}

void MainWindow::chooseFileToCreate() {
    QString name = QFileDialog::getSaveFileName(this, tr("New house book"),
                                                QStringLiteral("nursery.warmbench"), m_opener.fileFilter());
    if (name.isEmpty()) return;
    if (QFileInfo(name).suffix().isEmpty()) name += QStringLiteral(".warmbench");
    (void)createBook(name);
}

void MainWindow::chooseFileToOpen() {
    const QString name =
        QFileDialog::getOpenFileName(this, tr("Open a house book"), {}, m_opener.fileFilter());
    if (!name.isEmpty()) (void)openBook(name);
}

void MainWindow::askForSharedBook() {
    SharedBookDialog dialog(this);
    if (dialog.exec() == QDialog::Accepted) (void)openBook(dialog.address());
}

void MainWindow::chooseFileForMap() {
    const QString name = QFileDialog::getSaveFileName(
        this, tr("Save the map as a picture"), QStringLiteral("map.pdf"), tr("Pictures (*.pdf *.png *.svg)"));
    if (name.isEmpty()) return;
    SheetOptions options;
    options.dark = m_palette->dark;
    tell(writeMapSheet(m_session->book(), day(), name, options, m_wording), tr("Saved: %1").arg(name));
}

void MainWindow::showKeys() {
    QMessageBox::information(
        this, tr("Keys"),
        tr("<p><b>On the map</b><br>Arrows: the next zone or batch on that side<br>Enter: from a zone to its "
           "batches, "
           "Escape: back<br>+ and -: zoom, 0: show everything<br>Ctrl and arrows: move the map</p>"
           "<p><b>On the day line</b><br>Left and Right: a day<br>PgUp and PgDn: a week<br>Home: today, "
           "Space: play</p>"
           "<p><b>Anywhere</b><br>Ctrl F: find<br>Ctrl Z: undo<br>Alt and Left, Right: a day back, on</p>"));
}

void MainWindow::showAbout() {
    QMessageBox::about(this, tr("About Warmbench"),
                       tr("<p><b>Warmbench %1</b></p><p>Plans the work of a propagation house.</p>")
                           .arg(QApplication::applicationVersion()));
}

} // namespace warmbench::ui
