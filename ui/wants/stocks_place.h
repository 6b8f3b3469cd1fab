#pragma once

#include "core/season/stock_calendar.h"
#include "ui/wants/table_place.h"

namespace warmbench::ui {

class StockChart;

/// The stock plants: what they yield, what can be cut when, and which would be cut too hard.
class StocksPlace : public TablePlace {
    Q_OBJECT
public:
    explicit StocksPlace(QWidget* parent);

protected:
    void fill(QTreeWidget& table, const BookView& view) override;
    [[nodiscard]] QString hint() const override;
    [[nodiscard]] QString summary() const override { return m_summary; }
    void showChosen(std::int64_t number) override;
    void putIn() override;
    void change(std::int64_t number) override;
    [[nodiscard]] Command removal(std::int64_t number) const override;

private:
    void askFor(const Stock& stock);
    /// Asks for a target that renews the stock chosen.
    void renew();
    /// What a stock gives and where it is cut too hard, in words.
    [[nodiscard]] QString wordsOf(const Stock& stock,
                                  const std::vector<season::WoodCalendar>& calendars) const;

    QString m_summary;
    StockChart* m_chart;
    QLabel* m_words;
    QPushButton* m_renew;
};

} // namespace warmbench::ui
