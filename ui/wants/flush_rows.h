#pragma once

#include "core/crop/crop.h"
#include "ui/words/wording.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QDateEdit;
class QGridLayout;
class QSpinBox;

namespace warmbench::ui {

/// The flushes of a stock, a line for each: wood, season, cuttings from a plant, days to grow again.
class FlushRows : public QWidget {
    Q_OBJECT
public:
    FlushRows(const std::vector<Flush>& flushes, const Wording& wording, QWidget* parent = nullptr);
    /// Those that give cuttings; a line with none is left out.
    [[nodiscard]] std::vector<Flush> flushes() const;

private:
    struct Row {
        QComboBox* wood;
        QDateEdit* from;
        QDateEdit* to;
        QSpinBox* each;
        QSpinBox* regrowth;
    };

    void add(const Flush& flush);

    Wording m_wording;
    QGridLayout* m_grid;
    std::vector<Row> m_rows;
};

} // namespace warmbench::ui
