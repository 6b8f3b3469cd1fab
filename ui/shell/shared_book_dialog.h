#pragma once

#include <QDialog>

class QComboBox;
class QLineEdit;
class QPushButton;

namespace warmbench::ui {

/// Asks where a shared house book is: the server, the book's database, who one is, and how closely the
/// server's identity is looked at.
class SharedBookDialog : public QDialog {
    Q_OBJECT
public:
    explicit SharedBookDialog(QWidget* parent = nullptr);

    /// The book's address, with the password if one was typed: to be opened, and not to be shown or kept.
    [[nodiscard]] QString address() const;

private:
    void check();

    QLineEdit* m_server;
    QLineEdit* m_book;
    QLineEdit* m_user;
    QLineEdit* m_password;
    QComboBox* m_safety;
    QPushButton* m_open;
};

} // namespace warmbench::ui
