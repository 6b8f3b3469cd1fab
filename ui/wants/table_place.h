#pragma once

#include "core/season/list/thing_list.h"
#include "ui/place/place.h"

class QHBoxLayout;
class QVBoxLayout;
class QLabel;
class QPushButton;
class QTreeWidget;
class QTreeWidgetItem;

namespace warmbench::ui {

class DraftDialog;
class TroubleLabel;

/// A place that lists things of one kind, with buttons to put in, change and remove one. Enter and a double
/// click change the one chosen, Del removes it.
class TablePlace : public Place {
    Q_OBJECT
public:
    TablePlace(const QString& name, const QString& title, const QStringList& columns, QWidget* parent);
    void showBook(const BookView& view) final;
    bool resume(const Draft& draft) final;

protected:
    /// Adds an item to `table` for each thing, with its id's number as data of the first column.
    virtual void fill(QTreeWidget& table, const BookView& view) = 0;
    /// Said over an empty table.
    [[nodiscard]] virtual QString hint() const = 0;
    /// Said over a filled table.
    [[nodiscard]] virtual QString summary() const { return {}; }
    virtual void putIn() = 0;
    virtual void change(std::int64_t number) = 0;
    [[nodiscard]] virtual Command removal(std::int64_t number) const = 0;

    /// Called when another thing is chosen; 0 where none is.
    virtual void showChosen(std::int64_t /*number*/) {}
    /// A widget under the table, above the buttons.
    void addUnderTable(QWidget* widget);
    /// The thing chosen; 0 where none is.
    [[nodiscard]] std::int64_t chosen() const;
    /// What was typed into the form of a thing (0: a new one) and is not in the book; empty where nothing
    /// was.
    [[nodiscard]] QJsonObject typedFor(std::int64_t number) const;
    /// Runs a dialog that asks for a thing (0: a new one); what is typed is kept as a draft, called by these
    /// words.
    void ask(DraftDialog& dialog, std::int64_t number, const QString& words);

    /// One more button behind the usual ones.
    QPushButton* addButton(const QString& objectName, const QString& words);
    /// A button that takes a list, at first of this kind.
    void addListButton(season::ListKind kind);

    static constexpr int idNumber = Qt::UserRole;
    /// Of the latest view.
    [[nodiscard]] const HouseBook& book() const { return *m_book; }
    [[nodiscard]] const RecipeLibrary& recipes() const { return *m_recipes; }
    [[nodiscard]] Day today() const { return m_today; }

private:
    /// Takes a list, with what was typed of it before.
    void askForList();
    void changeCurrent();
    void removeCurrent();
    void enableButtons();

    const HouseBook* m_book = nullptr;
    const RecipeLibrary* m_recipes = nullptr;
    Day m_today;
    QLabel* m_words;
    QTreeWidget* m_table;
    season::ListKind m_listKind{}; ///< that of the list button
    QPushButton* m_new;
    QPushButton* m_change;
    QPushButton* m_remove;
    QHBoxLayout* m_buttons;
    QVBoxLayout* m_column;
    TroubleLabel* m_refusal;
};

/// Sets a cell of numbers, to the right.
void setNumber(QTreeWidgetItem& item, int column, const QString& words);

} // namespace warmbench::ui
