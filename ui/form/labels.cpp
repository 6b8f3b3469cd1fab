#include "ui/form/labels.h"

#include "ui/form/changes.h"
#include "ui/words/phrase_words.h"

namespace warmbench::ui {
namespace {

bool inFahrenheit = false;

} // namespace

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
    delete m_watch;
    setText(words);
    setVisible(!words.isEmpty());
}

void TroubleLabel::tell(const Outcome& refusal) {
    tell(refusal ? told(*refusal, Wording(QLocale(), inFahrenheit)) : QString());
}

void TroubleLabel::tellUntilChanged(const Outcome& refusal, QWidget& form,
                                    const std::function<bool()>& stands) {
    tell(refusal);
    if (!refusal) return;
    m_watch = new QObject(this);
    onChange(form, *m_watch, [this, stands] {
        if (!stands || !stands()) tell(QString());
    });
}

void TroubleLabel::useFahrenheit(bool on) {
    inFahrenheit = on;
}

} // namespace warmbench::ui
