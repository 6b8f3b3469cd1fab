#pragma once

#include "ui/wants/table_place.h"

namespace warmbench::ui {

/// The stock plants, and what they yield.
class StocksPlace : public TablePlace {
    Q_OBJECT
public:
    explicit StocksPlace(QWidget* parent);

protected:
    void fill(QTreeWidget& table, const BookView& view) override;
    [[nodiscard]] QString hint() const override;
    void putIn() override;
    void change(std::int64_t number) override;
    [[nodiscard]] Command removal(std::int64_t number) const override;

private:
    void ask(const Stock& stock);
};

} // namespace warmbench::ui
