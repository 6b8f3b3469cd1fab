#pragma once

#include "core/crop/library/library.h"
#include "core/forecast/batch_curve.h"
#include "core/season/need.h"
#include "ui/theme/palette.h"
#include "ui/theme/type.h"
#include "ui/words/wording.h"

#include <QWidget>

class QChartView;
class QLabel;
class QPushButton;

namespace warmbench::ui {

/// What becomes of one batch: the share rooted by day with its band, the checks on it, when it is ready,
/// what its target can count on, and whether there is time to strike again. Only what the batch's target
/// rests on is computed, never the whole book.
class ForecastCard : public QWidget {
    Q_OBJECT
public:
    explicit ForecastCard(QWidget* parent = nullptr);
    /// Palette must outlive the card or be set anew; `showBatch` follows.
    void setLook(const Palette& palette, const TypeSizes& type, const Wording& wording);
    /// Shows a batch as seen on a day; out of sight where there is nothing to foresee: a batch that is not
    /// struck by then, has ended, or whose recipe's figures can't be.
    void showBatch(const HouseBook& book, const RecipeLibrary& recipes, BatchId batch, Day day);

Q_SIGNALS:
    /// Wants what is not struck yet to be planned again.
    void replanWanted();

private:
    void draw(const forecast::BatchCurve& curve, Day day);
    [[nodiscard]] QString warmth(const forecast::BatchCurve& curve, Celsius base) const;
    [[nodiscard]] QString strikeAgain(const season::TargetNeed& need) const;
    void say(const HouseBook& book, const RecipeLibrary& recipes, const forecast::BookForecast& forecast,
             const forecast::BatchCurve& curve);

    const Palette* m_palette = nullptr;
    TypeSizes m_type;
    Wording m_wording;
    QChartView* m_chart;
    QLabel* m_words;
    QLabel* m_trouble;
    QPushButton* m_replan;
};

} // namespace warmbench::ui
