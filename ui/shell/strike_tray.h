#pragma once

#include "ui/map/letters.h"
#include "ui/shell/tray_card.h"

#include <QWidget>

class QLabel;
class QListWidget;
class QMouseEvent;

namespace warmbench::ui {

/// The batches that are planned and wait to be struck, day by day, and struck ones that have no place.
/// Dragged onto the map, or taken up with M, Space or Enter, they are put there.
class StrikeTray : public QWidget {
    Q_OBJECT
public:
    explicit StrikeTray(QWidget* parent = nullptr);

    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    void show(const HouseBook& book, const Letters& letters);
    /// Says which struck batches have containers without a place on a day.
    void showHomeless(const HouseBook& book, Day day, const Letters& letters);
    /// Marks a batch without saying so; nothing where it is not in the tray.
    void mark(std::optional<BatchId> batch);

Q_SIGNALS:
    void chosen(warmbench::BatchId batch);
    /// A batch is to be carried over the map; `dragged` as long as a button is held.
    void takenUp(warmbench::BatchId batch, bool dragged);
    /// What can be done with a batch is to be offered there on the screen.
    void menuWanted(warmbench::BatchId batch, QPoint global);
    /// Where on the screen it is carried, and let go.
    void dragged(QPoint global);
    void letGo(QPoint global);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fill(const HouseBook& book, const Letters& letters);
    bool mouse(const QMouseEvent& event);
    [[nodiscard]] std::optional<BatchId> currentBatch() const;
    void addHeading(const QString& words);
    void addCard(const HouseBook& book, const Batch& batch, const Letters& letters);

    QLabel* m_title;
    QLabel* m_count;
    QListWidget* m_list;
    TrayCard* m_card;
    Wording m_wording;
    std::vector<BatchId> m_homeless;
    std::optional<QPoint> m_pressed; ///< where the button went down on a card
    bool m_dragging = false;
};

} // namespace warmbench::ui
