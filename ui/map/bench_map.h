#pragma once

#include "ui/map/map_hand.h"
#include "ui/map/map_painter.h"

#include <QAbstractScrollArea>
#include <QPixmap>

#include <optional>

namespace warmbench::ui {

/// The bench map as a widget: it shows a scene, is zoomed and moved about, and says what is chosen on it.
///
/// Keys: arrows go to the next zone (or batch, where one is chosen) on that side, Enter into a zone to its
/// batches, Escape back; + and - zoom, 0 fits; Ctrl and arrows move the map.
/// Mouse: the wheel zooms about the pointer, dragging the ground moves the map, a click chooses, dragging a
/// batch takes it up, as M and Space do with the one chosen. The middle button moves the map everywhere.
class BenchMap : public QAbstractScrollArea {
    Q_OBJECT
public:
    explicit BenchMap(QWidget* parent = nullptr);

    /// Palette, type and wording must outlive the widget or be set anew.
    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    void showScene(MapScene scene);
    [[nodiscard]] const MapScene& scene() const { return m_scene; }
    [[nodiscard]] const MapLayout& mapLayout() const { return m_layout; }
    [[nodiscard]] const Wording& wording() const { return *m_wording; }

    [[nodiscard]] const Selection& selection() const { return m_selection; }
    /// Chooses, and brings what is chosen into sight.
    void select(const Selection& selection);

    void zoomBy(double factor, QPointF about);
    void zoomIn();
    void zoomOut();
    /// Shows everything, and goes on doing so when the window changes size, until it is zoomed.
    void fit();
    [[nodiscard]] bool isFitted() const { return m_fitted; }

    /// What is carried over the map; it must outlive the map. Call it again when what it holds has changed.
    void setHand(MapHand* hand);
    /// Paints what is carried where it is aimed now.
    void showAim();
    /// Aims what is carried at a place in the viewport, or lets it go there.
    void pointHandAt(QPoint position);
    void letHandGo(QPoint position);

    /// Where a point of the layout is in the viewport.
    [[nodiscard]] QPoint origin() const;

Q_SIGNALS:
    void selectionChanged(const warmbench::ui::Selection& selection);
    /// A batch is to be carried; `dragged` as long as a button is held.
    void takenUp(warmbench::BatchId batch, bool dragged);
    /// What can be done with a batch is to be offered there on the screen: the right button on it, or the
    /// menu key while it is chosen.
    void menuWanted(warmbench::BatchId batch, QPoint global);

protected:
    bool event(QEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void wheelEvent(QWheelEvent* event) override;
    bool pinched(QEvent* event); ///< zooms with two fingers; false where the event is another
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    [[nodiscard]] bool carries() const { return m_hand && m_hand->isActive(); }
    void paintMap(QPainter& painter, const QRect& clip) const;
    void paintCarried(QPaintEvent* event);
    void startDrag(QPoint position);
    void setMapLayout(MapLayout layout);
    void updateScrollBars();
    void paintEmpty(QPainter& painter) const;
    void moveSelection(QPoint direction);
    void enterZone();
    void leave();
    void choose(const Selection& selection);
    [[nodiscard]] Selection selectionAt(QPoint position) const;
    [[nodiscard]] QString wordsAt(QPoint position) const;

    const Palette* m_palette;
    const TypeSizes* m_type;
    const Wording* m_wording;
    MapScene m_scene;
    MapLayout m_layout;
    Selection m_selection;
    bool m_fitted = true;
    std::optional<QPoint> m_pressed; ///< where the button went down
    bool m_mayPan = false;           ///< it went down on the ground, or is the middle one
    bool m_panning = false;
    bool m_taken = false; ///< what was under it has been taken up since then
    QPoint m_lastMouse;
    MapHand* m_hand = nullptr;
    QPixmap m_under; ///< map and zones under what is carried, as in sight; null where it is out of date
};

} // namespace warmbench::ui
