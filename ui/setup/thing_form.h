#pragma once

#include "core/book/command.h"
#include "ui/words/wording.h"

#include <QFormLayout>
#include <QWidget>

namespace warmbench::ui {

/// A form of one thing of a book, filled in with it. What its fields do not show stays as it was.
class ThingForm : public QWidget {
    Q_OBJECT
public:
    explicit ThingForm(QWidget* parent) : QWidget(parent), m_fields(new QFormLayout(this)) {
        m_fields->setRowWrapPolicy(QFormLayout::WrapLongRows);
        m_fields->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    }
    /// Puts the thing into the book as the fields say it; a refusal where they cannot be read.
    [[nodiscard]] virtual Result<Command> command() const = 0;

protected:
    [[nodiscard]] QFormLayout& fields() { return *m_fields; }

private:
    QFormLayout* m_fields;
};

} // namespace warmbench::ui
