#pragma once

#include "core/season/month_plan.h"
#include "ui/place/place.h"

class QDateEdit;
class QLabel;
class QPushButton;
class QSpinBox;
class QTextBrowser;

namespace warmbench::ui {

class MonthChart;
class TroubleLabel;

/// The weeks to come: what is struck when, against the hands that there are, and what it takes. It begins
/// with the week of the day shown, and so rolls on with it.
class MonthPlace : public Place {
    Q_OBJECT
public:
    explicit MonthPlace(QWidget* parent);
    void showBook(const BookView& view) override;

private:
    void build();
    void refresh();
    /// Says what stands in the chosen line, or what moving it would do.
    void sayLine(int line);
    void sayMove(int line, Day day);
    void move(int line, Day day);
    void askHands(Day day);
    /// The first day from which may be planned; nothing where all of these weeks have gone, which is told.
    [[nodiscard]] std::optional<Day> planFrom();
    void planWeeks();
    void tryThings();
    void showOnMap(int line);
    void showSums();
    [[nodiscard]] std::optional<BatchId> batchOf(int line) const;

    const HouseBook* m_book = nullptr;
    const RecipeLibrary* m_recipes = nullptr;
    ForecastKeeper* m_forecasts = nullptr;
    Day m_shown; ///< that the window shows
    Day m_today;
    season::MonthPlan m_plan;

    QDateEdit* m_from;
    QSpinBox* m_weeks;
    QPushButton* m_hands;
    QPushButton* m_whatIf;
    QPushButton* m_planAll;
    MonthChart* m_chart;
    QLabel* m_words;
    TroubleLabel* m_refusal;
    QTextBrowser* m_sums;
};

} // namespace warmbench::ui
