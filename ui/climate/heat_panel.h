#pragma once

#include "core/season/heat_choice.h"
#include "ui/place/place.h"

class QChartView;
class QComboBox;
class QLabel;
class QPushButton;
class QTreeWidget;

namespace warmbench::ui {

class TroubleLabel;

/// What each set-point of a mat costs until a batch on it is ready, against how much sooner it roots: a list
/// and a curve to choose from.
class HeatPanel : public QWidget {
    Q_OBJECT
public:
    explicit HeatPanel(QWidget* parent = nullptr);
    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    void showBook(const HouseBook& book, Day day);
    void tell(const Outcome& refusal);

Q_SIGNALS:
    /// Wants a zone's mat to run otherwise.
    void runWanted(const warmbench::SetMatRuns& runs);

private:
    void showBatch();
    void drawCurve();
    void run();
    [[nodiscard]] const Stay* current() const;

    const HouseBook* m_book = nullptr;
    const Palette* m_palette = nullptr;
    const TypeSizes* m_type = nullptr;
    Wording m_wording;
    Day m_day;
    std::vector<StayId> m_stays;
    std::vector<season::HeatChoice> m_choices;
    QComboBox* m_batch;
    QLabel* m_words;
    QTreeWidget* m_table;
    QChartView* m_chart;
    QPushButton* m_run;
    TroubleLabel* m_refusal;
};

} // namespace warmbench::ui
