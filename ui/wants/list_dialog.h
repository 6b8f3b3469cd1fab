#pragma once

#include "core/season/list/thing_list.h"
#include "ui/draft/draft_dialog.h"
#include "ui/words/wording.h"

#include <functional>

class QCheckBox;
class QComboBox;
class QLabel;
class QPlainTextEdit;
class QPushButton;
class QTreeWidget;

namespace warmbench::ui {

class TroubleLabel;

/// Takes a list of targets, stocks, recipes or earlier results that is pasted or opened, shows line by line
/// how it is understood before anything is in the book, and lets her say what each column means. Lines that
/// are wrong say why; the rest is put in as one step.
class ListDialog : public DraftDialog {
    Q_OBJECT
public:
    using Performer = std::function<Outcome(const Command&)>;

    ListDialog(const HouseBook& book, const RecipeLibrary& library, season::ListKind kind,
               const Wording& wording, Performer performer, QWidget* parent);
    void accept() override;

protected:
    void showEvent(QShowEvent* event) override;

private:
    void build();
    void openFile();
    /// Finds out anew how the text is to be read.
    void guess();
    void showKind();
    void showColumns();
    void readColumns();
    void showLines();
    [[nodiscard]] season::ListKind kind() const;
    [[nodiscard]] QString fieldText(const season::ListField& field) const;

    const HouseBook& m_book;
    const RecipeLibrary& m_library;
    Wording m_wording;
    Performer m_performer;
    season::ListShape m_shape;
    season::ThingList m_list;

    QComboBox* m_kind;
    QPlainTextEdit* m_text;
    QCheckBox* m_head;
    QComboBox* m_order;
    QCheckBox* m_ownTaxa;
    QTreeWidget* m_lines;
    std::vector<QComboBox*> m_columns;
    QWidget* m_columnRow;
    QLabel* m_words;
    QPushButton* m_putIn;
    TroubleLabel* m_refusal;
};

} // namespace warmbench::ui
