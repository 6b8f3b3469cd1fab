#pragma once

#include "ui/place/journal_step.h"

#include <QAbstractTableModel>
#include <QLocale>
#include <QSortFilterProxyModel>

#include <vector>

namespace warmbench::ui {

/// `3 Mar 2027, 14:05`, in the locale and the time of this machine.
[[nodiscard]] QString stepTime(const JournalStep& step, const QLocale& locale);

/// The steps of a journal as rows, the last one first: when, who, what.
class JournalList : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { When, Who, What };

    using QAbstractTableModel::QAbstractTableModel;
    void show(std::vector<JournalStep> steps, const QLocale& locale);
    [[nodiscard]] const JournalStep& step(int row) const {
        return m_steps[m_steps.size() - 1 - static_cast<std::size_t>(row)];
    }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<JournalStep> m_steps;
    QLocale m_locale;
};

/// Those rows of a journal that hold each of some words, in whatever column.
class JournalSearch : public QSortFilterProxyModel {
    Q_OBJECT
public:
    using QSortFilterProxyModel::QSortFilterProxyModel;
    void find(const QString& words);

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

private:
    QStringList m_words;
};

} // namespace warmbench::ui
