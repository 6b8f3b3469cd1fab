#pragma once

#include "core/forecast/book_forecast.h"
#include "ui/paper/paper.h"
#include "ui/words/wording.h"

#include <QDialog>

#include <memory>

class QComboBox;
class QDateEdit;
class QDoubleSpinBox;
class QLabel;
class QPrinter;
class QPrintPreviewWidget;
class QPushButton;
class QSpinBox;

namespace warmbench::ui {

struct LabelLayout;

/// Chooses what goes on paper, shows it as it will be, and prints it or saves it as a PDF. Sizes of labels
/// are kept from one time to the next.
class PrintDialog : public QDialog {
    Q_OBJECT
public:
    /// The book must outlive the dialog.
    PrintDialog(const HouseBook& book, const forecast::BookForecast& forecast, Day day,
                const Wording& wording, QWidget* parent = nullptr);
    ~PrintDialog() override;
    /// Chooses what belongs to a place of the window, by its name (`round`); else what stands there stays.
    void choosePaperOf(const QString& place);
    /// Chooses labels, and those of one batch alone.
    void chooseLabelsOf(BatchId batch);

    /// What is chosen, as it would be printed now. Refused in words, such as for labels that find no room.
    [[nodiscard]] Result<Paper> paper() const;

private:
    void build(Day day);
    QDoubleSpinBox* lengthField(const QString& name, double millimetres);
    void readKept();
    void keep() const;
    [[nodiscard]] LabelLayout layoutChosen() const;
    void refresh();
    void paintPreview(QPrinter* printer);
    void print();
    void save();

    const HouseBook& m_book;
    const forecast::BookForecast& m_forecast;
    Wording m_wording;
    QComboBox* m_kind;
    QDateEdit* m_from;
    QSpinBox* m_days;
    QWidget* m_labelFields;
    QDoubleSpinBox* m_pageWidth;
    QDoubleSpinBox* m_pageHeight;
    QDoubleSpinBox* m_labelWidth;
    QDoubleSpinBox* m_labelHeight;
    QSpinBox* m_columns;
    QSpinBox* m_rows;
    QDoubleSpinBox* m_left;
    QDoubleSpinBox* m_top;
    QDoubleSpinBox* m_gapAcross;
    QDoubleSpinBox* m_gapDown;
    QSpinBox* m_used;
    QLabel* m_trouble;
    QPushButton* m_print;
    QPushButton* m_save;
    std::optional<BatchId> m_only; ///< whose labels alone are printed
    std::unique_ptr<QPrinter> m_printer;
    QPrintPreviewWidget* m_preview;
};

} // namespace warmbench::ui
