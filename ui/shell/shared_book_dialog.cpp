#include "ui/shell/shared_book_dialog.h"

#include "ui/form/labels.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QUrl>
#include <QVBoxLayout>

namespace warmbench::ui {
namespace {

QLineEdit* line(QFormLayout* form, const char* name, const QString& label, const QString& example) {
    auto* field = new QLineEdit(form->parentWidget());
    field->setObjectName(QLatin1String(name));
    field->setPlaceholderText(example);
    form->addRow(label, field);
    return field;
}

QString inAddress(const QString& text) {
    return QString::fromLatin1(QUrl::toPercentEncoding(text));
}

} // namespace

SharedBookDialog::SharedBookDialog(QWidget* parent) : QDialog(parent) {
    setObjectName(QStringLiteral("sharedBookDialog"));
    setWindowTitle(tr("Open a shared house book"));
    auto* column = new QVBoxLayout(this);
    auto* fields = new QWidget(this);
    auto* form = new QFormLayout(fields);
    form->setContentsMargins(0, 0, 0, 0);
    m_server = line(form, "server", tr("&Server"), tr("such as books.example, or books.example:5433"));
    m_book = line(form, "book", tr("&Book"), tr("such as nursery"));
    m_user = line(form, "user", tr("&Your name there"), tr("such as anna"));
    m_password = line(form, "password", tr("&Password"), tr("empty: the one that is kept"));
    m_password->setEchoMode(QLineEdit::Password);
    m_safety = new QComboBox(fields);
    m_safety->setObjectName(QStringLiteral("safety"));
    m_safety->addItem(tr("Private, and only with the server that its certificate names"),
                      QStringLiteral("verify-full"));
    m_safety->addItem(tr("Private, whatever certificate the server shows"), QStringLiteral("require"));
    m_safety->addItem(tr("As the server likes: only inside your own walls"), QStringLiteral("prefer"));
    form->addRow(tr("&Connection"), m_safety);
    column->addWidget(fields);
    QLabel* note = wrappedLabel(this, "quiet");
    note->setText(
        tr("The password goes to this system's key store, and into no file. Without a key store it is "
           "asked for each time."));
    column->addWidget(note);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Open | QDialogButtonBox::Cancel, this);
    m_open = buttons->button(QDialogButtonBox::Open);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
    for (QLineEdit* field : {m_server, m_book})
        connect(field, &QLineEdit::textChanged, this, [this] { check(); });
    setMinimumWidth(520);
    check();
}

void SharedBookDialog::check() {
    m_open->setEnabled(!m_server->text().trimmed().isEmpty() && !m_book->text().trimmed().isEmpty());
}

QString SharedBookDialog::address() const {
    QString who = inAddress(m_user->text().trimmed());
    if (!m_password->text().isEmpty()) who += QLatin1Char(':') + inAddress(m_password->text());
    if (!who.isEmpty()) who += QLatin1Char('@');
    return QStringLiteral("postgresql://%1%2/%3?sslmode=%4")
        .arg(who, m_server->text().trimmed(), inAddress(m_book->text().trimmed()),
             m_safety->currentData().toString());
}

} // namespace warmbench::ui
