#pragma once

#include "ui/map/bench_map.h"
#include "ui/place/place.h"
#include "ui/shell/book_session.h"
#include "ui/shell/facts.h"
#include "ui/shell/window_menus.h"

#include <QMainWindow>
#include <QPointer>

#include <functional>

class QLabel;
class QStackedWidget;

namespace warmbench::ui {

class BackupsDialog;
class DayBar;
class DraftBar;
class HomecomingDialog;
class HousePage;
class PastBar;
class PlaceRow;
class PlanDialog;
class RoundPlace;
class StartPage;
class TroubleLabel;

/// Which palette the window has: that of the desktop, or one chosen.
enum class Theme : std::uint8_t { System, Light, Dark };

/// The home window: a house book's bench map with its day line, what waits to be struck, and what is
/// selected. It reads the book of its session and asks that for changes; what it knows itself is only how it
/// looks.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    /// `opener` must outlive the window. `today` is the day on which the map opens.
    MainWindow(BookOpener& opener, Day today);
    ~MainWindow() override;

    /// Shows a book. With none the start page is shown.
    void setSession(std::unique_ptr<BookSession> session);
    [[nodiscard]] BookSession* session() const { return m_session.get(); }
    /// Gives the book away, for a window in another language; none is shown here any more.
    [[nodiscard]] std::unique_ptr<BookSession> takeSession();
    /// Opens the book of a name; a refusal is told in the window as well.
    Outcome openBook(const QString& name);
    /// Makes an empty book of a name and opens it; a refusal is told in the window as well.
    Outcome createBook(const QString& name);

    /// Lists the backups of a book by its file's name, whether or not it is the one that is open.
    void showBackupsOf(const QString& book);

    /// Copies the book that is open into a new file, to be taken along; tells in the window how it comes
    /// home, or what was refused.
    Outcome takeCopy(const QString& file);
    /// Shows what a copy that was taken along would bring home, before it does; a refusal is told in the
    /// window as well.
    Outcome bringHome(const QString& copy);

    void setTheme(Theme theme);
    void setFahrenheit(bool on);
    /// Keeps a language of `Language::codes`, or the desktop's (empty), as the one that is wanted.
    void setLanguage(const QString& code);
    /// Selects a zone or batch everywhere; goes to the day on which a batch stands where it does not now.
    void choose(const Selection& selection);
    [[nodiscard]] const Selection& selection() const { return m_selection; }
    [[nodiscard]] Day day() const;
    void setDay(Day day);

    /// Shows the book as it was after a step of its journal, to be looked at only; a refusal is told in the
    /// window as well.
    Outcome showPast(const JournalStep& step);
    /// Shows the book as it is again.
    void showNow();
    [[nodiscard]] bool isPast() const { return m_past.has_value(); }
    /// The book in sight: as it is, as it was, or as a plan would make it.
    [[nodiscard]] const HouseBook& shown() const {
        return m_past ? m_past->book : m_proposed ? *m_proposed : m_session->book();
    }

Q_SIGNALS:
    /// Another language is wanted. Whoever has made this window makes it anew.
    void languageChosen();

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    static constexpr int housePlace = 0;

    void addPlace(const QString& name, const QString& title, QWidget* widget);
    void addPlace(Place* place);
    void connectMenus();
    void applyLook();
    void restoreState();
    void showBook();
    void refreshPlace();
    void showDay();
    void showFacts();
    void showStays();
    void showPlace(int place);
    void showOnMap(const Selection& selection);
    void updateActions();
    Outcome perform(const Command& command);
    void stepPast(int steps);
    void showProposed(const std::optional<Command>& command);
    void performOnMap(const Command& command);
    void tell(const Outcome& refusal, const QString& done);
    void connectBatchMenu();
    void showBatchMenu(BatchId batch, QPoint global);
    void moveSelected(bool inPart);
    void strikeSelected();
    void weanSelected();
    /// Shows the round and goes there to the selected batch; says so where it has nothing of it.
    void goToSelectedInRound(const std::function<bool(BatchId)>& go, const QString& notThere);
    void checkSelected();
    void potOnSelected();
    void printLabelsOfSelected();
    Outcome showOpened(Result<std::unique_ptr<BookSession>> opened, const QString& name);
    void tellRefused(const Refusal& refusal, const QString& book);
    void chooseBackups();
    void lookInside(const KeptBackup& backup, const QString& book);
    void copyBackup(const KeptBackup& backup);
    void askToPutInPlace(const KeptBackup& backup, const QString& book);
    void putInPlace(const KeptBackup& backup, const QString& book);
    void askWhereToTakeCopy();
    void askForCopy();
    void tellInBox(const char* name, const QString& words, const QString& more = {});
    void openDrafts();
    void goOnWith(const Draft& draft);
    void planDays();
    /// Puts what is ticked of the proposal shown into the book; refused, it stays shown.
    Outcome acceptPlan(const Command& command);
    void printOnPaper();
    void chooseFileToCreate();
    void chooseFileToOpen();
    void askForSharedBook();
    void chooseFileForMap();
    void showKeys();
    void showAbout();
    [[nodiscard]] const Batch* selectedBatch() const;

    /// What is shown while the book is seen as it was.
    struct Past {
        HouseBook book;
        std::vector<JournalStep> journal;
        std::size_t step = 0; ///< in the journal
        Day dayNow;           ///< that of the day line before
    };

    BookOpener& m_opener;
    Day m_today;
    std::unique_ptr<BookSession> m_session;
    Theme m_theme = Theme::System;
    bool m_fahrenheit = false;
    const Palette* m_palette;
    TypeSizes m_type;
    Wording m_wording;
    Letters m_letters;
    ForecastKeeper m_forecasts;
    Selection m_selection;

    WindowMenus m_menus;
    QStackedWidget* m_pages;
    StartPage* m_start;
    PlaceRow* m_placeRow;
    TroubleLabel* m_backupTrouble; ///< why the last backup was not made
    TroubleLabel* m_onlyRead;      ///< why the book can't be changed just now
    QStackedWidget* m_places;
    HousePage* m_house;
    RoundPlace* m_round;
    DayBar* m_dayBar;
    PastBar* m_pastBar;
    DraftBar* m_draftBar;
    std::unique_ptr<Drafts> m_drafts; ///< of the book that is open
    std::optional<Past> m_past;
    QPointer<PlanDialog> m_plan;
    QPointer<BackupsDialog> m_backups;
    QPointer<HomecomingDialog> m_homecoming;
    QLabel* m_proposedWords;
    std::optional<HouseBook> m_proposed; ///< with what is ticked of a plan
    std::vector<Place*> m_listed;        ///< all places but the house
};

} // namespace warmbench::ui
