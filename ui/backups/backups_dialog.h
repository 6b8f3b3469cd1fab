#pragma once

#include "ui/backups/backup_shelf.h"
#include "ui/post/postbox.h"
#include "ui/words/wording.h"

#include <QDialog>

#include <stop_token>
#include <thread>

class QLabel;
class QPushButton;
class QTreeWidget;
class QTreeWidgetItem;

namespace warmbench::ui {

/// Lists the backups that a book has made of itself, opens each beside the window to tell what is in it and
/// whether it is sound, and lets one be chosen. It changes nothing itself.
class BackupsDialog : public QDialog {
    Q_OBJECT
public:
    /// `shelf` must outlive it.
    BackupsDialog(BackupShelf& shelf, const QString& book, const Wording& wording, QWidget* parent);
    ~BackupsDialog() override;

    [[nodiscard]] const QString& bookName() const { return m_book; }

Q_SIGNALS:
    void lookWanted(const warmbench::ui::KeptBackup& backup);
    void copyWanted(const warmbench::ui::KeptBackup& backup);
    void placeWanted(const warmbench::ui::KeptBackup& backup);

private:
    /// What a look into one backup came to.
    struct Look {
        bool sound = false;
        QString batches, targets, checks, last;
        QString inside; ///< all of it in words, or why it does not open
    };

    void lookIntoAll(const std::stop_token& stop);
    [[nodiscard]] Look lookOf(const Result<BackupContent>& content, Day day) const;
    void tell(std::size_t index, const Look& look);
    void showChosen();
    [[nodiscard]] int chosen() const;
    QPushButton* button(const char* name, const QString& words,
                        void (BackupsDialog::*wanted)(const KeptBackup&));

    BackupShelf& m_shelf;
    QString m_book;
    Wording m_wording;
    std::vector<KeptBackup> m_backups; ///< does not change, so that the thread may read it
    std::vector<std::optional<Look>> m_looks;
    QTreeWidget* m_list;
    QLabel* m_inside;
    QPushButton* m_look;
    QPushButton* m_copy;
    QPushButton* m_place;
    Postbox m_looked;
    std::jthread m_thread; ///< last, as it uses the rest
};

} // namespace warmbench::ui
