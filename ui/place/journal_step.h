#pragma once

#include <QDateTime>
#include <QString>

namespace warmbench::ui {

/// One step of a book's journal: who did what when.
struct JournalStep {
    std::int64_t number = 0;
    QDateTime at;
    QString who;
    QString words;
};

} // namespace warmbench::ui
