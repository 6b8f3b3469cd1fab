#pragma once

#include "ui/place/place.h"

class QTextBrowser;

namespace warmbench::ui {

/// The planned batches, day by day, with all that is needed to strike them.
class StrikeListPlace : public Place {
    Q_OBJECT
public:
    explicit StrikeListPlace(QWidget* parent);
    void showBook(const BookView& view) override;

private:
    QTextBrowser* m_sheet;
};

} // namespace warmbench::ui
