#pragma once

#include "core/exchange/logger/kept_readings.h"
#include "ui/words/wording.h"

#include <QDialog>

#include <functional>

class QComboBox;
class QLabel;
class QPushButton;
class QTreeWidget;

namespace warmbench::ui {

class TroubleLabel;

/// Takes a logger's file, shows how it is understood and what is amiss with it before anything is in the
/// book, and keeps its readings as one step.
class ImportDialog : public QDialog {
    Q_OBJECT
public:
    using Performer = std::function<Outcome(const Command&)>;

    /// `place` is chosen at first, where it is one.
    ImportDialog(const HouseBook& book, const ReadingPlace& place, const Wording& wording,
                 Performer performer, QWidget* parent);
    /// Shows a file; a refusal is told in the dialog.
    void openFile(const QString& path);
    void accept() override;

private:
    void build();
    void chooseFile();
    void readAnew();
    void showColumns();
    void showLines();
    void showWords();
    [[nodiscard]] ReadingPlace place() const;
    [[nodiscard]] exchange::Clock clock() const;
    [[nodiscard]] exchange::LoggerHints hints() const;

    const HouseBook& m_book;
    Wording m_wording;
    Performer m_performer;
    std::vector<ReadingPlace> m_placesOffered;
    std::string m_name;
    std::string m_text;
    std::optional<exchange::LoggerFile> m_file;
    std::vector<std::string> m_offered; ///< names of the columns to choose from
    exchange::KeptReadings m_kept;
    bool m_quiet = false; ///< fields are being filled in

    QLabel* m_fileName;
    QComboBox* m_place;
    QComboBox* m_what;
    QComboBox* m_offset;
    QComboBox* m_summer;
    QComboBox* m_order;
    QComboBox* m_unit;
    QComboBox* m_delimiter;
    QComboBox* m_decimals;
    QComboBox* m_column;
    QComboBox* m_humidity;
    QTreeWidget* m_lines;
    QLabel* m_words;
    QPushButton* m_keep;
    TroubleLabel* m_refusal;
};

} // namespace warmbench::ui
