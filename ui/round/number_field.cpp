#include "ui/round/number_field.h"

#include <QIntValidator>

namespace warmbench::ui {
namespace {

/// Takes a field that is left empty as well, so that Enter goes on from it, and no sign: `+` and `-` are keys
/// of the cards.
class CountOrNothing : public QIntValidator {
public:
    using QIntValidator::QIntValidator;
    State validate(QString& typed, int& cursor) const override {
        if (typed.isEmpty()) return Acceptable;
        return typed.front().isDigit() ? QIntValidator::validate(typed, cursor) : Invalid;
    }
};

} // namespace

QLineEdit* numberField(const QString& objectName, const QString& accessibleName, int highest,
                       QWidget* parent) {
    auto* field = new QLineEdit(parent);
    field->setObjectName(objectName);
    field->setAccessibleName(accessibleName);
    field->setValidator(new CountOrNothing(0, highest, field));
    field->setAlignment(Qt::AlignRight);
    field->setInputMethodHints(Qt::ImhDigitsOnly);
    return field;
}

std::optional<int> countIn(const QLineEdit& field) {
    bool whole = false;
    const int count = field.text().toInt(&whole);
    return whole ? std::optional(count) : std::nullopt;
}

} // namespace warmbench::ui
