#pragma once

#include "core/book/command.h"
#include "core/book/house_book.h"
#include "core/crop/library/library.h"
#include "ui/draft/drafts.h"
#include "ui/map/letters.h"
#include "ui/map/map_scene.h"
#include "ui/place/forecast_keeper.h"
#include "ui/theme/palette.h"
#include "ui/theme/type.h"
#include "ui/words/wording.h"

#include <QPointer>
#include <QWidget>

#include <functional>

class QAbstractItemView;

namespace warmbench::ui {

/// What a place shows. It lives as long as the call that gives it.
struct BookView {
    const HouseBook& book;
    Day day;   ///< that of the day line
    Day today; ///< that of the calendar
    const Letters& letters;
    const RecipeLibrary& recipes; ///< the built-in ones; lives as long as the program
    ForecastKeeper& forecasts;    ///< lives as long as the window
};

/// One place of the window beside the bench map, such as the strike list. The window tells it what to show
/// and does what it asks for. To add one: a class of this kind, and a line in MainWindow's constructor.
class Place : public QWidget {
    Q_OBJECT
public:
    /// Does a command in the book that is open, or tells why not.
    using Performer = std::function<Outcome(const Command&)>;

    /// `name` is that of its objects: `strikeList` makes the widget `strikeListPage`, the button
    /// `strikeListPlace` and the action `strikeList`. `title` stands on the button and in the menu.
    Place(const QString& name, const QString& title, QWidget* parent);

    [[nodiscard]] const QString& name() const { return m_name; }
    [[nodiscard]] const QString& title() const { return m_title; }
    /// Whether the day line stands under it.
    [[nodiscard]] virtual bool hasDayLine() const { return false; }
    /// Shows the book as it is now. Called when the place comes into sight, and while it is in sight after
    /// each change of the book, the day or the look; also from within `perform`.
    virtual void showBook(const BookView& view) = 0;
    /// Palette, type and wording must outlive the place or be set anew; `showBook` follows.
    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    void setPerformer(Performer performer) { m_performer = std::move(performer); }
    /// Where forms of the place keep what is typed and not in the book yet; none where nothing is kept.
    void setDrafts(Drafts* drafts) { m_drafts = drafts; }
    /// Opens the form of a draft again, with what was typed in it; false where there is no such form any
    /// more. The place is in sight, on the draft's day.
    virtual bool resume(const Draft& /*draft*/) { return false; }

Q_SIGNALS:
    /// Wants a batch or zone to be shown on the map.
    void shownOnMap(const warmbench::ui::Selection& selection);
    /// Wants another place, by its name, to come into sight.
    void placeWanted(const QString& name);
    /// What can be done with a batch is to be offered there on the screen.
    void batchMenuWanted(warmbench::BatchId batch, QPoint global);

protected:
    /// The outcome is told by the place itself, where it was asked for; what was done stands in the window's
    /// status bar.
    Outcome perform(const Command& command) { return m_performer(command); }
    /// Offers what can be done with the batch of a line of a list, by the right button and the menu key.
    void offerBatchMenu(QAbstractItemView* list, std::function<std::optional<BatchId>(int line)> batchOf);
    [[nodiscard]] Drafts* drafts() const { return m_drafts; }
    [[nodiscard]] const Palette& look() const { return *m_palette; }
    [[nodiscard]] const TypeSizes& type() const { return *m_type; }
    [[nodiscard]] const Wording& wording() const { return *m_wording; }

private:
    QString m_name;
    QString m_title;
    Performer m_performer;
    QPointer<Drafts> m_drafts;
    const Palette* m_palette = nullptr;
    const TypeSizes* m_type = nullptr;
    const Wording* m_wording = nullptr;
};

} // namespace warmbench::ui
