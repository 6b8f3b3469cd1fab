#pragma once

#include "core/crop/library/library.h"
#include "ui/map/bench_map.h"
#include "ui/placing/placing_hand.h"
#include "ui/shell/facts.h"

#include <QSplitter>

class QHBoxLayout;
class QLabel;

namespace warmbench::ui {

class FactPanel;
class LegendStrip;
class PlacingBar;
class StrikeTray;
class TroubleLabel;
struct WindowMenus;

/// The home place: what waits to be struck, the bench map, and what is selected.
class HousePage : public QSplitter {
    Q_OBJECT
public:
    explicit HousePage(const WindowMenus& menus, QWidget* parent = nullptr);

    /// Palette, type and wording must outlive the page or be set anew.
    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    void showBook(const HouseBook& book, const Letters& letters);
    void showDay(const HouseBook& book, Day day, const Letters& letters, Day today);
    /// Marks what is selected and tells its facts.
    void select(const Selection& selection, const Facts& facts);
    /// Adds what becomes of the batch that is selected, if it has been struck.
    void foresee(const HouseBook& book, const RecipeLibrary& recipes, BatchId batch, Day day);
    /// Tells why something was not done; nothing hides it.
    void tell(const Outcome& refusal);
    [[nodiscard]] BenchMap& map() { return *m_map; }
    /// Takes up a batch, to be put elsewhere from the day shown on; by key or menu.
    void takeUp(BatchId batch);

Q_SIGNALS:
    /// What can be done with a batch is to be offered there on the screen.
    void menuWanted(warmbench::BatchId batch, QPoint global);
    void chosen(const warmbench::ui::Selection& selection);
    void strikeWanted();
    void planWanted();
    /// Something was put down on the map by hand.
    void placed(const warmbench::Command& command);

private:
    void take(BatchId batch, bool dragged);
    QWidget* makeCentre(const WindowMenus& menus);

    const HouseBook* m_book = nullptr; ///< shown last
    Day m_day;
    RootZoneLogs m_logs; ///< of the book
    PlacingHand m_hand;
    StrikeTray* m_tray;
    BenchMap* m_map;
    PlacingBar* m_placing;
    LegendStrip* m_legend;
    QWidget* m_foot = nullptr; ///< the legend, or what is carried
    QLabel* m_dayTitle;
    TroubleLabel* m_refusal;
    FactPanel* m_panel;
    const Wording* m_wording = nullptr;
};

} // namespace warmbench::ui
