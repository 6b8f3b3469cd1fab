#pragma once

#include "core/quantity/result.h"
#include "ui/place/journal_step.h"
#include "ui/place/place.h"

#include <functional>

class QLabel;
class QLineEdit;
class QPushButton;
class QTreeView;

namespace warmbench::ui {

class JournalList;
class JournalSearch;
class TroubleLabel;

/// Who did what when, found as one types; from any step the house can be seen as it was after it.
class JournalPlace : public Place {
    Q_OBJECT
public:
    using Reader = std::function<Result<std::vector<JournalStep>>()>;

    /// `read` gives the journal of the book that is shown.
    JournalPlace(Reader read, QWidget* parent);
    void showBook(const BookView& view) override;

Q_SIGNALS:
    /// Wants to see the house as it was after a step.
    void pastWanted(const warmbench::ui::JournalStep& step);

private:
    void enable();
    void goBack();

    Reader m_read;
    JournalList* m_list;
    JournalSearch* m_search;
    QLineEdit* m_find;
    QTreeView* m_table;
    QLabel* m_count;
    QPushButton* m_goBack;
    TroubleLabel* m_refusal;
};

} // namespace warmbench::ui
