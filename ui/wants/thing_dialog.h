#pragma once

#include "core/book/command.h"
#include "ui/draft/draft_dialog.h"

#include <functional>

class QFormLayout;

namespace warmbench::ui {

class TroubleLabel;

/// A dialog that asks for one thing and closes only once it is in the book.
class ThingDialog : public DraftDialog {
    Q_OBJECT
public:
    using Performer = std::function<Outcome(const Command&)>;

    ThingDialog(const QString& title, Performer performer, QWidget* parent);
    void accept() override;

protected:
    /// Grows where a hint or a refusal needs more lines, so that no field is squeezed for it.
    bool event(QEvent* event) override;
    [[nodiscard]] QFormLayout& fields() { return *m_fields; }
    /// Puts the thing into the book as the fields say it; a refusal where they cannot be read.
    [[nodiscard]] virtual Result<Command> command() const = 0;

private:
    Performer m_performer;
    QFormLayout* m_fields;
    TroubleLabel* m_refusal;
};

} // namespace warmbench::ui
