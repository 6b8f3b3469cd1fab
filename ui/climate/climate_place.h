#pragma once

#include "core/forecast/range_warnings.h"
#include "ui/place/place.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;
class QTabWidget;
class QTimer;
class QTreeWidget;

namespace warmbench::ui {

class ClimateChart;
class HeatPanel;
class TroubleLabel;

/// What loggers measured, against set-points and the recipes' ranges; where the root zone left them; and what
/// heat costs.
class ClimatePlace : public Place {
    Q_OBJECT
public:
    explicit ClimatePlace(QWidget* parent);
    void showBook(const BookView& view) override;
    [[nodiscard]] bool hasDayLine() const override { return true; }

private:
    QWidget* makeMeasured();
    void offerPlaces();
    /// Shows another place, with the days up to the last reading.
    void showPlace();
    void showDays(int days);
    void listWarnings();
    void goToWarning();
    void importFile();
    void removeShown();
    [[nodiscard]] std::optional<ReadingPlace> current() const;
    /// The days that the chart shows a part of: first and first after.
    [[nodiscard]] std::pair<Day, Day> daysShown() const;

    const HouseBook* m_book = nullptr;
    Day m_day;
    std::vector<ReadingPlace> m_offered;
    std::optional<ReadingPlace> m_shown; ///< the place whose readings the chart has
    std::vector<forecast::RangeWarning> m_warnings;
    QTabWidget* m_tabs;
    QComboBox* m_places;
    QCheckBox* m_deficit;
    ClimateChart* m_chart;
    QLabel* m_words;
    QLabel* m_warningTitle;
    QTreeWidget* m_warningList;
    QPushButton* m_remove;
    TroubleLabel* m_refusal;
    HeatPanel* m_heat;
    QTimer* m_soon; ///< lists the warnings once the chart rests
};

} // namespace warmbench::ui
