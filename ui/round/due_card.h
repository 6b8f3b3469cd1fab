#pragma once

#include "core/book/command.h"
#include "core/round/due.h"
#include "ui/words/wording.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;

namespace warmbench::ui {

class TroubleLabel;

/// One batch that is due: weaned by one key, on this day or the plan's, potted on container by container, or
/// thrown away with a reason.
class DueCard : public QWidget {
    Q_OBJECT
public:
    explicit DueCard(QWidget* parent);

    void showDue(const HouseBook& book, const round::Due& due, Day day, const Wording& wording);
    void setTitleFont(const QFont& font);
    void tell(const QString& words);
    /// Puts the cursor where the batch's task begins.
    void begin();

Q_SIGNALS:
    void weanWanted(warmbench::BatchId batch, warmbench::Day day);
    /// The plants become stock plants of `stock`, where there is one.
    void potOnWanted(const warmbench::PotOn& potOn, std::optional<warmbench::StockId> stock);
    void discardWanted(const warmbench::Discard& discard);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// One container of a batch that is potted on.
    struct Line {
        int container = 1;
        int standing = 0;
        QLineEdit* plants = nullptr;
        QLineEdit* lost = nullptr;
    };

    void layLines(const HouseBook& book, const Batch& batch, const Wording& wording);
    void goOn(std::size_t line, bool fromLost);
    void showSum();
    void enter();
    void potOn();
    void discard();
    [[nodiscard]] std::optional<PottedContainer> pottedIn(const Line& line) const;

    round::Due m_due;
    Day m_day;
    QLabel* m_code;
    QLabel* m_taxon;
    QLabel* m_why;
    QLabel* m_help;
    QScrollArea* m_table;
    QLabel* m_sum;
    QCheckBox* m_asStock;
    std::optional<StockId> m_stock; ///< that the batch renews
    TroubleLabel* m_words;
    QPushButton* m_enter;
    QPushButton* m_asPlanned; ///< it was weaned on the plan's day, which is past
    QLineEdit* m_reason;
    QPushButton* m_discard;
    std::vector<Line> m_lines;
};

} // namespace warmbench::ui
