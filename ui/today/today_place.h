#pragma once

#include "core/season/day_work.h"
#include "ui/place/place.h"

class QLabel;
class QPushButton;
class QTextBrowser;
class QTreeWidget;

namespace warmbench::ui {

class PlotView;
class TroubleLabel;

/// What the day of the day line asks for: to strike, wean, pot on and check as a list in which Enter does the
/// chosen one, beside it what to take, prepare and set. What is not done is there again the next day.
class TodayPlace : public Place {
    Q_OBJECT
public:
    explicit TodayPlace(QWidget* parent);
    void showBook(const BookView& view) override;
    [[nodiscard]] bool hasDayLine() const override { return true; }

private:
    enum class Kind : std::uint8_t { Strike, Wean, PotOn, Round };
    struct Task {
        Kind kind = Kind::Strike;
        BatchId batch;
    };

    void addTask(const Task& task, const QStringList& cells);
    [[nodiscard]] const Task* current() const;
    void doCurrent();
    /// As done on another day than the one that is shown.
    void doCurrentOn(Day day);
    /// The plan's day, before this one, on which the batch of the current task was to be weaned.
    [[nodiscard]] std::optional<Day> plannedWeaning() const;
    void showCurrentOnMap();
    void enableButtons();
    /// Shows on a small map where the batch of the current task stands or is to stand.
    void showSlots();

    const HouseBook* m_book = nullptr;
    Letters m_letters;
    Day m_day;
    Day m_today;
    std::vector<Task> m_tasks; ///< by row
    QLabel* m_title;
    QTreeWidget* m_list;
    PlotView* m_slots;
    QTextBrowser* m_notes;
    QPushButton* m_do;
    QPushButton* m_asPlanned; ///< it was weaned on the plan's day, which is past
    QPushButton* m_map;
    TroubleLabel* m_refusal;
};

} // namespace warmbench::ui
