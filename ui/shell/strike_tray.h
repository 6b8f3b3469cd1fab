#pragma once

#include "ui/map/letters.h"
#include "ui/shell/tray_card.h"

#include <QWidget>

class QLabel;
class QListWidget;

namespace warmbench::ui {

/// The batches that are planned and wait to be struck, day by day.
class StrikeTray : public QWidget {
    Q_OBJECT
public:
    explicit StrikeTray(QWidget* parent = nullptr);

    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    void show(const HouseBook& book, const Letters& letters);
    /// Marks a batch without saying so; nothing where it is not in the tray.
    void mark(std::optional<BatchId> batch);

Q_SIGNALS:
    void chosen(warmbench::BatchId batch);

private:
    void addDay(Day day);
    void addCard(const HouseBook& book, const Batch& batch, const Letters& letters);

    QLabel* m_title;
    QLabel* m_count;
    QListWidget* m_list;
    TrayCard* m_card;
    Wording m_wording;
};

} // namespace warmbench::ui
