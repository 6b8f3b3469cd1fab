#pragma once

#include "ui/dayline/day_line.h"

class QLabel;
class QPushButton;

namespace warmbench::ui {

/// The day line with what it says in words beside it, and a button that plays it.
class DayBar : public QWidget {
    Q_OBJECT
public:
    explicit DayBar(Day today, QWidget* parent = nullptr);

    [[nodiscard]] DayLine& line() { return *m_line; }
    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    /// Says anew what the line shows.
    void refresh();

private:
    DayLine* m_line;
    QLabel* m_title;
    QLabel* m_taken;
    QLabel* m_fullest;
    QPushButton* m_play;
    const Wording* m_wording = nullptr;
};

} // namespace warmbench::ui
