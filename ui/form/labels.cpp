#include "ui/form/labels.h"

#include "ui/words/phrase_words.h"

namespace warmbench::ui {

QLabel* wrappedLabel(QWidget* parent, const char* rank) {
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    if (rank) label->setProperty("rank", rank);
    return label;
}

TroubleLabel::TroubleLabel(const QString& name, QWidget* parent) : QLabel(parent) {
    setObjectName(name);
    setProperty("rank", QStringLiteral("trouble"));
    setWordWrap(true);
    hide();
}

void TroubleLabel::tell(const QString& words) {
    setText(words);
    setVisible(!words.isEmpty());
}

void TroubleLabel::tell(const Outcome& refusal) {
    tell(refusal ? told(*refusal) : QString());
}

} // namespace warmbench::ui
