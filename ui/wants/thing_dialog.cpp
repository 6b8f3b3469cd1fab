#include "ui/wants/thing_dialog.h"

#include "ui/form/labels.h"

#include <QDialogButtonBox>
#include <QEvent>
#include <QFormLayout>
#include <QVBoxLayout>

namespace warmbench::ui {

ThingDialog::ThingDialog(const QString& title, Performer performer, QWidget* parent)
    : DraftDialog(parent), m_performer(std::move(performer)), m_fields(new QFormLayout),
      m_refusal(new TroubleLabel(QStringLiteral("dialogRefusal"), this)) {
    setWindowTitle(title);
    auto* ends = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    connect(ends, &QDialogButtonBox::accepted, this, &ThingDialog::accept);
    connect(ends, &QDialogButtonBox::rejected, this, &ThingDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 16);
    column->addLayout(m_fields);
    column->addWidget(m_refusal);
    column->addWidget(ends);
    column->addStrut(480); // wide enough for a name, and wider where the fields need it
}

bool ThingDialog::event(QEvent* event) {
    const bool done = QDialog::event(event);
    if (event->type() == QEvent::LayoutRequest) {
        const int needed = layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(width())
                                                         : layout()->totalMinimumSize().height();
        if (needed > height()) resize(width(), needed);
    }
    return done;
}

void ThingDialog::accept() {
    const auto asked = command();
    const Outcome refusal = asked ? m_performer(*asked) : Outcome(asked.refusal());
    if (!refusal) {
        QDialog::accept();
        return;
    }
    // What the fields say wrongly is told until they say it rightly; what the book refuses, until they say
    // something else.
    const bool unread = !asked;
    m_refusal->tellUntilChanged(refusal, *this, [this, unread, refusal] {
        if (!unread) return false;
        const auto now = command();
        return !now && now.refusal() == *refusal;
    });
}

} // namespace warmbench::ui
